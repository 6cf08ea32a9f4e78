import { useEffect, useMemo, useState, useSyncExternalStore } from 'react'
import { sayIn } from '../../core/budget/findings/rule.ts'
import type { Worked } from '../../core/changes/evaluate.ts'
import { work } from '../../core/changes/propose.ts'
import { firstChosen, rangesOf } from '../../core/changes/ranges.ts'
import { GENERIC_SHELF } from '../../core/changes/shelf.ts'
import { targetsOf } from '../../core/changes/targets.ts'
import { changeWords } from '../../core/changes/words.ts'
import type { Axle } from '../../core/plan/schema.ts'
import { ProposalMap } from '../charts/map/ProposalMap.tsx'
import { Switch } from '../fields/Switch.tsx'
import { ByHand } from '../panels/changes/ByHand.tsx'
import { CandidateList } from '../panels/changes/CandidateList.tsx'
import { ProposeWork } from '../panels/changes/ProposeWork.tsx'
import { RangeFields } from '../panels/changes/RangeFields.tsx'
import { setTarget, TargetFields } from '../panels/changes/TargetFields.tsx'
import { closeGesture } from '../state/edit.ts'
import { makeSetup } from '../state/made-setup.ts'
import { createProposing } from '../state/proposing.ts'
import { chooseRanges } from '../state/ranges.ts'
import { shownAxle, shownSetup } from '../state/selectors.ts'
import { showPage, showSetup } from '../state/view.ts'
import { useSelectGroup, useStore } from '../window-context.ts'

const hire = () =>
  new Worker(new URL('../workers/propose-worker.ts', import.meta.url), { type: 'module', name: 'propose' })

/** What would meet the targets, what it costs, and how to make it a setup. */
export function ChangesPage() {
  const { plan, axle, setup } = useSelectGroup(state => ({
    plan: state.plan,
    axle: shownAxle(state).axle,
    setup: shownSetup(state).setup,
  }))
  return (
    <Changing
      key={`${setup.id} ${axle.id} ${axle.corner.stop?.kind} ${plan.units}`}
      axle={axle}
      setup={setup.name}
      id={setup.id}
    />
  )
}

function Changing({ axle, setup, id }: { axle: Axle; setup: string; id: string }) {
  const store = useStore()
  const { units, kept, planTargets, terrains, made, origin, setups } = useSelectGroup(state => ({
    units: state.plan.units,
    planTargets: state.plan.targets,
    kept: state.plan.ranges?.[axle.id],
    terrains: state.plan.terrains,
    origin: shownSetup(state).setup.madeFrom,
    setups: state.plan.setups,
    made: state.plan.setups.find(each => each.id === state.view.compared && each.id !== id),
  }))
  const say = useMemo(() => sayIn(units), [units])
  const { targets, usual } = useMemo(() => targetsOf(planTargets), [planTargets])
  const [shelf] = useState(GENERIC_SHELF)
  const chosen = useMemo(() => kept ?? firstChosen(axle.corner, shelf, units), [kept, axle, shelf, units])
  const proposing = useMemo(() => createProposing(hire, Math.max(1, navigator.hardwareConcurrency)), [])
  useEffect(() => proposing.close, [proposing])
  const course = terrains.find(({ kind }) => kind === 'ledge') ?? terrains.find(({ kind }) => kind === 'whoops')
  const asked = useMemo(
    () =>
      work(
        axle,
        { units, ...(planTargets === undefined ? {} : { targets: planTargets }) },
        rangesOf(axle.corner, chosen, shelf),
        {
          ...(course === undefined ? {} : { course }),
        },
      ),
    [axle, units, planTargets, chosen, shelf, course],
  )
  useEffect(() => proposing.ask(asked, true), [proposing, asked])
  const view = useSyncExternalStore(proposing.subscribe, proposing.read)
  const { proposals } = view
  const [pointed, setPointed] = useState<Worked | null>(null)
  const looked = pointed !== null && proposals?.order.includes(pointed) ? pointed : null
  const [way, setWay] = useState<'look' | 'hand'>('look')
  const [took, setTook] = useState<string | null>(null)
  const take = (next: Axle, changes: readonly string[]): void => {
    const words = changes.join(' + ')
    const problems = makeSetup(store, next, changes)
    setTook(
      problems[0] === undefined
        ? words
        : `It cannot be a setup: found ${problems[0].found}, where ${problems[0].wanted} would be right.`,
    )
  }
  const takeCandidate = ({ axle: next, changes }: Worked): void =>
    take(
      next,
      changes.filter(({ kind }) => kind !== 'settle').map(change => changeWords(change, say)),
    )
  return (
    <main className="changes" aria-label="Changes">
      <header>
        <h2>Changes</h2>
        <span>
          from {setup}, {axle.id}
        </span>
        {origin === undefined ? null : (
          <span>
            made from {setups.find(each => each.id === origin.setup)?.name ?? 'a setup since removed'}:{' '}
            {origin.changes.join(' + ')}
          </span>
        )}
        <Switch
          label="How"
          options={[
            { value: 'look', label: 'Look for what fits' },
            { value: 'hand', label: 'Change by hand' },
          ]}
          value={way}
          onChange={setWay}
        />
        <ProposeWork proposing={proposing} view={view} />
        <span className="took" role="status">
          {took === null || made === undefined ? null : (
            <>
              {made.name} is now: {took}. It is compared with {setup}.{' '}
              <button
                type="button"
                className="step"
                onClick={() => {
                  showSetup(store, made.id)
                  showPage(store, 'travel')
                }}
              >
                Show it
              </button>
            </>
          )}
        </span>
      </header>
      {way === 'hand' ? (
        <ByHand axle={axle} shelf={shelf} units={units} targets={targets} onTake={take} />
      ) : (
        <>
          <div className="changes-map">
            <p className="axis-name">The coilover’s share of bump travel</p>
            <ProposalMap
              proposals={proposals}
              targets={targets}
              system={units}
              name={setup}
              looked={looked}
              onLook={setPointed}
              onTake={takeCandidate}
              onTarget={(target, value, dragging) => setTarget(store, target, value, dragging ? `map-${target}` : null)}
              onTargetSet={() => closeGesture(store)}
            />
          </div>
          <div className="changes-list">
            {proposals === null ? null : (
              <CandidateList
                proposals={proposals}
                targets={targets}
                say={say}
                course={course?.name ?? null}
                looked={looked}
                onLook={setPointed}
                onTake={takeCandidate}
              />
            )}
          </div>
          <div className="changes-asked">
            <TargetFields targets={planTargets ?? {}} usual={usual} system={units} />
            <RangeFields
              corner={axle.corner}
              chosen={chosen}
              kept={kept !== undefined}
              shelf={shelf}
              system={units}
              combinations={asked.list.length + asked.leftOut}
              onChange={(next, label) => chooseRanges(store, axle.id, next, label)}
            />
          </div>
        </>
      )}
    </main>
  )
}
