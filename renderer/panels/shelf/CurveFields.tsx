import type { Problem } from '../../../core/plan/problem.ts'
import type { System } from '../../../core/units/quantity.ts'
import { NumberField } from '../../fields/NumberField.tsx'
import type { LooseElastomer } from './part-fields.ts'
import { problemWords } from './part-problem.ts'

interface Props {
  readonly part: LooseElastomer
  readonly system: System
  readonly wouldBe: (part: LooseElastomer) => readonly Problem[]
  readonly onChange: (part: LooseElastomer, what: string) => void
}

/** The curve of an elastomer stop: how far it is squeezed, and what that takes. The first row is the touch. */
export function CurveFields({ part, system, wouldBe, onChange }: Props) {
  const { curve } = part
  const last = curve.at(-1)!
  const withRow = (at: number, row: Partial<LooseElastomer['curve'][number]>): LooseElastomer => ({
    ...part,
    curve: curve.map((each, i) => (i === at ? { ...each, ...row } : each)),
  })
  return (
    <>
      {curve.map((row, i) =>
        i === 0 ? null : (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the curve.
          <fieldset key={i} className="span">
            <legend>Point {i}</legend>
            <NumberField
              label="Squeezed by"
              value={row.deflection}
              quantity="length"
              system={system}
              refuses={deflection => problemWords(wouldBe(withRow(i, { deflection })), 'length', system)}
              onChange={deflection => onChange(withRow(i, { deflection }), `point ${i}`)}
            />
            <NumberField
              label="takes"
              value={row.force}
              quantity="force"
              system={system}
              refuses={force => problemWords(wouldBe(withRow(i, { force })), 'force', system)}
              onChange={force => onChange(withRow(i, { force }), `point ${i}`)}
            />
            {curve.length > 2 ? (
              <button
                type="button"
                className="step"
                onClick={() => onChange({ ...part, curve: curve.filter((_, at) => at !== i) }, `point ${i} taken out`)}
              >
                Take point {i} out
              </button>
            ) : null}
          </fieldset>
        ),
      )}
      <button
        type="button"
        className="step"
        onClick={() =>
          onChange(
            { ...part, curve: [...curve, { deflection: last.deflection * 1.1, force: last.force * 1.25 }] },
            'point added',
          )
        }
      >
        Add a point
      </button>
    </>
  )
}
