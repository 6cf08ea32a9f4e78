import type { ReactNode } from 'react'

/** Lines of a list that has room for so many, and how many there are more: a sheet stays one page. */
export function fitting(lines: readonly string[], room: number, where: string): readonly string[] {
  if (lines.length <= room) return lines
  const left = lines.length - room + 1
  return [...lines.slice(0, room - 1), `And ${left} more: see ${where}.`]
}

/** A heading over lines; each line is cut after two, with dots. */
export function Lines({ head, lines, ordered }: { head: string; lines: readonly string[]; ordered?: true }) {
  const items: ReactNode = lines.map((line, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: printed once, in this order
    <li key={i}>
      <span>{line}</span>
    </li>
  ))
  return (
    <section>
      <h2>{head}</h2>
      {ordered === true ? <ol>{items}</ol> : <ul>{items}</ul>}
    </section>
  )
}

/** Places to sign. */
export const Foot = ({ names, left, right }: { names: readonly string[]; left: string; right: string }) => (
  <footer>
    {names.map(name => (
      <div key={name}>{name}</div>
    ))}
    <p>
      <span>{left}</span>
      <span>{right}</span>
    </p>
  </footer>
)

/** Octagon, triangle or circle: shape tells how much it matters, in grey too. */
export const Mark = ({ severity }: { severity: 'danger' | 'caution' | 'note' }) => (
  <svg className="mark" viewBox="-10 -10 20 20" aria-label={severity} role="img">
    {severity === 'danger' ? (
      <path
        d="M-3.8 -8.5h7.6l4.7 4.7v7.6l-4.7 4.7h-7.6l-4.7 -4.7v-7.6zM-1 -5h2v6h-2zM-1 3h2v2h-2z"
        style={{ fill: 'var(--alarm)', fillRule: 'evenodd' }}
      />
    ) : severity === 'caution' ? (
      <path
        d="M0 -8.5L9.5 7.5H-9.5zM-1 -3.6h2v5.4h-2zM-1 3.4h2v2h-2z"
        style={{ fill: 'var(--ink)', fillRule: 'evenodd' }}
      />
    ) : (
      <path
        d="M-8 0a8 8 0 1 0 16 0a8 8 0 1 0 -16 0M0 -1.5v5.5M0 -5v2"
        style={{ fill: 'none', stroke: 'var(--ink)', strokeWidth: 1.5 }}
      />
    )}
  </svg>
)
