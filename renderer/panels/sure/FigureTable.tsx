import type { FigureBand } from '../../../core/tolerance/sureness.ts'
import type { System } from '../../../core/units/quantity.ts'
import { chanceText, figureText, TOLD } from './words.ts'

const WIDTH = 120
const INSET = 4

/** One band on its own scale: the trials above, slopes below, the value as a diamond. */
function BandPicture({ value, low, high, firstOrder }: FigureBand) {
  const ends = [low, high, value, ...(firstOrder === null ? [] : [firstOrder.low, firstOrder.high])]
  const [least, most] = [Math.min(...ends), Math.max(...ends)]
  const x = (at: number): number =>
    most > least ? INSET + ((at - least) / (most - least)) * (WIDTH - 2 * INSET) : WIDTH / 2
  const span = (from: number, to: number, y: number): string =>
    `M${x(from).toFixed(1)} ${y - 3}v6M${x(to).toFixed(1)} ${y - 3}v6M${x(from).toFixed(1)} ${y}H${x(to).toFixed(1)}`
  return (
    <svg width={WIDTH} height="20" viewBox={`0 0 ${WIDTH} 20`} aria-hidden="true">
      <path d={span(low, high, 7)} stroke="var(--ink)" strokeWidth="1.5" fill="none" />
      {firstOrder === null ? null : (
        <path d={span(firstOrder.low, firstOrder.high, 15)} stroke="var(--ink3)" strokeDasharray="3 2" fill="none" />
      )}
      <path
        d={`M${x(value).toFixed(1)} 2l4 5l-4 5l-4 -5z`}
        fill="var(--sheet)"
        stroke="var(--ink)"
        strokeWidth="1.25"
      />
    </svg>
  )
}

/** Each figure as it stands, with the band 90 of 100 trials lie in. */
export function FigureTable({ figures, system }: { figures: readonly FigureBand[]; system: System }) {
  const told = TOLD.flatMap(id => figures.filter(figure => figure.id === id))
  const rest = figures.filter(({ id }) => !TOLD.includes(id))
  return (
    <>
      <Figures figures={told} system={system} />
      {rest.length === 0 ? null : (
        <details className="sure-rest">
          <summary>The other {rest.length} figures</summary>
          <Figures figures={rest} system={system} />
        </details>
      )}
    </>
  )
}

function Figures({ figures, system }: { figures: readonly FigureBand[]; system: System }) {
  return (
    <table className="sure-figures">
      <thead>
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">as it stands</th>
          <th scope="col">5 of 100 below</th>
          <th scope="col">5 of 100 above</th>
          <td>solid: trials; dashed: slopes alone</td>
        </tr>
      </thead>
      <tbody>
        {figures.map(figure => (
          <tr key={figure.id}>
            <th scope="row">
              {figure.name}
              {figure.why === null ? '' : ' *'}
              {figure.present > 0.995 ? null : <small> {chanceText(figure.present)} of trials have one</small>}
            </th>
            <td>{figureText(figure.value, figure.quantity, system)}</td>
            <td>{figureText(figure.low, figure.quantity, system)}</td>
            <td>{figureText(figure.high, figure.quantity, system)}</td>
            <td>
              <BandPicture {...figure} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
