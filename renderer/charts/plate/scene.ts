import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { Ground } from '../placement/label.ts'
import type { MeasureText } from '../text/span.ts'
import { type BudgetGeometry, budgetGeometry } from './budget-geometry.ts'
import type { DemandsView } from './demands.ts'
import { type DemandsGeometry, demandsGeometry } from './demands-geometry.ts'
import { heldExtent, type PlateExtent } from './extent.ts'
import { allForceRows, type ForcesGeometry, forcesGeometry } from './forces-geometry.ts'
import { type Frame, plateFrame } from './frame.ts'
import { type ShaftBar, shaftBars } from './shafts-geometry.ts'
import { type ShownZones, shownZones, type TravelMarks, travelMarks } from './travel.ts'
import { type RulerTick, rulerTicks, type WheelAxis, wheelAxis } from './wheel-axis.ts'

/** The other setup, shown as a ghost. */
export interface OtherSetup {
  readonly name: string
  readonly budget: AxleBudget
  readonly model: CornerModel
}

/** What the plate shows, wheel position aside. */
export interface PlateView {
  readonly budget: AxleBudget
  readonly model: CornerModel
  readonly other: OtherSetup | null
  readonly demands: DemandsView | null
  readonly system: System
}

/** Everything on the plate that does not move with the wheel. */
export interface Scene {
  readonly view: PlateView
  readonly frame: Frame
  /** What the axes reach. */
  readonly extent: PlateExtent
  readonly axis: WheelAxis
  readonly travel: TravelMarks
  readonly zones: ShownZones
  readonly otherTravel: TravelMarks | null
  readonly otherZones: ShownZones | null
  readonly ruler: readonly RulerTick[]
  readonly budget: BudgetGeometry
  readonly shafts: readonly ShaftBar[]
  readonly forces: ForcesGeometry
  readonly demands: DemandsGeometry | null
  readonly measure: MeasureText
  readonly groundAt: (y: number) => Ground
  /** Where the force axis and the captions under the bars stand, px: the lowest travel of both setups. */
  readonly foot: number
}

/** Limits further above full bump than this part of the travel are drawn broken off instead of shrinking everything else. */
const RESERVE_SHARE = 0.3

function reserve({ limits, travel }: AxleBudget): number {
  const highest = travel.bump + RESERVE_SHARE * travel.total
  return Math.max(
    travel.bump,
    ...Object.entries(limits)
      .filter(([name, wheel]) => name !== 'linkage end' && wheel <= highest)
      .map(([, wheel]) => wheel),
  )
}

/**
 * Lays out all of the plate but its demands.
 * @param count how many bars the demands will have; 0 leaves their column out
 * @param width, height of the plate, px, above 0
 * @param held what the axes reached in the picture before, if they are to stay where that still fits
 */
export function sceneWithoutDemands(
  view: Omit<PlateView, 'demands'>,
  count: number,
  width: number,
  height: number,
  measure: MeasureText,
  held: PlateExtent | null = null,
): Scene {
  const { budget, model, other, system } = view
  const frame = plateFrame(width, height, count)
  const travel = travelMarks(budget)
  const otherTravel = other === null ? null : travelMarks(other.budget)
  const lowest = Math.min(travel.droop, otherTravel?.droop ?? 0)
  const forceRows = allForceRows(model, other?.model ?? null, budget.static.sprungWeight, system)
  const extent = heldExtent(held, {
    bump: Math.max(travel.bump, otherTravel?.bump ?? 0),
    droop: lowest,
    reserve: Math.max(reserve(budget), other === null ? 0 : reserve(other.budget)),
    force: forceRows.most,
  })
  const axis = wheelAxis(frame, extent)
  const ruler = rulerTicks(axis, travel.bump, travel.droop, system)
  const middle = axis.y(travel.coiloverEnd)
  const top = axis.y(travel.bump)
  const ride = axis.y(0)
  return {
    view: { ...view, demands: null },
    frame,
    extent,
    axis,
    travel,
    zones: shownZones(budget, system),
    otherTravel,
    otherZones: other === null ? null : shownZones(other.budget, system),
    ruler,
    budget: budgetGeometry(frame, ruler, system, measure),
    shafts: shaftBars(frame, axis, budget, model, system),
    forces: forcesGeometry(frame, axis, budget, model, forceRows, extent.force, system),
    demands: null,
    measure,
    foot: axis.y(lowest),
    groundAt: y => (y < top || y > ride ? 'sheet' : y < middle ? 'stop' : 'coil'),
  }
}

/** The same plate with its demands. */
export const withDemands = (scene: Scene, demands: DemandsView | null): Scene => ({
  ...scene,
  view: { ...scene.view, demands },
  demands: demandsGeometry(scene.frame, scene.axis, demands, scene.measure),
})
