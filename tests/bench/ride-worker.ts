import { parentPort } from 'node:worker_threads'
import { cornerModel } from '../../core/corner/corner.ts'
import { ride } from '../../core/ride/ride.ts'
import { corner, whoops } from '../published/ride-equations.ts'

const model = cornerModel(corner)

/** Rides over whoops at the speeds asked for, m/s, as a sweep asks for them. */
parentPort!.on('message', (speeds: readonly number[]) => {
  parentPort!.postMessage(
    speeds.map(speed => {
      const outcome = ride(model, { ...whoops(0.2, 12), speed })
      if (!outcome.ok) throw new Error(`The ride at ${speed} m/s did not get to its end: ${outcome.reason}.`)
      return outcome.share.onStop
    }),
  )
})
