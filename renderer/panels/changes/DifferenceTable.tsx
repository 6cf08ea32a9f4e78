import type { SetupDifference } from '../../../core/changes/differences.ts'

interface Props {
  readonly differences: readonly SetupDifference[]
  readonly caption: string
  /** Names of the two sides. */
  readonly before: string
  readonly after: string
}

/** What differs between two setups, in words, each side as it is written: what is done first, then what follows. */
export function DifferenceTable({ differences, caption, before, after }: Props) {
  return (
    <table className="differences">
      <caption className="spoken">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">In this setup</th>
          {[before, after].map((name, i) => (
            <th key={i === 0 ? 'before' : 'after'} scope="col">
              <span className="setup-name" title={name}>
                {name}
              </span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {differences.map(({ what, before: was, after: is, kind }) => (
          <tr key={what} className={kind}>
            <th scope="row">
              {what}
              {kind === 'follows' ? <i className="as"> follows</i> : null}
            </th>
            <td>{was}</td>
            <td>{is}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
