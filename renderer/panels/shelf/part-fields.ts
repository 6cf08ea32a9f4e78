import type { Spring } from '../../../core/changes/change.ts'
import type { LooseStop } from '../../../core/changes/stop-rules.ts'
import type { HydraulicStop } from '../../../core/plan/schema.ts'
import type { TubeSize } from '../../../core/spacer/tube.ts'
import type { Quantity } from '../../../core/units/quantity.ts'

/** One value of a part on the shelf. */
export interface PartField<Part> {
  readonly label: string
  readonly quantity: Quantity
  readonly of: (part: Part) => number | null
  readonly set: (part: Part, value: number) => Part
  /** The part without it, where it may be unknown. */
  readonly clear?: (part: Part) => Part
  /** Why it cannot be entered yet; null when it can. */
  readonly waits?: (part: Part) => string | null
  /** Where its problems are named, inside the part. */
  readonly path: string
}

export type LooseHydraulic = Extract<LooseStop, { kind: 'hydraulic' }>
export type LooseElastomer = Extract<LooseStop, { kind: 'elastomer' }>

const withoutRating = ({ bore }: NonNullable<HydraulicStop['body']>) => ({ bore })

export const HYDRAULIC_FIELDS: readonly PartField<LooseHydraulic>[] = [
  {
    label: 'Stroke',
    quantity: 'length',
    path: 'stroke',
    of: ({ stroke }) => stroke,
    set: (stop, stroke) => ({ ...stop, stroke }),
  },
  {
    label: 'Shaft diameter',
    quantity: 'length',
    path: 'shaftDiameter',
    of: ({ shaftDiameter }) => shaftDiameter,
    set: (stop, shaftDiameter) => ({ ...stop, shaftDiameter }),
  },
  {
    label: 'Charge it gets',
    quantity: 'pressure',
    path: 'charge',
    of: ({ charge }) => charge,
    set: (stop, charge) => ({ ...stop, charge }),
  },
  {
    label: 'Gas volume, stop fully out',
    quantity: 'volume',
    path: 'gasVolume',
    of: ({ gasVolume }) => gasVolume,
    set: (stop, gasVolume) => ({ ...stop, gasVolume }),
  },
  {
    label: 'Body bore',
    quantity: 'length',
    path: 'body.bore',
    of: ({ body }) => body?.bore ?? null,
    set: (stop, bore) => ({ ...stop, body: { ...stop.body, bore } }),
    clear: ({ body: _, ...stop }) => stop,
  },
  {
    label: 'Rated pressure of the body',
    quantity: 'pressure',
    path: 'body.ratedPressure',
    of: ({ body }) => body?.ratedPressure ?? null,
    set: (stop, ratedPressure) => (stop.body === undefined ? stop : { ...stop, body: { ...stop.body, ratedPressure } }),
    clear: stop => (stop.body === undefined ? stop : { ...stop, body: withoutRating(stop.body) }),
    waits: ({ body }) => (body === undefined ? 'Enter the bore of the body first.' : null),
  },
]

export const SPRING_FIELDS: readonly PartField<Spring>[] = [
  {
    label: 'Rate',
    quantity: 'rate',
    path: 'rate',
    of: ({ rate }) => rate,
    set: (spring, rate) => ({ ...spring, rate }),
  },
  {
    label: 'Free length',
    quantity: 'length',
    path: 'freeLength',
    of: ({ freeLength }) => freeLength,
    set: (spring, freeLength) => ({ ...spring, freeLength }),
  },
  {
    label: 'Solid length',
    quantity: 'length',
    path: 'solidLength',
    of: ({ solidLength }) => solidLength,
    set: (spring, solidLength) => ({ ...spring, solidLength }),
  },
]

export const TUBE_FIELDS: readonly PartField<TubeSize>[] = [
  {
    label: 'Outer diameter',
    quantity: 'length',
    path: 'outerDiameter',
    of: ({ outerDiameter }) => outerDiameter,
    set: (tube, outerDiameter) => ({ ...tube, outerDiameter }),
  },
  {
    label: 'Wall',
    quantity: 'length',
    path: 'wall',
    of: ({ wall }) => wall,
    set: (tube, wall) => ({ ...tube, wall }),
  },
]
