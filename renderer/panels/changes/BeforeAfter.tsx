import { useMemo } from 'react'
import { setupDifferences } from '../../../core/changes/differences.ts'
import { evaluator, type Worked } from '../../../core/changes/evaluate.ts'
import { candidateCosts, landingWords } from '../../../core/changes/propose-words.ts'
import type { Axle, Setup, Targets, UnitSystem } from '../../../core/plan/schema.ts'
import type { Say } from '../../../core/units/saying.ts'
import { DifferenceTable } from './DifferenceTable.tsx'
import { Sentences } from './Sentences.tsx'

/** One side of a comparison. */
export interface Side {
  readonly setup: Setup
  readonly axle: Axle
}

interface Props {
  readonly before: Side
  readonly after: Side
  readonly units: UnitSystem
  readonly targets: Targets
  readonly say: Say
}

const named = ({ setup: { name } }: Side): string => (name === '' ? 'the setup without a name' : name)

/** Two setups of an axle side by side: what differs in words, what follows from it, and what it costs. */
export function BeforeAfter({ before, after, units, targets, say }: Props) {
  const [was, is] = useMemo(
    () => [before, after].map(({ axle }) => evaluator({ axle, units, targets })([]) as Worked),
    [before, after, units, targets],
  )
  const differences = useMemo(() => setupDifferences(before.axle, after.axle, units), [before, after, units])
  const { madeFrom } = after.setup
  return (
    <div className="before-after">
      <section aria-labelledby="before-after-title">
        <h3 id="before-after-title">Before and after, {after.axle.id}</h3>
        {madeFrom === undefined ? null : (
          <p>
            {named(after)} was made from {madeFrom.setup === before.setup.id ? named(before) : 'another setup'}:{' '}
            {madeFrom.changes.join(' + ')}.
          </p>
        )}
        {differences.length === 0 ? (
          <p>Nothing differs here: the two read the same in every figure.</p>
        ) : (
          <DifferenceTable
            differences={differences}
            caption={`What differs between ${named(before)} and ${named(after)}`}
            before={named(before)}
            after={named(after)}
          />
        )}
      </section>
      <section aria-labelledby="before-after-comes">
        <h3 id="before-after-comes">What it comes to</h3>
        <Sentences
          lines={[
            ...candidateCosts(is!, was!.figures, say),
            `Landing height before: ${landingWords(was!.figures.landing, say)}.`,
            `Landing height after: ${landingWords(is!.figures.landing, say)}.`,
          ]}
        />
        <p>Both are drawn on Travel and Terrain: the one shown solid, the other as a thin dashed line.</p>
      </section>
    </div>
  )
}
