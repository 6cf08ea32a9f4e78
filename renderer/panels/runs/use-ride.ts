import { useEffect, useMemo, useState } from 'react'
import type { AxleId, Plan, Terrain } from '../../../core/plan/schema.ts'
import type { RunFigures } from '../../../core/runs/figures.ts'
import { RunClient } from '../../workers/run-client.ts'

export interface RideBeside {
  readonly figures: RunFigures | null
  readonly working: boolean
  readonly trouble: string | null
  /** What its worker said when it broke. */
  readonly fault: string | null
}

const nothing: RideBeside = { figures: null, working: false, trouble: null, fault: null }

/** A worker of its own: a ride under way must not keep runs waiting. One that nobody waits for any more is ended. */
const hire = () =>
  new Worker(new URL('../../workers/run-worker.ts', import.meta.url), { type: 'module', name: 'ride beside a run' })

/** A terrain of the plan, driven over an axle to be compared with a run; null for none. */
export function useRideBeside(terrain: Terrain | null, plan: Plan, setup: string, axle: AxleId): RideBeside {
  const [view, setView] = useState<RideBeside>(nothing)
  const { setups, loads, vehicle } = plan
  const key = useMemo(
    () => JSON.stringify({ setups, loads, vehicle, terrain, setup, axle }),
    [setups, loads, vehicle, terrain, setup, axle],
  )
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all that a ride hangs on, however the plan was changed
  useEffect(() => {
    if (terrain === null) {
      setView(nothing)
      return
    }
    let left = false
    let worker: Worker | null = null
    setView({ ...nothing, working: true })
    const client = new RunClient(() => {
      worker = hire()
      return worker
    })
    void client.ask<'ride'>({ kind: 'ride', terrain, over: { plan, setup, axle } }).done.then(end => {
      worker?.terminate()
      if (left) return
      if (end.kind === 'answer' && end.answer.ok) setView({ ...nothing, figures: end.answer.figures })
      else if (end.kind === 'fault') setView({ ...nothing, fault: end.fault })
      else
        setView({
          ...nothing,
          trouble: `The ride beside it could not be worked out${end.kind === 'answer' && !end.answer.ok ? `: ${end.answer.why}` : ''}.`,
        })
    })
    return () => {
      left = true
      worker?.terminate()
    }
  }, [key])
  return view
}
