import type { Severity } from '../../../core/budget/results.ts'

interface FindingShapeProps {
  readonly severity: Severity
  readonly number: number
  /** px */
  readonly radius?: number
  /** A rim of the sheet around it keeps it apart from the lines it stands on. */
  readonly rim?: boolean
}

const RIM = { stroke: 'var(--sheet)', strokeWidth: 3, strokeLinejoin: 'round', paintOrder: 'stroke' } as const

/** Octagon for danger, filled triangle for caution, open circle for a note: shape and number tell it, centred on 0, 0. */
export function FindingShape({ severity, number, radius: r = 7.5, rim = false }: FindingShapeProps) {
  const around = rim ? RIM : {}
  return (
    <>
      {rim && severity === 'note' ? <circle r={r * 0.92 + 2} fill="var(--sheet)" /> : null}
      {severity === 'danger' ? (
        <path
          d={`M${-r * 0.45} ${-r}h${r * 0.9}l${r * 0.55} ${r * 0.55}v${r * 0.9}l${-r * 0.55} ${r * 0.55}h${-r * 0.9}l${-r * 0.55} ${-r * 0.55}v${-r * 0.9}z`}
          fill="var(--alarm)"
          {...around}
        />
      ) : severity === 'caution' ? (
        <path d={`M0 ${-r * 1.1}L${r * 1.15} ${r * 0.9}H${-r * 1.15}z`} fill="var(--ink)" {...around} />
      ) : (
        <circle r={r * 0.92} fill="var(--sheet)" stroke="var(--ink)" strokeWidth="1.25" />
      )}
      <text
        y={severity === 'caution' ? r * 0.7 : r * 0.48}
        textAnchor="middle"
        fontSize={r * (number > 9 ? 1.05 : 1.3)}
        fontWeight="600"
        fill={severity === 'note' ? 'var(--ink)' : 'var(--sheet)'}
      >
        {number}
      </text>
    </>
  )
}

/** The same mark as an image of its own, for the list of findings. */
export function FindingBadge({ severity, number, radius = 7.8 }: FindingShapeProps) {
  const size = 2 * radius + 2.4
  return (
    <svg width={size} height={size} viewBox={`${-size / 2} ${-size / 2} ${size} ${size}`} aria-hidden="true">
      <FindingShape severity={severity} number={number} radius={radius} />
    </svg>
  )
}
