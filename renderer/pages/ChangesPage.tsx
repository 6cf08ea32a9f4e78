import { useMemo, useState } from 'react'
import { evaluator, type Worked } from '../../core/changes/evaluate.ts'
import { toHand } from '../../core/changes/shelf.ts'
import { targetsOf } from '../../core/changes/targets.ts'
import { firstChosen } from '../../core/changes/usual-ranges.ts'
import { changeWords } from '../../core/changes/words.ts'
import type { Axle, Setup } from '../../core/plan/schema.ts'
import { sayIn } from '../../core/units/saying.ts'
import { ProposalMap } from '../charts/map/ProposalMap.tsx'
import { saidElsewhere } from '../fields/refusals.ts'
import { BeforeAfter, type Side } from '../panels/changes/BeforeAfter.tsx'
import { ByHand } from '../panels/changes/ByHand.tsx'
import { CandidateList } from '../panels/changes/CandidateList.tsx'
import { ChangesHead } from '../panels/changes/ChangesHead.tsx'
import { NothingToCompare } from '../panels/changes/NothingToCompare.tsx'
import { ProposeWork } from '../panels/changes/ProposeWork.tsx'
import { RangeFields } from '../panels/changes/RangeFields.tsx'
import { setTarget, TargetFields } from '../panels/changes/TargetFields.tsx'
import { useProposals } from '../panels/changes/use-proposals.ts'
import { ShelfPanel } from '../panels/shelf/ShelfPanel.tsx'
import { useShelf } from '../shelf-kept.ts'
import { closeGesture } from '../state/edit.ts'
import { makeSetup } from '../state/made-setup.ts'
import { chooseRanges } from '../state/ranges.ts'
import { shownAxle, shownSetup } from '../state/selectors.ts'
import type { ChangesWay } from '../state/state.ts'
import { showChanges, showPage, showSetup } from '../state/view.ts'
import { useSelectGroup, useStore } from '../window-context.ts'

/** What would meet the targets, what it costs, how to make it a setup; before and after; and the shelf parts come from. */
export function ChangesPage() {
  const store = useStore()
  const { way, units, axle, setup } = useSelectGroup(state => ({
    way: state.view.changes ?? 'look',
    units: state.plan.units,
    axle: shownAxle(state).axle,
    setup: shownSetup(state).setup,
  }))
  return (
    <Changing
      key={`${setup.id} ${axle.id} ${axle.corner.stop?.kind} ${units}`}
      axle={axle}
      setup={setup}
      way={way}
      onWay={next => showChanges(store, next)}
    />
  )
}

interface Props {
  readonly axle: Axle
  readonly setup: Setup
  readonly way: ChangesWay
  readonly onWay: (way: ChangesWay) => void
}

/** What came of making a candidate a setup: told until that setup is undone or another is compared. */
type Took =
  | { readonly kind: 'made'; readonly id: string | null; readonly words: string }
  | { readonly kind: 'refused'; readonly words: string }

