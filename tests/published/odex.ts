import { createRequire } from 'node:module'

/** What is used of odex, whose own types are sources that do not pass a strict compiler: hence required, not imported. */
export interface Odex {
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  maxStepSize: number
  initialStepSize: number
  solve(slopes: (time: number, state: number[]) => number[], from: number, state: number[], to: number): { y: number[] }
}

const require = createRequire(import.meta.url)

/** A solver of E. Hairer and G. Wanner's extrapolation method ODEX for a system of `size` equations: a second opinion on our own. */
export function odex(size: number): Odex {
  const { Solver } = require('odex') as { Solver: new (size: number) => Odex }
  return new Solver(size)
}
