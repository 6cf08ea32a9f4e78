import type { AxleId, Corner, Setup } from '../../core/plan/schema.ts'
import type { Driven } from '../workers/messages.ts'

/** What is driven, and what tells it from others: the parts of a plan are never changed in place. */
export interface DrivenCorner {
  /** The part of the plan it is made of. */
  readonly of: object
  /** What else it hangs on. */
  readonly as: string
  readonly driven: Driven
}

export const cornerAlone = (corner: Corner): DrivenCorner => ({
  of: corner,
  as: 'corner',
  driven: { kind: 'corner', corner },
})

/** A corner of the whole car; null in a setup that has not both axles. @param wheelbase m */
export const cornerOfCar = ({ axles }: Setup, axle: AxleId, wheelbase: number): DrivenCorner | null =>
  axles.length !== 2
    ? null
    : {
        of: axles,
        as: `${axle} ${wheelbase}`,
        driven: { kind: 'car', axles: axles.map(({ id, corner }) => ({ id, corner })), wheelbase, axle },
      }

export const sameDriven = (a: DrivenCorner, b: DrivenCorner): boolean => a.of === b.of && a.as === b.as
