import { type Shelf, tubesFor } from '../../../core/changes/shelf.ts'
import { type HydraulicCorner, isHydraulic } from '../../../core/changes/stop-in-corner.ts'
import type { Corner, UnitSystem } from '../../../core/plan/schema.ts'
import { cutList } from '../../../core/spacer/cut-list.ts'
import { type Fit, fits, usable } from '../../../core/spacer/fit.ts'
import { makingWords, strengthWords } from '../../../core/spacer/making.ts'
import { unitOf } from '../../../core/units/quantity.ts'
import type { Say } from '../../../core/units/saying.ts'
import { Sentences } from './Sentences.tsx'

interface TubeProps {
  readonly before: Corner
  readonly after: HydraulicCorner
  readonly length: number
  readonly shelf: Shelf
  readonly units: UnitSystem
  readonly say: Say
}

/** What drawn-over-mandrel tube is most often made of: common practice. */
const STEEL = '1020'

/** Sizes listed; the best come first. */
const MOST = 8

/** The tube a spacer is cut from: what fits, what must come out of its bore, what it weighs and bears, how it is cut. */
export function TubePanel({ before, after, length, shelf, units, say }: TubeProps) {
  if (!isHydraulic(before)) return null
  const { shaftDiameter, body } = before.stop
  const sizes = tubesFor(before.stop, shelf)
  const tried = fits(sizes, shaftDiameter, body?.bore ?? null)
  const cut = cutList(after, length, sizes, STEEL, Math.max(before.stop.charge, after.stop.charge))
  const fine = (value: number): string => say(value, 'length', { decimal: true, digits: 3 })
  const bare = (value: number): string => say(value, 'length', { decimal: true, digits: 3, unit: false })
  const unit = unitOf('length', units).label
  return (
    <>
      <h3>The tube it is cut from</h3>
      {cut.ok ? (
        <Sentences
          lines={[
            ...(cut.list.strength.enough ? [] : [strengthWords(cut.list, say)]),
            ...makingWords(cut.list, say),
            ...(cut.list.strength.enough ? [strengthWords(cut.list, say)] : []),
            ...cut.list.errors.map(({ off, moves, engagement }) =>
              moves === null || engagement === null
                ? `Cut ${fine(Math.abs(off))} ${off < 0 ? 'short' : 'long'}, the stop is not met any more.`
                : `Cut ${fine(Math.abs(off))} ${off < 0 ? 'short' : 'long'}, engagement comes ${fine(Math.abs(moves))} of wheel travel ${moves < 0 ? 'sooner' : 'later'}.`,
            ),
          ]}
        />
      ) : (
        <p>No tube on the shelf goes over a shaft of {fine(shaftDiameter)}: have one turned, or add its size.</p>
      )}
      <table className="differences">
        <thead>
          <tr>
            <th scope="col">Stock size, {unit}</th>
            <th scope="col">on the shaft, {unit}</th>
            <th scope="col">in the body, {unit}</th>
            <th scope="col">does it fit</th>
          </tr>
        </thead>
        <tbody>
          {tried
            .filter(({ verdict }, i) => i < MOST && verdict !== 'not in the tables')
            .map(fit => (
              <FitRow key={`${fit.size.outerDiameter} ${fit.size.wall}`} fit={fit} fine={bare} />
            ))}
        </tbody>
      </table>
    </>
  )
}

function FitRow({ fit, fine }: { fit: Fit; fine: (value: number) => string }) {
  const { size, verdict, boring, onShaft, inBody } = fit
  const band = (value: Fit['inBody']): string =>
    value === null ? 'not known' : `${fine(value.least)} to ${fine(value.most)}`
  return (
    <tr className={usable(fit) ? 'made' : 'follows'}>
      <th scope="row">
        {fine(size.outerDiameter)} by {fine(size.wall)}
      </th>
      <td>{band(onShaft)}</td>
      <td>{band(inBody)}</td>
      <td>
        {verdict}
        {boring === null ? '' : `, to ${fine(boring.to)}`}
      </td>
    </tr>
  )
}
