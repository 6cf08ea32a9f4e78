import { readPlan } from '../../core/plan/parse.ts'
import type { Salvaged } from '../../core/plan/salvage.ts'
import { salvageWords } from '../../core/plan/salvage-words.ts'
import { longestPlan } from './shapes.ts'

/** Ending of a plan's file name. */
export const planEnding = '.stopgap'

/** The name people see: without folder and ending. A file that is called nothing else goes by that. */
export const planName = (fileName: string): string =>
  fileName.length > planEnding.length && fileName.toLowerCase().endsWith(planEnding)
    ? fileName.slice(0, -planEnding.length)
    : fileName

export const tooLong = `it is larger than ${longestPlan / 1024 / 1024} MB, which no plan is`
export const notText = 'it is not text (UTF-8), so it is damaged or something else'

/** Why this text cannot be opened or saved as a plan, to follow “… could not be opened: ”; null when it can. */
export function whyNotPlan(text: string): string | null {
  const read = readPlan(text)
  if (read.ok) return null
  const [first, ...others] = read.problems
  if (first === undefined) return 'it is not a plan'
  const what = first.path === '' ? 'its content' : first.path
  const more = others.length === 0 ? '' : ` (and ${others.length} more like this)`
  return `${what} is ${first.found}; it should be ${first.wanted}${more}`
}

/** What to say of a damaged file when what can be read of it is shown. */
export const salvagedText = (name: string, salvaged: Salvaged): string =>
  [
    `This is what can be read of “${name}”, in no file yet; the damaged file was left as it is.`,
    ...salvageWords(salvaged),
  ].join(' ')
