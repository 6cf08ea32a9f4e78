import type { NotLaid } from '../../../core/runs/lay.ts'

const WHY: Readonly<Record<Exclude<NotLaid['why'], 'cutoff too high'>, string>> = {
  'no rows': 'it has no two values that follow each other.',
  'not calibrated': 'what its readings mean is not said yet. Choose a unit or enter two points under How it is read.',
  'shaft turns back':
    'by the plan’s linkage the shaft turns back within the travel, so it does not tell where the wheel is.',
  'nothing at ride height': 'nothing was recorded at the moment picked as ride height. Pick another.',
  'nothing at full droop': 'nothing was recorded at the moment picked as full droop. Pick another.',
}

/** Why a channel could not be laid over the plan, and what to do about it. */
export const notLaidWords = (name: string, problem: NotLaid): string =>
  `“${name}” cannot be laid over the plan: ${
    problem.why === 'cutoff too high'
      ? `for so many rows a second the filter’s cutoff should be no more than ${problem.highest.toPrecision(3)} Hz.`
      : WHY[problem.why]
  }`
