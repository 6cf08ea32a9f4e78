import type { DocumentState } from '../../state/state.ts'

const time = new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit' })
const day = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', year: 'numeric' })

const when = (saved: Date, now: Date): string =>
  saved.toDateString() === now.toDateString() ? time.format(saved) : day.format(saved)

/** What stands under the plan's name: its file, and whether what is on screen is in it. */
export function fileParts(document: DocumentState, unsaved: boolean, now: Date): string[] {
  if (document.saving) return ['saving']
  if (document.token === null) return ['not in a file yet']
  const file = `${document.name}.stopgap`
  if (unsaved) return [file, 'not saved']
  return document.savedAt === null ? [file] : [file, `saved ${when(new Date(document.savedAt), now)}`]
}

/** The name people see of a plan that may have none. */
export const shownTitle = (title: string): string => (title.trim() === '' ? 'Plan without a title' : title)
