import { type PointerEvent, useId, useMemo, useRef } from 'react'
import type { Worked } from '../../../core/changes/evaluate.ts'
import type { Proposals } from '../../../core/changes/propose.ts'
import type { TargetId } from '../../../core/changes/targets.ts'
import type { Targets } from '../../../core/plan/schema.ts'
import { INCH } from '../../../core/units/constants.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { type System, unitOf } from '../../../core/units/quantity.ts'
import { pointerIn } from '../plate/pointer-in.ts'
import { useSize } from '../plate/use-size.ts'
import { type MapPoint, mapScene, pointNear } from './map-scene.ts'
import { TargetLine } from './TargetLine.tsx'

interface Props {
  readonly proposals: Proposals | null
  readonly targets: Targets
  readonly system: System
  readonly name: string
  /** The setup it is compared with, drawn as a ghost. */
  readonly other: { readonly name: string; readonly candidate: Worked } | null
  /** Pointed at or focused, here or in the list. */
  readonly looked: Worked | null
  readonly onLook: (candidate: Worked | null) => void
  readonly onTake: (candidate: Worked) => void
  readonly onTarget: (id: TargetId, value: number, dragging: boolean) => void
  readonly onTargetSet: () => void
}

/** Before the page has measured it. */
const UNSEEN = { width: 0, height: 0 } as const

const diamond = ({ x, y }: MapPoint, r: number): string => `M${x} ${y - r}l${r} ${r}l${-r} ${r}l${-r} ${-r}Z`

