import { useMemo } from 'react'
import { degrees, nitrogenFacts, nitrogenWords } from '../../../core/changes/nitrogen-facts.ts'
import { chargeByTemperature, squeezeByStroke } from '../../../core/changes/nitrogen-tables.ts'
import { isHydraulic } from '../../../core/changes/stop-in-corner.ts'
import type { Corner, HydraulicStop, UnitSystem } from '../../../core/plan/schema.ts'
import type { Say } from '../../../core/units/saying.ts'
import { Sentences } from './Sentences.tsx'

interface Props {
  readonly units: UnitSystem
  readonly say: Say
}

/** What nitrogen does besides the ideal gas of the other figures: hot and cold, squeezed fast, and under a gauge. */
export function NitrogenPanel({ corner, units, say }: Props & { corner: Corner }) {
  if (!isHydraulic(corner)) return null
  const { stop } = corner
  return (
    <>
      <h3>Nitrogen as it is</h3>
      <Sentences lines={nitrogenWords(nitrogenFacts(stop), units, say)} />
      <WarmTable stop={stop} units={units} say={say} />
      <SqueezeTable stop={stop} say={say} />
    </>
  )
}

function WarmTable({ stop, units, say }: Props & { stop: HydraulicStop }) {
  const rows = useMemo(() => chargeByTemperature(stop), [stop])
  return (
    <table className="differences">
      <caption>The charge, stop fully out, as it warms and cools</caption>
      <thead>
        <tr>
          <th scope="col">Temperature</th>
          <th scope="col">nitrogen</th>
          <th scope="col">ideal gas</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ at, real, ideal }) => (
          <tr key={at}>
            <th scope="row">{degrees(at, units)}</th>
            <td>{real === null ? 'not known' : say(real, 'pressure')}</td>
            <td>{say(ideal, 'pressure')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function SqueezeTable({ stop, say }: { stop: HydraulicStop; say: Say }) {
  const rows = useMemo(() => squeezeByStroke(stop), [stop])
  return (
    <table className="differences">
      <caption>Force of its gas pushed in fast, along the stop</caption>
      <thead>
        <tr>
          <th scope="col">Pushed in</th>
          <th scope="col">nitrogen</th>
          <th scope="col">n = 1.4</th>
          <th scope="col">difference</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ share, gas }) => (
          <tr key={share}>
            <th scope="row">{say(share * stop.stroke, 'length')}</th>
            {gas.ok ? (
              <>
                <td>{say(gas.real.force, 'force')}</td>
                <td>{say(gas.ideal.force, 'force')}</td>
                <td>{say(gas.difference.force, 'share', { digits: 1, sign: true })}</td>
              </>
            ) : (
              <td colSpan={3}>not known</td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
