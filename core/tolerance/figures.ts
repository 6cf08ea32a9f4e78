import type { AxleBudget } from '../budget/results.ts'
import type { BumpLimit } from '../corner/corner-model.ts'
import type { Quantity } from '../units/quantity.ts'

/** One number of an axle's budget whose sureness is asked for. */
export interface Figure {
  /** As in the JSON of the budget, by its path there; `beforeStop` is engagement less static position. */
  readonly id: string
  /** As people name it. */
  readonly name: string
  readonly quantity: Quantity
  /** NaN where the axle has none, such as an engagement without a stop. */
  readonly of: (axle: AxleBudget) => number
}

/** Zones stand in this order, from full droop up. */
const ORDER = { droop: 0, coilover: 1, engagement: 2 } as const

const zone = ({ zones }: AxleBudget, id: keyof typeof ORDER) => zones[ORDER[id]]!

/** Where each thing that could end bump would, whichever comes first. */
const LIMITS: readonly (readonly [BumpLimit, string])[] = [
  ['stop closed', 'stop closed at'],
  ['shock closed', 'shock closed at'],
  ['coil bind', 'coil bind at'],
  ['chassis contact', 'chassis contact at'],
  ['linkage end', 'linkage end at'],
]

export const FIGURES: readonly Figure[] = [
  { id: 'travel.bump', name: 'bump travel', quantity: 'length', of: ({ travel }) => travel.bump },
  { id: 'travel.droop', name: 'droop travel', quantity: 'length', of: ({ travel }) => travel.droop },
  { id: 'travel.total', name: 'whole travel', quantity: 'length', of: ({ travel }) => travel.total },
  { id: 'engagement.wheel', name: 'engagement', quantity: 'length', of: ({ engagement }) => engagement?.wheel ?? NaN },
  {
    id: 'engagement.shock',
    name: 'shaft in at engagement',
    quantity: 'length',
    of: ({ engagement }) => engagement?.shock ?? NaN,
  },
  {
    id: 'engagement.share',
    name: 'share on the coilover',
    quantity: 'share',
    of: ({ engagement }) => engagement?.share ?? NaN,
  },
  {
    id: 'engagement.force',
    name: 'force before engagement',
    quantity: 'force',
    of: ({ engagement }) => engagement?.force ?? NaN,
  },
  { id: 'zones.coilover.length', name: 'coilover zone', quantity: 'length', of: axle => zone(axle, 'coilover').length },
  {
    id: 'zones.engagement.length',
    name: 'engagement zone',
    quantity: 'length',
    of: axle => zone(axle, 'engagement').length,
  },
  {
    id: 'zones.droop.energy',
    name: 'energy of the droop zone',
    quantity: 'energy',
    of: axle => zone(axle, 'droop').energy,
  },
  {
    id: 'zones.coilover.energy',
    name: 'energy of the coilover zone',
    quantity: 'energy',
    of: axle => zone(axle, 'coilover').energy,
  },
  {
    id: 'zones.engagement.energy',
    name: 'energy of the engagement zone',
    quantity: 'energy',
    of: axle => zone(axle, 'engagement').energy,
  },
  { id: 'crossover', name: 'crossover', quantity: 'length', of: ({ crossover }) => crossover ?? NaN },
  {
    id: 'beforeStop',
    name: 'left before the stop at rest',
    quantity: 'length',
    of: axle => (axle.engagement?.wheel ?? NaN) - axle.static.position,
  },
  { id: 'static.position', name: 'static position', quantity: 'length', of: axle => axle.static.position },
  {
    id: 'static.springForce',
    name: 'springs at rest',
    quantity: 'force',
    of: axle => axle.static.springForce,
  },
  {
    id: 'static.sprungWeight',
    name: 'sprung weight',
    quantity: 'force',
    of: axle => axle.static.sprungWeight,
  },
  { id: 'static.stopForce', name: 'stop at rest', quantity: 'force', of: axle => axle.static.stopForce },
  { id: 'static.rideForce', name: 'held at ride height', quantity: 'force', of: axle => axle.static.rideForce },
  {
    id: 'mainSpring.leftAtRide',
    name: 'main spring left at ride height',
    quantity: 'length',
    of: ({ mainSpring }) => mainSpring.leftAtRide,
  },
  {
    id: 'mainSpring.leftAtBump',
    name: 'main spring left at full bump',
    quantity: 'length',
    of: ({ mainSpring }) => mainSpring.leftAtBump,
  },
  {
    id: 'mainSpring.leftAtEngagement',
    name: 'main spring left at engagement',
    quantity: 'length',
    of: ({ mainSpring }) => mainSpring.leftAtEngagement ?? Number.NaN,
  },
  { id: 'shockLeftAtBump', name: 'shock left at full bump', quantity: 'length', of: axle => axle.shockLeftAtBump },
  { id: 'ride.motionRatio', name: 'motion ratio', quantity: 'ratio', of: ({ ride }) => ride.motionRatio },
  { id: 'ride.wheelRate', name: 'wheel rate', quantity: 'rate', of: ({ ride }) => ride.wheelRate },
  { id: 'ride.frequency', name: 'ride frequency', quantity: 'frequency', of: ({ ride }) => ride.frequency },
  {
    id: 'ride.frequencyOnTire',
    name: 'ride frequency with the tire',
    quantity: 'frequency',
    of: ({ ride }) => ride.frequencyOnTire,
  },
  {
    id: 'ride.frequencyPastEngagement',
    name: 'ride frequency past engagement',
    quantity: 'frequency',
    of: ({ ride }) => ride.frequencyPastEngagement ?? Number.NaN,
  },
  ...LIMITS.map(
    ([limit, name]): Figure => ({
      id: `limits.${limit}`,
      name,
      quantity: 'length',
      of: ({ limits }) => limits[limit] ?? Number.NaN,
    }),
  ),
  { id: 'bump.forceSlow', name: 'force at full bump, slow gas', quantity: 'force', of: ({ bump }) => bump.forceSlow },
  { id: 'bump.forceFast', name: 'force at full bump, fast gas', quantity: 'force', of: ({ bump }) => bump.forceFast },
  {
    id: 'bump.stopForceFast',
    name: 'stop at full bump, fast gas',
    quantity: 'force',
    of: ({ bump }) => bump.stopForceFast,
  },
]

/** The figures the ranking of measurements goes by when none is named. */
export const HEADLINES: readonly string[] = ['zones.coilover.length', 'static.position', 'bump.forceFast']
