import { memo } from 'react'
import type { Finding } from '../../../core/budget/results.ts'
import { FindingShape } from '../marks/FindingShape.tsx'
import { MARK_RADIUS, type MarkPlace } from './labels/mark-places.ts'

interface FindingMarkProps {
  readonly place: MarkPlace
  readonly focused: boolean
  readonly onFocusFinding: (id: string | null) => void
  /** The person wants to read it. */
  readonly onTakeFinding: (id: string) => void
}

/** Findings are found anew at every edit; most say what they said before. */
const sameFinding = (a: Finding, b: Finding): boolean =>
  a.id === b.id && a.severity === b.severity && a.message === b.message

/** One finding where it happens: hovering or focusing it names it to the list, and the list outlines it here; pressing it leads to the list. */
export const FindingMark = memo(
  function FindingMark({ place, focused, onFocusFinding, onTakeFinding }: FindingMarkProps) {
    const { finding, number, x, y } = place
    const enter = () => onFocusFinding(finding.id)
    const leave = () => onFocusFinding(null)
    return (
      // biome-ignore lint/a11y/useSemanticElements: a button cannot stand inside an svg
      <g
        className="finding-mark"
        role="button"
        tabIndex={0}
        aria-label={`Finding ${number}, ${finding.severity}: ${finding.message}`}
        transform={`translate(${x} ${y})`}
        onFocus={enter}
        onBlur={leave}
        onPointerEnter={enter}
        onPointerLeave={leave}
        onClick={() => onTakeFinding(finding.id)}
        onKeyDown={event => {
          if (event.key !== 'Enter' && event.key !== ' ') return
          event.preventDefault()
          onTakeFinding(finding.id)
        }}
      >
        <circle r={MARK_RADIUS + 5} fill="none" stroke={focused ? 'var(--ink)' : 'none'} strokeWidth="2" />
        <circle r={MARK_RADIUS + 4} fill="transparent" />
        <FindingShape severity={finding.severity} number={number} radius={MARK_RADIUS} rim />
      </g>
    )
  },
  (a, b) =>
    a.place.x === b.place.x &&
    a.place.y === b.place.y &&
    sameFinding(a.place.finding, b.place.finding) &&
    a.place.number === b.place.number &&
    a.focused === b.focused &&
    a.onFocusFinding === b.onFocusFinding &&
    a.onTakeFinding === b.onTakeFinding,
)