/** The coilover's share of bump against the landing height before metal meets: every candidate a point, targets as lines to move. */
export function ProposalMap(props: Props) {
  const { proposals, targets, system, name, other, looked, onLook, onTake, onTarget, onTargetSet } = props
  const frame = useRef<HTMLDivElement>(null)
  const { width, height } = useSize(frame) ?? UNSEEN
  const scene = useMemo(
    () => mapScene(width, height, proposals, targets, system, other?.candidate ?? null),
    [width, height, proposals, targets, system, other],
  )
  const { left, right, top, bottom, points, present, shareY, landingX, highest } = scene
  const hatch = useId()
  const at = (event: PointerEvent<SVGSVGElement>): MapPoint | null => {
    const { x, y } = pointerIn(event.currentTarget, event)
    return pointNear(scene, x, y)
  }
  const lookedPoint = looked === null ? null : (points.find(({ candidate }) => candidate === looked) ?? null)
  const feasible = proposals?.feasible ?? 0
  const said = `Map of the coilover’s share of bump against landing height. ${name} at ${
    proposals === null ? 'no place yet' : placeWords(proposals.present, system)
  }${other === null ? '' : `, ${other.name} at ${placeWords(other.candidate, system)}`}; ${points.length} candidates, ${feasible} of them meet every target. They are listed beside the map.`
  const share = targets.coiloverShare
  const landing = targets.landingDrop
  return (
    <div className="map" ref={frame}>
      {width < 60 || height < 60 ? null : (
        <>
          <svg
            role="img"
            aria-label={said}
            width={width}
            height={height}
            onPointerMove={event => onLook(at(event)?.candidate ?? null)}
            onPointerLeave={() => onLook(null)}
            onPointerUp={event => {
              const point = at(event)
              if (point !== null) onTake(point.candidate)
            }}
            style={{ cursor: lookedPoint === null ? 'default' : 'pointer' }}
          >
            <defs>
              <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
                <path d="M0 0V7" stroke="var(--rule)" strokeWidth="1" />
              </pattern>
            </defs>
            {shareY === null ? null : (
              <rect x={left} y={shareY} width={right - left} height={bottom - shareY} fill={`url(#${hatch})`} />
            )}
            {landingX === null ? null : (
              <rect
                x={left}
                y={top}
                width={landingX - left}
                height={(shareY ?? bottom) - top}
                fill={`url(#${hatch})`}
              />
            )}
            {scene.up.map(tick => (
              <g key={tick.at}>
                <line x1={left} x2={right} y1={tick.at} y2={tick.at} stroke="var(--hair)" />
                <text x={left - 6} y={tick.at + 4} textAnchor="end">
                  {tick.text}
                </text>
              </g>
            ))}
            {scene.across.map(tick => (
              <g key={tick.at}>
                <line x1={tick.at} x2={tick.at} y1={bottom} y2={bottom + 4} stroke="var(--ink3)" />
                <text x={tick.at} y={bottom + 16} textAnchor="middle">
                  {tick.text}
                </text>
              </g>
            ))}
            <path d={`M${left} ${top}V${bottom}H${right}`} fill="none" stroke="var(--ink)" />
            <text x={right} y={bottom + 31} textAnchor="end">
              landing height before metal meets, {unitOf('length', system).label}
            </text>
            {points.map(({ candidate, x, y }, i) => (
              <circle
                // biome-ignore lint/suspicious/noArrayIndexKey: a candidate has no name but its rank, and a circle keeps nothing
                key={i}
                cx={x}
                cy={y}
                r={candidate.feasible ? 4.5 : 2.6}
                className={candidate.feasible ? 'does' : 'falls-short'}
              />
            ))}
            {lookedPoint === null ? null : (
              <circle cx={lookedPoint.x} cy={lookedPoint.y} r={8} fill="none" stroke="var(--ink)" strokeWidth="2" />
            )}
            {scene.other === null || other === null ? null : (
              <>
                {present === null ? null : (
                  <path d={`M${present.x} ${present.y}L${scene.other.x} ${scene.other.y}`} className="other-way" />
                )}
                <path d={diamond(scene.other, 7)} className="other-setup" />
                <PlaceName
                  name={other.name}
                  at={scene.other}
                  middle={(left + right) / 2}
                  className="halo"
                  lower={present !== null && Math.abs(present.y - scene.other.y) < APART && scene.other.y >= present.y}
                  higher={present !== null && Math.abs(present.y - scene.other.y) < APART && scene.other.y < present.y}
                />
              </>
            )}
            {present === null ? null : (
              <>
                <path d={diamond(present, 7)} className="present" />
                <PlaceName name={name} at={present} middle={(left + right) / 2} className="halo strong" />
              </>
            )}
            {shareY === null ? null : (
              <text className="halo" x={left + 6} y={Math.min(bottom - 5, shareY + 15)}>
                too little on the coilover
              </text>
            )}
            {landingX === null || landingX - left < 96 ? null : (
              <text className="halo" x={left + 6} y={top + 13}>
                metal meets too soon
              </text>
            )}
          </svg>
          <svg role="presentation" className="over" width={width} height={height}>
            {shareY === null || share === undefined ? null : (
              <TargetLine
                label="Target: share on the coilover, least"
                text={formatMeasure(share, 'share', system, { unit: true })}
                value={share}
                most={1}
                step={0.01}
                line={{ x1: left, x2: right, y1: shareY, y2: shareY }}
                valueAt={(_, y) => scene.shareAt(y)}
                onChange={(value, dragging) => onTarget('coiloverShare', value, dragging)}
                onEnd={onTargetSet}
              />
            )}
            {landingX === null || landing === undefined ? null : (
              <TargetLine
                label="Target: landing height, least"
                text={formatMeasure(landing, 'length', system, { unit: true })}
                value={landing}
                most={highest}
                step={system === 'inch' ? INCH / 2 : 1e-2}
                line={{ x1: landingX, x2: landingX, y1: top, y2: bottom }}
                valueAt={x => scene.landingAt(x)}
                onChange={(value, dragging) => onTarget('landingDrop', value, dragging)}
                onEnd={onTargetSet}
              />
            )}
          </svg>
        </>
      )}
    </div>
  )
}

/** Names of two setups nearer than this are set one above the other, px. */
const APART = 14

/** Letters of a name that are shown on the map. */
const MOST_LETTERS = 24

interface PlaceNameProps {
  readonly name: string
  readonly at: MapPoint
  readonly middle: number
  readonly className: string
  /** Out of the way of another name. */
  readonly lower?: boolean
  readonly higher?: boolean
}

/** What a place on the map is called, towards the middle of it. */
function PlaceName({ name, at: { x, y }, middle, className, lower = false, higher = false }: PlaceNameProps) {
  const left = x > middle
  return (
    <text
      className={className}
      x={x + (left ? -11 : 11)}
      y={y + 4 + (lower ? APART : higher ? -APART : 0)}
      textAnchor={left ? 'end' : 'start'}
    >
      {name.length > MOST_LETTERS ? `${name.slice(0, MOST_LETTERS - 1).trimEnd()}…` : name}
    </text>
  )
}

const placeWords = ({ figures }: Worked, system: System): string =>
  `${formatMeasure(figures.share, 'share', system, { unit: true })} and ${formatMeasure(figures.landing.drop, 'length', system, { unit: true })}`