function Changing({ axle, setup, way, onWay }: Props) {
  const store = useStore()
  const plan = useSelectGroup(({ plan: { units, targets, terrains, ranges, setups } }) => ({
    units,
    targets,
    terrains,
    kept: ranges?.[axle.id],
    setups,
  }))
  const { units, kept, setups } = plan
  const { compared } = useSelectGroup(state => ({ compared: state.view.compared }))
  const say = useMemo(() => sayIn(units), [units])
  const { targets, usual } = useMemo(() => targetsOf(plan.targets), [plan.targets])
  const { keptShelf, shelfView } = useShelf()
  const { shelf } = shelfView
  const chosen = useMemo(() => kept ?? firstChosen(axle.corner, shelf, units), [kept, axle, shelf, units])
  const { proposing, asked, view, course } = useProposals(axle, plan, chosen, shelf, way === 'look')
  const { proposals } = view
  const other = useMemo(() => sideOf(setups, compared, axle, setup.id), [setups, compared, axle, setup.id])
  const ghost = useMemo(
    () =>
      other === null
        ? null
        : { name: other.setup.name, candidate: evaluator({ axle: other.axle, units, targets })([]) as Worked },
    [other, units, targets],
  )
  const [pointed, setPointed] = useState<Worked | null>(null)
  const looked = pointed !== null && proposals?.order.includes(pointed) ? pointed : null
  const [took, setTook] = useState<Took | null>(null)
  const take = (next: Axle, changes: readonly string[]): void => {
    const [problem] = makeSetup(store, next, changes)
    setTook(
      problem === undefined
        ? { kind: 'made', id: store.read().view.compared, words: changes.join(' + ') }
        : { kind: 'refused', words: saidElsewhere(problem, units).right },
    )
  }
  const takeCandidate = ({ axle: next, changes }: Worked): void =>
    take(
      next,
      changes.filter(({ kind }) => kind !== 'settle').map(change => changeWords(change, say)),
    )
  const [before, after] = other === null ? [null, null] : inOrder(setups, other, { setup, axle })
  return (
    <main className="changes" aria-label="Changes">
      <ChangesHead setup={setup} axle={axle.id} setups={setups} way={way} onWay={onWay}>
        <span className="took" role="status">
          {took?.kind === 'refused' ? `It cannot be a setup. ${took.words}` : null}
          {took?.kind !== 'made' || took.id !== other?.setup.id ? null : (
            <>
              {other.setup.name} is now: {took.words}. It is compared with {setup.name}.{' '}
              <button
                type="button"
                className="step"
                onClick={() => {
                  showSetup(store, other.setup.id)
                  showPage(store, 'travel')
                }}
              >
                Show it
              </button>
            </>
          )}
        </span>
        {way === 'look' ? <ProposeWork proposing={proposing} view={view} /> : null}
      </ChangesHead>
      {way === 'shelf' ? (
        <ShelfPanel kept={keptShelf} view={shelfView} corner={axle.corner} system={units} say={say} />
      ) : null}
      {way === 'compare' ? (
        before === null || after === null ? (
          <NothingToCompare only={setups.length === 1} />
        ) : (
          <BeforeAfter before={before} after={after} units={units} targets={targets} say={say} />
        )
      ) : null}
      {way === 'hand' ? (
        <ByHand axle={axle} shelf={toHand(shelf)} units={units} targets={targets} onTake={take} />
      ) : null}
      {way === 'look' ? (
        <>
          <div className="changes-map">
            <p className="axis-name">The coilover’s share of bump travel</p>
            <ProposalMap
              proposals={proposals}
              targets={targets}
              system={units}
              name={setup.name}
              other={ghost}
              looked={looked}
              onLook={setPointed}
              onTake={takeCandidate}
              onTarget={(target, value, dragging) => setTarget(store, target, value, dragging ? `map-${target}` : null)}
              onTargetSet={() => closeGesture(store)}
            />
          </div>
          <div className="changes-list">
            {proposals === null ? (
              view.running ? (
                <p>The candidates stand here when all of them are worked out.</p>
              ) : null
            ) : (
              <CandidateList
                proposals={proposals}
                targets={targets}
                say={say}
                course={course}
                looked={looked}
                onLook={setPointed}
                onTake={takeCandidate}
              />
            )}
          </div>
          <div className="changes-asked">
            <TargetFields targets={plan.targets ?? {}} usual={usual} system={units} />
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
      ) : null}
    </main>
  )
}

/** The setup the shown one is compared with, if it is another and has the axle. */
function sideOf(setups: readonly Setup[], compared: string | null, { id }: Axle, shown: string): Side | null {
  const setup = setups.find(each => each.id === compared && each.id !== shown)
  const axle = setup?.axles.find(each => each.id === id)
  return setup === undefined || axle === undefined ? null : { setup, axle }
}

/** What was made from the other comes after it; else the order of the plan. */
function inOrder(setups: readonly Setup[], one: Side, two: Side): readonly [Side, Side] {
  if (one.setup.madeFrom?.setup === two.setup.id) return [two, one]
  if (two.setup.madeFrom?.setup === one.setup.id) return [one, two]
  const place = ({ setup }: Side): number => setups.findIndex(({ id }) => id === setup.id)
  return place(one) < place(two) ? [one, two] : [two, one]
}
