import type { Axle } from '../../../core/plan/schema.ts'
import { FIGURES } from '../../../core/tolerance/figures.ts'
import { measurementName } from '../../../core/tolerance/measurement-names.ts'
import { doubtText, MOST_RANKED, repeatText } from '../../../core/tolerance/saying.ts'
import type { AxleSureness } from '../../../core/tolerance/steps.ts'
import type { System } from '../../../core/units/quantity.ts'
import { useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'

/** Which measurements to repeat first, and what that buys. */
export function Rankings({ sureness, axle, system }: { sureness: AxleSureness; axle: Axle; system: System }) {
  const store = useStore()
  const springs = axle.corner.springs.springs.map(({ name }) => name)
  const told = sureness.rankings.flatMap(({ figure, ranking }) => {
    const of = FIGURES.find(({ id }) => id === figure)
    const first = ranking[0]
    return of === undefined || first === undefined ? [] : [{ of, first, ranking: ranking.slice(0, MOST_RANKED) }]
  })
  if (told.length === 0) return <p>Nothing to repeat: no measurement is taken to be off.</p>
  return told.map(({ of, first, ranking }) => (
    <section key={of.id} className="sure-ranking">
      <h4>
        For the {of.name}, {doubtText(first.width, of.quantity, system)} now
      </h4>
      <ol>
        {ranking.map(each => (
          <li key={each.measured.path}>
            <button type="button" className="step" onClick={() => goToField(store, each.measured.path)}>
              {measurementName(each.measured.path, springs)}
            </button>
            {repeatText(each, of.quantity, system)}
          </li>
        ))}
      </ol>
    </section>
  ))
}
