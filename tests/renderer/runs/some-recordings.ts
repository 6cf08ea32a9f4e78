import { Recordings } from '../../../renderer/state/recordings.ts'
import type { Hand } from '../../../renderer/workers/pool.ts'
import { runAttendant } from '../../../renderer/workers/run-attendant.ts'
import { RunClient } from '../../../renderer/workers/run-client.ts'
import type { RunWord } from '../../../renderer/workers/run-messages.ts'

/** A worker in the same place: what it says arrives a moment later, as a copy, as from a worker. */
function someHand(): Hand {
  const hand: Hand = {
    onmessage: null,
    onerror: null,
    terminate: () => {
      hand.onmessage = null
    },
    postMessage: word => attend(word as RunWord),
  }
  const attend = runAttendant(reply =>
    setImmediate(() => hand.onmessage?.({ data: structuredClone(reply) } as MessageEvent)),
  )
  return hand
}

/** Recordings whose worker is in the same place, and whose recipes are in `shelf`. */
export function someRecordings(shelf = { text: '' }) {
  const hands: Hand[] = []
  const client = new RunClient(
    () => {
      hands.push(someHand())
      return hands.at(-1)!
    },
    () => recordings.lost(),
  )
  const recordings: Recordings = new Recordings(client, {
    read: async () => shelf.text,
    keep: async text => {
      shelf.text = text
    },
  })
  return { recordings, client, hands, shelf }
}

/** Two points of the sensor of `recordedRide`, as its channels have them. */
export const CALIBRATION = { scale: 1 / 12, offset: -2.5 / 12 }
