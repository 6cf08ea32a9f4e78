import { ALL_BUT, chanceText, NO_END } from '../../../core/tolerance/saying.ts'
import type { FigureBand } from '../../../core/tolerance/sureness.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'
import { BandPicture } from './BandPicture.tsx'

type Band = Pick<FigureBand, 'id' | 'name' | 'quantity' | 'value' | 'low' | 'high' | 'present' | 'firstOrder' | 'why'>

/** Numbers as they stand, each with the band 90 of 100 trials lie in. */
export function BandTable({
  head,
  legend,
  bands,
  system,
}: {
  head: string
  legend?: string
  bands: readonly Band[]
  system: System
}) {
  return (
    <table className="sure-figures">
      <thead>
        <tr>
          <th scope="col">{head}</th>
          <th scope="col">as it stands</th>
          <th scope="col">5 of 100 below</th>
          <th scope="col">5 of 100 above</th>
          <td>{legend}</td>
        </tr>
      </thead>
      <tbody>
        {bands.map(({ id, name, quantity, value, low, high, present, firstOrder, why }) => (
          <tr key={id}>
            <th scope="row">
              {name}
              {why === null ? '' : ' *'}
              {present > ALL_BUT ? null : <small> {chanceText(present)} of trials have one</small>}
            </th>
            {[value, low, high].map((each, i) => (
              <td key={['value', 'low', 'high'][i]}>
                {each === Infinity ? NO_END : formatMeasure(each, quantity, system, { unit: true })}
              </td>
            ))}
            <td>
              <BandPicture value={value} low={low} high={high} firstOrder={firstOrder} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
