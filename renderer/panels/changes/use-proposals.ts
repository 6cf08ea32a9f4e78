import { useEffect, useMemo, useRef, useSyncExternalStore } from 'react'
import { type Work, work } from '../../../core/changes/propose.ts'
import { rangesOf } from '../../../core/changes/ranges.ts'
import type { Shelf } from '../../../core/changes/shelf.ts'
import type { Axle, ChosenRanges, Plan } from '../../../core/plan/schema.ts'
import { createProposing } from '../../state/proposing.ts'

const hire = () =>
  new Worker(new URL('../../workers/propose-worker.ts', import.meta.url), { type: 'module', name: 'propose' })

/** What candidates are driven over besides landing: a ledge of the plan, else its whoops. */
const courseOf = (terrains: Plan['terrains']) =>
  terrains.find(({ kind }) => kind === 'ledge') ?? terrains.find(({ kind }) => kind === 'whoops')

/**
 * Candidates of an axle, worked out beside the page whenever what is asked for changes.
 * @param wanted somebody looks at them; else what is asked for waits until somebody does
 */
export function useProposals(
  axle: Axle,
  { units, targets, terrains }: Pick<Plan, 'units' | 'targets' | 'terrains'>,
  chosen: ChosenRanges,
  shelf: Shelf,
  wanted: boolean,
) {
  const proposing = useMemo(() => createProposing(hire, Math.max(1, navigator.hardwareConcurrency)), [])
  useEffect(() => proposing.close, [proposing])
  const course = courseOf(terrains)
  const asked = useMemo(
    () =>
      work(
        axle,
        { units, ...(targets === undefined ? {} : { targets }) },
        rangesOf(axle.corner, chosen, shelf),
        course === undefined ? {} : { course },
      ),
    [axle, units, targets, chosen, shelf, course],
  )
  const last = useRef<Work | null>(null)
  useEffect(() => {
    if (!wanted || last.current === asked) return
    last.current = asked
    proposing.ask(asked, true)
  }, [proposing, asked, wanted])
  const view = useSyncExternalStore(proposing.subscribe, proposing.read)
  return { proposing, asked, view, course: course?.name ?? null }
}
