import type { Plan } from '../plan/schema.ts'

const NAMES: readonly (readonly [RegExp, string])[] = [
  [/^corner\.cornerMass$/, 'corner weight'],
  [/^corner\.unsprungMass$/, 'unsprung weight'],
  [/^corner\.linkage\.shock$/, 'motion ratio of the shock'],
  [/^corner\.linkage\.stop$/, 'motion ratio of the stop'],
  [/^corner\.linkage\.rows$/, 'table of shock and stop travel'],
  [/^corner\.linkage\.pivot$/, 'arm pivots'],
  [/^corner\.linkage\.wheel$/, 'wheel center'],
  [/^corner\.linkage\.shockLower$/, 'lower shock mount'],
  [/^corner\.linkage\.shockUpper$/, 'upper shock mount'],
  [/^corner\.linkage\.stopPad$/, 'stop pad'],
  [/^corner\.linkage\.stopAxis$/, 'direction of the stop'],
  [/^corner\.shock\.stroke$/, 'shock stroke'],
  [/^corner\.shock\.showing$/, 'shaft showing'],
  [/^corner\.shock\.shaftDiameter$/, 'shock shaft diameter'],
  [/^corner\.shock\.gas\.charge$/, 'shock charge'],
  [/^corner\.shock\.gas\.volume$/, 'shock gas volume'],
  [/^corner\.springs\.preload$/, 'preload'],
  [/^corner\.springs\.crossover\.gap$/, 'divider to ring'],
  [/^corner\.stop\.stroke$/, 'stop stroke'],
  [/^corner\.stop\.gap$/, 'gap'],
  [/^corner\.stop\.shaftDiameter$/, 'stop shaft diameter'],
  [/^corner\.stop\.charge$/, 'stop charge'],
  [/^corner\.stop\.gasVolume$/, 'stop gas volume'],
  [/^corner\.stop\.curve$/, 'force curve of the stop'],
  [/^corner\.tire\.rate$/, 'tire rate'],
  [/^corner\.clearance\.bump$/, 'clearance to the chassis'],
  [/^corner\.clearance\.droop$/, 'clearance to the strap'],
]

const OF_CAR: Readonly<Record<string, string>> = {
  wheelbase: 'wheelbase',
  cgHeight: 'height of the center of gravity',
  rollAxisHeight: 'height of the roll axis',
  track: 'track width',
  antiRollRate: 'anti-roll rate',
  shockSpacing: 'shock to shock',
  stopSpacing: 'stop to stop',
}

const OF_LOAD: Readonly<Record<string, string>> = {
  'masses.front': 'weight on the front',
  'masses.rear': 'weight on the rear',
  lateral: 'sideways g',
  deceleration: 'braking g',
  amplitude: 'travel asked',
}

const SPRING = /^corner\.springs\.springs\.(\d+)\.(rate|freeLength|solidLength)$/
const OF_SPRING: Readonly<Record<string, string>> = {
  rate: 'rate',
  freeLength: 'free length',
  solidLength: 'solid length',
}

/**
 * What people call a measurement by its path in the plan's tolerances: `front.corner.stop.gap`, `vehicle.cgHeight`, `loads.turn.lateral`.
 */
export function planMeasurementName(path: string, { loads, setups }: Pick<Plan, 'loads' | 'setups'>): string {
  const [whose = '', ...rest] = path.split('.')
  if (whose === 'vehicle') return OF_CAR[rest.join('.')] ?? path
  if (whose === 'loads') {
    const [id, ...what] = rest
    const load = loads.find(each => each.id === id)
    const name = load === undefined ? id : load.name === '' ? load.kind : load.name
    return `${OF_LOAD[what.join('.')] ?? what.join('.')} in “${name}”`
  }
  const inside = rest.join('.')
  const axle = setups.flatMap(({ axles }) => axles).find(({ id }) => id === whose)
  const springs = axle?.corner.springs.springs.map(({ name }) => name)
  return `${OF_CAR[inside] ?? measurementName(inside, springs)}, ${whose}`
}

/**
 * What people call a measurement the travel budget rests on.
 * @param path inside the axle, as in `Measured`
 * @param springs names of the springs, from the chassis end
 */
export function measurementName(path: string, springs: readonly string[] = []): string {
  const spring = SPRING.exec(path)
  if (spring !== null) {
    const [, place = '0', what = ''] = spring
    const name = springs[Number(place)]?.trim() ?? ''
    return `${OF_SPRING[what]} of ${name === '' ? `spring ${Number(place) + 1}` : `the ${name}`}`
  }
  return NAMES.find(([pattern]) => pattern.test(path))?.[1] ?? path
}
