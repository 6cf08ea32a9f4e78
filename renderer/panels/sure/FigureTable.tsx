import { TOLD } from '../../../core/tolerance/saying.ts'
import type { FigureBand } from '../../../core/tolerance/sureness.ts'
import type { System } from '../../../core/units/quantity.ts'
import { BandTable } from './BandTable.tsx'

const LEGEND = 'solid: trials; dashed: slopes alone'

/** Each figure as it stands, with the band 90 of 100 trials lie in. */
export function FigureTable({ figures, system }: { figures: readonly FigureBand[]; system: System }) {
  const told = TOLD.flatMap(id => figures.filter(figure => figure.id === id))
  const rest = figures.filter(({ id }) => !TOLD.includes(id))
  return (
    <>
      <BandTable head="Figure" legend={LEGEND} bands={told} system={system} />
      {rest.length === 0 ? null : (
        <details className="sure-rest">
          <summary>The other {rest.length} figures</summary>
          <BandTable head="Figure" legend={LEGEND} bands={rest} system={system} />
        </details>
      )}
    </>
  )
}
