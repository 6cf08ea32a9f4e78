import { useMemo, useState } from 'react'
import type { Axle, Plan, Setup } from '../../../core/plan/schema.ts'
import type { RunFigures } from '../../../core/runs/figures.ts'
import type { ComparedWheel } from '../../charts/runs/run-scene.ts'
import { isRead, type Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import { axleResults } from '../../state/results.ts'
import { terrainName } from '../terrain/describe.ts'
import { notLaidWords } from './trouble-words.ts'
import { useLaid } from './use-laid.ts'
import { useRideBeside } from './use-ride.ts'
import { sameWheel, type WheelOf, wheelName } from './wheels.ts'

export interface Beside {
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly value: string
  readonly choose: (value: string) => void
  /** null: beside nothing. */
  readonly name: string | null
  /** Whether the setup it went with has a stop, and whether it was recorded. */
  readonly stop: boolean
  readonly recorded: boolean
  readonly figures: RunFigures | null
  /** Strokes a minute, where it was recorded. */
  readonly strokes: readonly number[] | null
  /** As it is drawn; null until it is worked out. */
  readonly wheel: ComparedWheel | null
  readonly problems: readonly string[]
  /** What a worker said when it broke over this. */
  readonly fault: string | null
}

const NOTHING = 'nothing'
const SIDE = 'side '
const RUN = 'run '
const TERRAIN = 'terrain '

const after = (value: string, kind: string): string | null => (value.startsWith(kind) ? value.slice(kind.length) : null)

interface Asked {
  readonly recordings: Recordings
  readonly runs: readonly Recording[]
  readonly run: Recording
  /** Of the axle shown, and the one shown. */
  readonly wheels: readonly WheelOf[]
  readonly wheel: WheelOf
  readonly plan: Plan
  readonly setup: Setup
  readonly axle: Axle
}

/** What a recorded wheel is compared with: its neighbour, the same wheel in another run, or a terrain that is worked out. */
export function useBeside({ recordings, runs, run, wheels, wheel, plan, setup, axle }: Asked): Beside {
  const [asked, choose] = useState(NOTHING)
  const options = [
    { value: NOTHING, label: 'nothing' },
    ...wheels
      .filter(({ at }) => at !== wheel.at)
      .map(({ at, channel }) => ({ value: `${SIDE}${at}`, label: `the ${channel.side} wheel` })),
    ...runs
      .filter(each => each.id !== run.id && isRead(each) && sameWheel(each, wheel.channel) !== null)
      .map(({ id, name }) => ({ value: `${RUN}${id}`, label: name })),
    ...plan.terrains.map(each => ({ value: `${TERRAIN}${each.id}`, label: `${terrainName(each)}, simulated` })),
  ]
  const value = options.some(option => option.value === asked) ? asked : NOTHING

  const otherRun = runs.find(({ id }) => id === after(value, RUN)) ?? null
  const side = wheels.find(({ at }) => String(at) === after(value, SIDE)) ?? null
  const other = otherRun === null ? side : sameWheel(otherRun, wheel.channel)
  const terrain = plan.terrains.find(({ id }) => id === after(value, TERRAIN)) ?? null

  // Another run is laid over what it was driven with; where that is gone, or has no such axle, over what is shown.
  const driven = plan.setups.find(({ id, axles }) => id === otherRun?.driven && axles.some(each => each.id === axle.id))
  const otherSetup = otherRun === null ? setup : (driven ?? setup)
  const otherAxle = otherSetup.axles.find(({ id }) => id === axle.id) ?? axle
  const over = { plan, setup: otherSetup.id, axle: axle.id }
  const view = useLaid(recordings, otherRun ?? (side === null ? null : run), other?.at ?? null, over)
  const ridden = useRideBeside(terrain, plan, setup.id, axle.id)

  const name =
    otherRun !== null && other !== null
      ? wheelName(otherRun, other.channel)
      : side !== null
        ? `${side.channel.side} wheel`
        : terrain !== null
          ? terrainName(terrain)
          : null
  const figures = view.laid?.figures ?? ridden.figures
  const { model, budget } = axleResults(otherAxle, plan)
  const track = otherRun === null ? (view.laid?.run ?? null) : null
  const elsewhere = otherAxle !== axle
  const drawn = useMemo(
    (): ComparedWheel | null =>
      name === null || figures === null
        ? null
        : {
            name,
            budget: elsewhere ? budget : null,
            model,
            ride: figures,
            histogram: figures.histogram,
            shaftSpeeds: figures.shaftSpeeds,
            run: track,
          },
    [name, figures, elsewhere, budget, model, track],
  )
  return {
    options,
    value,
    choose,
    name,
    stop: model.corner.stop !== null,
    recorded: terrain === null,
    figures,
    strokes: view.laid?.strokes ?? null,
    wheel: drawn,
    problems: [
      ...(view.notLaid === null || name === null ? [] : [notLaidWords(name, view.notLaid)]),
      ...(ridden.trouble === null ? [] : [ridden.trouble]),
    ],
    fault: view.fault ?? ridden.fault,
  }
}
