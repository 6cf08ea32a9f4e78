import { useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import type { FigureCell, FigureRow } from './figures.ts'

export interface TableSetup {
  readonly id: string
  readonly name: string
  /** Drawn solid on the plate; the others are dashed. */
  readonly shown: boolean
  readonly dampingAssumed: boolean
}

const Cell = ({ cell, shown }: { cell: FigureCell | null; shown: boolean }) => (
  <td className={shown ? 'shown' : undefined}>
    {cell === null ? null : cell.about ? <i className="about">about {cell.text}</i> : cell.text}
  </td>
)

interface TableProps {
  readonly rows: readonly FigureRow[]
  /** What is wrong with a ride before it begins, in sentences. */
  readonly cautions: readonly string[]
  readonly setups: readonly TableSetup[]
}

/** What matters of the rides, in plain words, before and after. */
export function RideTable({ rows, cautions, setups }: TableProps) {
  const store = useStore()
  const about = rows.some(({ cells }) => cells.some(cell => cell?.about))
  const assumed = setups.filter(({ dampingAssumed }) => dampingAssumed)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
    <section className="ride-figures" aria-label="What it comes to" tabIndex={0}>
      {cautions.map(words => (
        <p key={words} className="ride-caution">
          <b>Caution</b> {words}
        </p>
      ))}
      <table>
        <thead>
          <tr>
            <th scope="col">What it comes to</th>
            {setups.map(({ id, name, shown }) => (
              <th key={id} scope="col" className={shown ? 'shown' : undefined}>
                <svg width="18" height="8" aria-hidden="true">
                  <path
                    d="M0 4h18"
                    stroke="currentColor"
                    strokeWidth={shown ? 2 : 1.25}
                    strokeDasharray={shown ? undefined : '4 3'}
                  />
                </svg>
                <b title={name}>{name === '' ? 'Setup without a name' : name}</b>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, cells }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {setups.map(({ id, shown }, i) => (
                <Cell key={id} cell={cells[i] ?? null} shown={shown} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {about ? (
        <p className="aside">“About” is from while steel met steel: how much it is hangs on how stiff the steel is.</p>
      ) : null}
      {assumed.length === 0 ? null : (
        <p className="aside">
          Damping is <i className="about">assumed</i>
          {assumed.length < setups.length ? ` in ${assumed.map(({ name }) => name).join(', ')}` : ''}: the plan holds no
          damper curves.{' '}
          <button type="button" className="step" onClick={() => goToField(store, 'corner.shock.compression')}>
            Enter them
          </button>
        </p>
      )}
    </section>
  )
}
