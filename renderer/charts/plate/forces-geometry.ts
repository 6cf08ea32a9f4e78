import { area, line, scaleLinear } from 'd3'
import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel, GasLaw } from '../../../core/corner/corner-model.ts'
import { fromUnit, type System, toUnit } from '../../../core/units/quantity.ts'
import type { Frame } from './frame.ts'
import { travelMarks } from './travel.ts'
import type { WheelAxis } from './wheel-axis.ts'

/** Forces at one wheel position, N, each added to the one before: springs, then the shock's gas, then the stop. */
export interface ForceRow {
  readonly wheel: number
  readonly springs: number
  readonly gas: number
  readonly slow: number
  /** Total with fast gas. */
  readonly fast: number
}

/** The force the stop adds at the touch. */
export interface ForceStep {
  readonly wheel: number
  readonly below: number
  readonly above: number
}

export interface ForcesGeometry {
  readonly rows: readonly ForceRow[]
  /** px of a force, N. */
  readonly x: (force: number) => number
  readonly left: number
  readonly right: number
  /** Forces to mark, N, rising from 0. */
  readonly ticks: readonly number[]
  readonly step: ForceStep | null
  readonly paths: {
    readonly springs: string
    readonly gas: string
    readonly stop: string
    readonly band: string
    readonly springsEdge: string
    readonly fast: string
    readonly slow: string
    /** The other setup's slow total where it differs enough to be seen; empty where it does not. */
    readonly ghost: string
  }
  readonly top: ForceRow
  readonly weight: number
}

/** Pieces the travel is cut into: each about 8 px of a usual window, so that no chord is a tenth of one off its curve. */
const GRID = 64

type Side = 'below' | 'above'

function forceRow(model: CornerModel, wheel: number, side: Side): ForceRow {
  const at = (law: GasLaw) => model.forces(wheel, law, side)
  const slow = at('slow')
  return {
    wheel,
    springs: slow.springs,
    gas: slow.springs + slow.gas,
    slow: slow.total,
    fast: at('fast').total,
  }
}

/** Forces over the travel: on a grid and at every kink, twice at the touch, so that the step is a step. */
export function forceRows(model: CornerModel): ForceRow[] {
  const { droop, bump, engagement, kinks } = model
  const grid = Array.from({ length: GRID + 1 }, (_, index) => droop + ((bump - droop) * index) / GRID)
  grid[GRID] = bump
  const touches = engagement !== null && engagement >= droop && engagement <= bump ? [engagement] : []
  const wheels = [...new Set([...grid, ...kinks, ...touches])].sort((a, b) => a - b)
  return wheels.flatMap(wheel =>
    wheel === engagement
      ? [forceRow(model, wheel, 'below'), forceRow(model, wheel, 'above')]
      : [forceRow(model, wheel, 'above')],
  )
}

export function forceStep(model: CornerModel): ForceStep | null {
  const { engagement, droop, bump } = model
  if (engagement === null || engagement < droop || engagement > bump) return null
  const below = model.forces(engagement, 'slow', 'below').total
  const above = model.forces(engagement, 'slow', 'above').total
  return above - below > 0 ? { wheel: engagement, below, above } : null
}

/** Rows of the other setup that lie visibly apart from this one's line. */
function apart(rows: readonly ForceRow[], model: CornerModel, x: (force: number) => number) {
  return (row: ForceRow): boolean => {
    if (row.wheel < model.droop || row.wheel > model.bump) return true
    return Math.abs(x(row.slow) - x(model.forces(row.wheel, 'slow').total)) > 1.5 || rows.length < 3
  }
}

/** All of the force lines, and the largest force among them. */
export interface ForceRows {
  readonly rows: readonly ForceRow[]
  /** Of the other setup; empty without one. */
  readonly ghost: readonly ForceRow[]
  /** N, at least one unit of the plan's own. */
  readonly most: number
}

export function allForceRows(model: CornerModel, other: CornerModel | null, weight: number, system: System): ForceRows {
  const rows = forceRows(model)
  const ghost = other === null ? [] : forceRows(other)
  const most = Math.max(
    ...rows.map(row => Math.max(row.fast, row.slow)),
    ...ghost.map(row => row.slow),
    weight,
    fromUnit(1, 'force', system),
  )
  return { rows, ghost, most }
}

export function forcesGeometry(
  frame: Frame,
  axis: WheelAxis,
  budget: AxleBudget,
  model: CornerModel,
  { rows, ghost }: Omit<ForceRows, 'most'>,
  /** Largest force the axis has room for, N. */
  most: number,
  system: System,
): ForcesGeometry {
  const weight = budget.static.sprungWeight
  const left = frame.forces.x + (frame.small ? 10 : 14)
  const right = frame.forces.right - (frame.small ? 8 : 12)
  const scale = scaleLinear([0, toUnit(most * 1.04, 'force', system)], [left, right])
  const x = (force: number): number => scale(toUnit(force, 'force', system))
  const y = (row: ForceRow): number => axis.y(row.wheel)
  const onPage = (values: (row: ForceRow) => number): number[] => rows.map(values)
  const height = onPage(y)
  const springs = onPage(row => x(row.springs))
  const gas = onPage(row => x(row.gas))
  const slow = onPage(row => x(row.slow))
  const fast = onPage(row => x(row.fast))
  const between = (from: (i: number) => number, to: readonly number[]): string =>
    area<ForceRow>()
      .digits(1)
      .y((_, i) => height[i]!)
      .x0((_, i) => from(i))
      .x1((_, i) => to[i]!)(rows) ?? ''
  const along = (values: readonly number[]): string =>
    line<ForceRow>()
      .digits(1)
      .y((_, i) => height[i]!)
      .x((_, i) => values[i]!)(rows) ?? ''
  const none = x(0)
  const { bump } = travelMarks(budget)
  return {
    rows,
    x,
    left,
    right,
    ticks: scale
      .ticks(Math.min(7, Math.max(2, Math.floor((right - left) / (frame.small ? 44 : 40)))))
      .map(value => fromUnit(value, 'force', system)),
    step: forceStep(model),
    paths: {
      springs: between(() => none, springs),
      gas: between(i => springs[i]!, gas),
      stop: between(i => gas[i]!, slow),
      band: between(i => slow[i]!, fast),
      springsEdge: along(springs),
      fast: along(fast),
      slow: along(slow),
      ghost:
        line<ForceRow>()
          .digits(1)
          .defined(apart(ghost, model, x))
          .y(y)
          .x(row => x(row.slow))(ghost) ?? '',
    },
    top: rows.at(-1) ?? forceRow(model, bump, 'above'),
    weight,
  }
}
