import { planEnding, planName } from '../contract/plan-text.ts'

/** Names Windows keeps for devices, with any ending. */
const reserved = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i
const mostBytes = 200

/** A sign that some system does not have in the name of a file. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: names come from outside, and control signs are among what is looked for
export const oddSign = /[\\/:*?"<>|\u0000-\u001f\u007f]/

/** The file name for a plan the person named so, or what is wrong with the name. Fits every system, as plans travel on sticks. */
export function fileNameFor(given: string): { ok: true; fileName: string } | { ok: false; why: string } {
  const name = planName(given.trim()).trim()
  const wrong = wrongWith(name)
  return wrong === null ? { ok: true, fileName: name + planEnding } : { ok: false, why: wrong }
}

function wrongWith(name: string): string | null {
  if (name === '') return 'a file needs a name'
  const odd = oddSign.exec(name)?.[0]
  if (odd !== undefined) return `${/[ -~]/.test(odd) ? odd : 'an invisible sign'} cannot be part of a file name`
  if (name.startsWith('.') || name.endsWith('.')) return 'a file name cannot begin or end with a point'
  if (reserved.test(name)) return `${name} is a name Windows keeps for itself`
  if (Buffer.byteLength(name) > mostBytes) return `the name is longer than ${mostBytes} letters`
  return null
}
