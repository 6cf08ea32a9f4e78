import type { ReactNode } from 'react'
import { unbroken } from '../findings/unbroken.ts'

interface Props {
  readonly lines: readonly string[]
  readonly children?: ReactNode
}

/** What a change does, a sentence a line: what it begins with, up to its colon, is what the eye looks for. */
export const Sentences = ({ lines, children }: Props) => (
  <ul className="reasons">
    {lines.map(line => {
      const [head, said] = parted(unbroken(line))
      return (
        <li key={line}>
          {head === null ? null : <b className={SHORT.test(head) ? 'short' : undefined}>{head}</b>}
          {said}
        </li>
      )
    })}
    {children}
  </ul>
)

/** Begins what is not as it should be. */
const SHORT = /^(Misses|Danger|Not strong enough):/

/** Letters of a beginning that is looked for; what is longer is a sentence with a colon in it. */
const MOST = 44

function parted(line: string): readonly [string | null, string] {
  const colon = line.indexOf(': ')
  return colon < 0 || colon > MOST ? [null, line] : [line.slice(0, colon + 1), line.slice(colon + 1)]
}
