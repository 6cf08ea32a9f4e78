import type { Stop } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'
import type { Change } from './change.ts'
import { strokeOf } from './stop-in-corner.ts'

const stopWords = (stop: Stop | null, say: Say): string => {
  if (stop === null) return 'no stop'
  const stroke = say(strokeOf(stop), 'length')
  return stop.kind === 'elastomer'
    ? `an elastomer stop of ${stroke}`
    : `a stop of ${stroke} stroke with a ${say(stop.shaftDiameter, 'length')} shaft at ${say(stop.charge, 'pressure')}`
}

/** What a change is, as it stands in a list: `a 1 1/4 in spacer inside the stop`. */
export function changeWords(change: Change, say: Say): string {
  switch (change.kind) {
    case 'spacer':
      return `a ${say(change.length, 'length')} spacer inside the stop`
    case 'spacer out':
      return `the ${say(change.length, 'length')} spacer out of the stop`
    case 'pad shim':
      return change.thickness < 0
        ? `a ${say(-change.thickness, 'length')} shim off the pad`
        : `a ${say(change.thickness, 'length')} shim on the pad`
    case 'move stop':
      return `the stop ${say(Math.abs(change.away), 'length')} ${change.away < 0 ? 'towards' : 'away from'} the pad`
    case 'stop':
      return stopWords(change.stop, say)
    case 'charge':
      return `the stop charged to ${say(change.charge, 'pressure')}`
    case 'oil':
      return `${say(Math.abs(change.added), 'volume')} of oil ${change.added < 0 ? 'out of' : 'into'} the stop`
    case 'spring': {
      const name = change.spring.name.trim()
      return `a ${say(change.spring.rate, 'rate')} ${name === '' ? 'spring' : name}${change.keep === 'ride height' ? ' at the same ride height' : ''}`
    }
    case 'preload':
      return `the preload at ${say(change.preload, 'length')}`
    case 'crossover':
      return change.gap === null ? 'the divider ring off' : `the divider ${say(change.gap, 'length')} from its ring`
    case 'ride height':
      return `ride height ${say(Math.abs(change.rise), 'length')} ${change.rise < 0 ? 'lower' : 'higher'} by preload`
    case 'springs':
      return 'the whole spring pack as given'
    case 'hold':
      return 'the preload that holds its ride height'
    case 'settle':
      return 'ride height measured anew'
  }
}
