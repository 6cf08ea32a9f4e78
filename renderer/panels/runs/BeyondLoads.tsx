import type { RunFigures } from '../../../core/runs/figures.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'
import { shownShare } from '../../charts/terrain/shown-share.ts'
import { onTape } from '../../charts/text/length-spans.ts'
import { unbroken } from '../findings/unbroken.ts'

interface Props {
  /** Of the run shown, and of the one it is compared with where that was laid over the same plan. */
  readonly beyond: RunFigures['beyond']
  readonly other: RunFigures['beyond'] | null
  readonly names: readonly string[]
  readonly system: System
}

/** How much of the time the wheel was past where each load of the ledger takes it. */
export const BeyondLoads = ({ beyond, other, names, system }: Props) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
  <section className="beyond" aria-label="Time past each load" tabIndex={0}>
    <h3>Time past each load</h3>
    {beyond.length === 0 ? (
      <p>The plan has no loads. Add them under Demands, on the left.</p>
    ) : (
      <table>
        <thead>
          <tr>
            <th scope="col">Load takes the wheel to</th>
            {names.map(name => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {beyond.map(({ id, label, wheel, share }) => {
            const there = other?.find(each => each.id === id)
            return (
              <tr key={id}>
                <th scope="row">
                  {label},{' '}
                  {unbroken(
                    formatMeasure(onTape(wheel, system), 'length', system, {
                      sign: true,
                      unit: true,
                      digits: system === 'metric' ? 0 : undefined,
                    }),
                  )}
                </th>
                <td>
                  <svg width="36" height="8" aria-hidden="true">
                    <rect x="0" y="1" width={36 * Math.min(1, share)} height="6" fill="var(--ink2)" />
                    <path d="M0 0v8" stroke="var(--ink3)" />
                  </svg>{' '}
                  {shownShare(share)}
                </td>
                {names.length > 1 ? <td>{there === undefined ? '' : shownShare(there.share)}</td> : null}
              </tr>
            )
          })}
        </tbody>
      </table>
    )}
  </section>
)
