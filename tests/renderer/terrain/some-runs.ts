import type { Rider } from '../../../renderer/state/terrain-request.ts'
import { answerTo } from '../../../renderer/workers/answer.ts'
import type { Answer, Ask } from '../../../renderer/workers/messages.ts'
import type { Hearer } from '../../../renderer/workers/pool.ts'

export interface AskedRide {
  readonly ask: Ask
  readonly rank: number
  readonly hear: Hearer<Answer>
  off: boolean
  answered: boolean
}

/** Rides when the test says so; what was called off waits no more. */
export function someRider() {
  const asked: AskedRide[] = []
  const rider: Rider = {
    warm: () => undefined,
    run: (ask, rank, hear) => {
      const ride: AskedRide = { ask, rank, hear, off: false, answered: false }
      asked.push(ride)
      return () => {
        ride.off = true
      }
    },
  }
  const answer = (ride: AskedRide): void => {
    ride.answered = true
    ride.hear.done(answerTo(ride.ask))
  }
  const fail = (ride: AskedRide, fault: string): void => {
    ride.answered = true
    ride.hear.failed(fault)
  }
  /** Those that wait, the lowest rank first. */
  const waiting = (): AskedRide[] =>
    asked.filter(({ off, answered }) => !off && !answered).sort((a, b) => a.rank - b.rank)
  /** Rides everything that is asked for, whatever that leads to. */
  const answerAll = (): void => {
    for (let next = waiting()[0]; next !== undefined; next = waiting()[0]) answer(next)
  }
  return { rider, asked, waiting, answer, fail, answerAll }
}
