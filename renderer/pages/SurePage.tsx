import { carMeasuredOf } from '../../core/tolerance/car-measured.ts'
import { measuredOf } from '../../core/tolerance/measured.ts'
import { measurementName, planMeasurementName } from '../../core/tolerance/measurement-names.ts'
import { chanceLines, noEndText, reasons } from '../../core/tolerance/saying.ts'
import { FigureTable } from '../panels/sure/FigureTable.tsx'
import { LedgerTable } from '../panels/sure/LedgerTable.tsx'
import { Rankings } from '../panels/sure/Rankings.tsx'
import { SureProgress } from '../panels/sure/SureProgress.tsx'
import { ToleranceField } from '../panels/sure/ToleranceField.tsx'
import { shownAxle, shownSetup } from '../state/selectors.ts'
import { useSureView } from '../sure-context.ts'
import { useSelectGroup } from '../window-context.ts'

/** How far off each measurement may be, what that does to every figure, and which to repeat first. */
export function SurePage() {
  const { axle, setup, plan, system, tolerances } = useSelectGroup(state => ({
    axle: shownAxle(state).axle,
    setup: shownSetup(state).setup,
    plan: state.plan,
    system: state.plan.units,
    tolerances: state.plan.tolerances,
  }))
  const { sureness, ledger } = useSureView()
  const springs = axle.corner.springs.springs.map(({ name }) => name)
  const ofCar = carMeasuredOf(plan, setup)
  const figures = sureness?.figures ?? []
  const noEnd = sureness === null ? null : noEndText(sureness)
  const chances = sureness === null ? [] : chanceLines(sureness, ledger)
  return (
    <main className="sure" aria-label="How sure">
      <header>
        <h2>How sure</h2>
        <span>
          {setup.name}, {axle.id}
        </span>
        <SureProgress />
      </header>
      <div className="sure-results">
        {sureness === null ? null : (
          <>
            <FigureTable figures={sureness.figures} system={system} />
            {reasons(figures).map(reason => (
              <p key={reason} className="sure-why">
                * {reason}
              </p>
            ))}
            {noEnd === null ? null : <p className="sure-why">{noEnd}</p>}
            {ledger === null ? null : (
              <>
                <h3>Demands</h3>
                <LedgerTable ledger={ledger} plan={plan} />
              </>
            )}
            <h3>Chances</h3>
            {chances.length === 0 ? <p>No trial found anything worth saying.</p> : null}
            <ul className="sure-chances">
              {chances.map(line => (
                <ChanceLine key={line} line={line} />
              ))}
            </ul>
            <h3>Measure first</h3>
            <Rankings sureness={sureness} axle={axle} system={system} />
          </>
        )}
      </div>
      <section className="sure-tolerances" aria-label="Tolerances">
        <h3>How far off, either way</h3>
        <p>Type over what you know better. Empty a field to go back to what is usual.</p>
        {measuredOf(axle, tolerances).map(measured => (
          <ToleranceField
            key={measured.path}
            name={measurementName(measured.path, springs)}
            path={`${axle.id}.${measured.path}`}
            measured={measured}
            system={system}
          />
        ))}
        {ofCar.length === 0 ? null : <h3>The car and its loads</h3>}
        {ofCar.map(measured => (
          <ToleranceField
            key={measured.path}
            name={planMeasurementName(measured.path, plan)}
            path={measured.path}
            measured={measured}
            system={system}
          />
        ))}
      </section>
    </main>
  )
}

/** What may be found, and how often the trials find it, one under the other. */
function ChanceLine({ line }: { line: string }) {
  const [what = '', ...rest] = line.split(': ')
  return (
    <li>
      <span>{what}:</span> {rest.join(': ')}
    </li>
  )
}
