import type { FigureBand } from '../../../core/tolerance/sureness.ts'
import type { System } from '../../../core/units/quantity.ts'
import { BandPicture } from './BandPicture.tsx'
import { chanceText, figureText, TOLD } from './words.ts'

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
