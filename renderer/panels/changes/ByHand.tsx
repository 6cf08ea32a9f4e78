import { useMemo, useState } from 'react'
import { changeAxle } from '../../../core/changes/apply.ts'
import type { Change } from '../../../core/changes/change.ts'
import { setupDifferences } from '../../../core/changes/differences.ts'
import { type Candidate, evaluator } from '../../../core/changes/evaluate.ts'
import { candidateCosts, landingWords } from '../../../core/changes/propose-words.ts'
import { type Shelf, tubeOf } from '../../../core/changes/shelf.ts'
import { spacerEffect } from '../../../core/changes/spacer-effect.ts'
import { spacerWords } from '../../../core/changes/spacer-words.ts'
import { isHydraulic } from '../../../core/changes/stop-in-corner.ts'
import { changeWords } from '../../../core/changes/words.ts'
import type { Axle, Corner, Targets, UnitSystem } from '../../../core/plan/schema.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import { DifferenceTable } from './DifferenceTable.tsx'
import { HAND_KINDS, type HandKind, type HandKindId } from './hand-kinds.ts'
import { NitrogenPanel } from './NitrogenPanel.tsx'
import { Sentences } from './Sentences.tsx'
import { TubePanel } from './TubePanel.tsx'

interface Props {
  readonly axle: Axle
  readonly shelf: Shelf
  readonly units: UnitSystem
  readonly targets: Targets
  readonly onTake: (axle: Axle, changes: readonly string[]) => void
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** One exact change after another, each with what stays, what moves, what it costs and what brings that back. */
export function ByHand({ axle, shelf, units, targets, onTake }: Props) {
  const say = useMemo(() => sayIn(units), [units])
  const [done, setDone] = useState<readonly Change[]>([])
  const [chosen, setChosen] = useState<HandKindId>(() => firstKind(axle.corner))
  const [values, setValues] = useState<Readonly<Partial<Record<HandKindId, number>>>>({})
  const [parts, setParts] = useState<Readonly<Partial<Record<HandKindId, string>>>>({})
  const so = useMemo(() => changeAxle(axle, done, say), [axle, done, say])
  const from = so.ok ? so.axle : axle
  const { corner } = from
  const kind: HandKind = HAND_KINDS[chosen]
  const part = 'parts' in kind ? (parts[chosen] ?? kind.parts(shelf)[0]?.id ?? '') : ''
  const value = 'parts' in kind ? 0 : (values[chosen] ?? kind.first(corner, units))
  const change = useMemo(
    () => ('parts' in kind ? kind.change(corner, shelf, part) : kind.change(corner, value, tubeOf(corner, shelf))),
    [kind, corner, shelf, part, value],
  )
  const all = useMemo(() => (change === null ? done : [...done, change]), [done, change])
  const made = change === null ? null : changeAxle(from, [change], say)
  const evaluate = useMemo(() => evaluator({ axle, units, targets }), [axle, units, targets])
  const present = useMemo(() => evaluate([]), [evaluate])
  const candidate = useMemo(() => evaluate(all), [evaluate, all])
  const spacer = change?.kind === 'spacer' && made?.ok ? spacerEffect(corner, change, say) : null
  const noTube = chosen === 'spacer' && isHydraulic(corner) && tubeOf(corner, shelf) === null
  const refusal = noTube
    ? `No tube on the shelf goes over a shaft of ${say(corner.stop.shaftDiameter, 'length', { decimal: true })}: put one that does on the shelf, or have one turned.`
    : refusalOf(made, candidate, change === null)
  return (
    <div className="by-hand">
      <section aria-labelledby="hand-title">
        <h3 id="hand-title">One change</h3>
        <div className="row wide-choice">
          <label htmlFor="hand-kind">What</label>
          <select
            id="hand-kind"
            className="words"
            value={chosen}
            onChange={event => setChosen(event.currentTarget.value as HandKindId)}
          >
            {Object.entries(HAND_KINDS).map(([id, { name }]) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
        {'parts' in kind ? (
          <div className="row wide-choice">
            <label htmlFor="hand-part">Which</label>
            <select
              id="hand-part"
              className="words"
              value={part}
              onChange={event => setParts({ ...parts, [chosen]: event.currentTarget.value })}
            >
              {kind.parts(shelf).map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </div>
        ) : (
          <NumberField
            key={chosen}
            label={kind.ask}
            value={value}
            quantity={kind.quantity}
            system={units}
            onChange={next => setValues({ ...values, [chosen]: next })}
          />
        )}
        {done.length === 0 ? null : (
          <>
            <h4>Together with</h4>
            <ol className="together">
              {done.map((each, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a change is its place in the order they are made.
                <li key={i}>
                  {capital(changeWords(each, say))}{' '}
                  <button type="button" className="step" onClick={() => setDone(done.filter((_, at) => at !== i))}>
                    Take it back
                  </button>
                </li>
              ))}
            </ol>
          </>
        )}
        {refusal === null ? (
          <p className="hand-steps">
            <button
              type="button"
              className="chief"
              onClick={() => {
                if (!candidate.ok) return
                onTake(
                  candidate.axle,
                  all.map(each => changeWords(each, say)),
                )
                setDone([])
              }}
            >
              Make it a setup
            </button>
            <button type="button" className="plain" onClick={() => setDone(all)}>
              And another change
            </button>
          </p>
        ) : (
          <p className="wrong" role="alert">
            It cannot be made. {refusal}
          </p>
        )}
        {refusal === null && candidate.ok && present.ok ? (
          <>
            <h4>Before and after</h4>
            <DifferenceTable
              differences={setupDifferences(axle, candidate.axle, units)}
              caption="What differs before and after"
              before="before"
              after="after"
            />
            <Sentences
              lines={[
                ...(made?.ok ? made.notes : []),
                ...candidateCosts(candidate, present.figures, say),
                `Landing height: ${landingWords(candidate.figures.landing, say)}.`,
                ...candidate.dangers.map(danger => `Danger: ${danger}`),
              ]}
            />
          </>
        ) : null}
      </section>
      <section aria-label="The stop and its spacer">
        {spacer?.ok ? (
          <>
            <h3>What the spacer does</h3>
            <Sentences lines={spacerWords(spacer, units, say)} />
            <TubePanel before={corner} after={spacer.after} length={value} shelf={shelf} units={units} say={say} />
          </>
        ) : null}
        <NitrogenPanel corner={made?.ok ? made.axle.corner : corner} units={units} say={say} />
      </section>
    </div>
  )
}

/** What is most likely to be tried on a corner. */
const firstKind = (corner: Corner): HandKindId =>
  isHydraulic(corner) ? 'spacer' : corner.stop === null ? 'preload' : 'shim'

function refusalOf(made: ReturnType<typeof changeAxle> | null, candidate: Candidate, nothing: boolean): string | null {
  if (nothing) return 'There is nothing here it could be done to, or nothing on the shelf.'
  if (made !== null && !made.ok) return made.reason
  return candidate.ok ? null : candidate.reason
}
