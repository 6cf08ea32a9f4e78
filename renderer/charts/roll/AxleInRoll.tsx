import { useId } from 'react'
import type { System } from '../../../core/units/quantity.ts'
import { ChartPatterns, patternFill } from '../patterns/ChartPatterns.tsx'
import { ABOVE, type RollFrame, rollFrame } from './roll-frame.ts'
import type { RollGeometry, SideInRoll, Spot, StopInRoll } from './roll-geometry.ts'
import { forceWords, leftWords, rollWords } from './roll-words.ts'

const WIDTH = 640
const TALL = 250
const LOW = 165
/** Half a stop's width, px. */
const STOP = 9

const point = ({ x, y }: Spot): string => `${x.toFixed(1)} ${y.toFixed(1)}`
const line = (...spots: readonly Spot[]): string => `M${spots.map(point).join('L')}`
const along = (a: Spot, b: Spot, share: number): Spot => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
})

function Tire({ at, frame, geometry }: { at: Spot; frame: RollFrame; geometry: RollGeometry }) {
  const { radius, width } = geometry.tire
  const { x, y } = frame.to(at)
  const [w, h] = [width * frame.scale, 2 * radius * frame.scale]
  return (
    <>
      <rect
        x={x - w / 2}
        y={y - h / 2}
        width={w}
        height={h}
        rx={w * 0.16}
        fill="var(--metal)"
        stroke="var(--ink)"
        strokeWidth="1.5"
      />
      <path d={`M${x - 5} ${y}h10M${x} ${y - 5}v10`} stroke="var(--ink)" strokeWidth="1.1" />
    </>
  )
}

/** A stop with what is left before it, or with the part of it that is pushed in drawn where it would be. */
function StopShape({ stop, frame, prefix }: { stop: StopInRoll; frame: RollFrame; prefix: string }) {
  const [root, foot, pad] = [frame.to(stop.root), frame.to(stop.foot), frame.to(stop.pad)]
  const pushed = stop.left < 0
  const end = pushed ? pad.y : foot.y
  return (
    <>
      <rect
        x={root.x - STOP}
        y={root.y}
        width={2 * STOP}
        height={Math.max(0, end - root.y)}
        fill={patternFill(prefix, 'stop')}
        stroke="var(--stop)"
        strokeWidth="1.5"
      />
      {pushed ? (
        <rect
          x={root.x - STOP}
          y={end}
          width={2 * STOP}
          height={Math.max(0, foot.y - end)}
          fill="none"
          stroke="var(--stop)"
          strokeWidth="1.1"
        />
      ) : (
        <path
          d={`M${root.x} ${foot.y}V${pad.y}M${root.x - 4} ${foot.y}h8M${root.x - 4} ${pad.y}h8`}
          stroke="var(--ink3)"
          strokeWidth="0.8"
        />
      )}
      <path d={`M${pad.x - STOP - 4} ${pad.y}h${2 * STOP + 8}`} stroke="var(--ink)" strokeWidth="3" />
    </>
  )
}

/** On a solid axle a beam from wheel to wheel; on independent suspension an arm from each wheel to the chassis. */
function Links({ geometry, frame }: { geometry: RollGeometry; frame: RollFrame }) {
  const { outer, inner, solid, chassis } = geometry
  const [o, i] = [frame.to(outer.wheel), frame.to(inner.wheel)]
  if (solid) return <path d={line(i, o)} stroke="var(--ink)" strokeWidth="5" fill="none" />
  const arm = ({ wheel, stop }: SideInRoll, end: 0 | 1) => {
    const root = along(chassis[0], chassis[1], end === 1 ? 0.6 : 0.4)
    const hub = frame.to(wheel)
    const foot = stop === null ? hub : frame.to(stop.pad)
    const pivot = frame.to({ x: root.x, y: Math.min(root.y - 0.06, geometry.tire.radius) })
    return `${line(hub, foot, pivot)}M${point(pivot)}L${point(frame.to(root))}`
  }
  return <path d={arm(outer, 1) + arm(inner, 0)} stroke="var(--ink)" strokeWidth="2.5" fill="none" />
}

interface WordsProps {
  readonly geometry: RollGeometry
  readonly frame: RollFrame
  readonly system: System
}

/** What stands beside the shapes: what each stop has left, what each wheel carries, the lean. */
function Words({ geometry, frame, system }: WordsProps) {
  const { outer, inner, roll, axis, chassis } = geometry
  const ground = frame.to({ x: 0, y: 0 }).y
  const mid = frame.to(along(chassis[0], chassis[1], 0.5))
  const spot = frame.to(axis)
  const side = (of: SideInRoll, sign: 1 | -1, name: string) => {
    const wheel = frame.to(of.wheel)
    const root = of.stop === null ? null : frame.to(of.stop.root)
    const x = root === null ? wheel.x : frame.width / 2 + sign * Math.max(78, Math.abs(root.x - frame.width / 2))
    return (
      <g textAnchor="middle">
        <text x={x} y="16" fontSize="13" fontWeight="600" fill={of.stop === null ? 'var(--ink2)' : 'var(--stop)'}>
          {leftWords(of, system)}
        </text>
        {root === null ? null : (
          <path d={`M${x} 22L${root.x} ${Math.max(24, root.y - 4)}`} stroke="var(--ink3)" strokeWidth="0.8" />
        )}
        <text x={wheel.x} y={ground + 17} fontSize="13" fontWeight="600" fill="var(--ink)">
          {forceWords(of.carries, system)}
        </text>
        <text x={wheel.x} y={ground + 32} fontSize="12" fill="var(--ink2)">
          {name}
        </text>
      </g>
    )
  }
  return (
    <>
      {side(inner, -1, 'inner wheel')}
      {side(outer, 1, 'outer wheel')}
      <text x={mid.x} y={Math.max(ABOVE - 8, mid.y - 10)} textAnchor="middle" fontSize="13" fill="var(--ink)">
        {roll < 1e-4 ? 'level' : `leans ${rollWords(roll)}`}
      </text>
      <path d={`M${spot.x - 7} ${spot.y}h14M${spot.x} ${spot.y - 7}v14`} stroke="var(--ink)" strokeWidth="1.1" />
      <circle cx={spot.x} cy={spot.y} r="3" fill="var(--sheet)" stroke="var(--ink)" strokeWidth="1.1" />
      <text x={spot.x + 10} y={spot.y + 16} fontSize="12" fill="var(--ink2)">
        roll axis
      </text>
    </>
  )
}

/** How long the drawn measure is: a foot, or a quarter of a metre. */
const MEASURE = { inch: { length: 0.3048, words: '12 in' }, metric: { length: 0.25, words: '250 mm' } } as const

function Scale({ frame, system }: { frame: RollFrame; system: System }) {
  const { length, words } = MEASURE[system]
  const half = (length * frame.scale) / 2
  const y = frame.height - 12
  const x = frame.width / 2
  return (
    <>
      <path d={`M${x - half} ${y - 4}v8M${x + half} ${y - 4}v8M${x - half} ${y}h${2 * half}`} stroke="var(--ink3)" />
      <text x={x} y={y - 7} fontSize="11" textAnchor="middle" fill="var(--ink3)">
        {words}
      </text>
    </>
  )
}

interface AxleInRollProps {
  readonly geometry: RollGeometry
  readonly system: System
  /** The window is a small one. */
  readonly low: boolean
  /** All of it in words. */
  readonly sentence: string
}

/** An axle from behind, to scale: wheels on the ground, the chassis leaning over them, both stops with what is left. */
export function AxleInRoll({ geometry, system, low, sentence }: AxleInRollProps) {
  const prefix = useId()
  const frame = rollFrame(geometry, WIDTH, low ? LOW : TALL)
  const { outer, inner, chassis } = geometry
  const [left, right] = [frame.to({ x: geometry.low.x, y: 0 }), frame.to({ x: geometry.high.x, y: 0 })]
  return (
    <svg className="roll" role="img" aria-label={sentence} viewBox={`0 0 ${frame.width} ${Math.ceil(frame.height)}`}>
      <ChartPatterns prefix={prefix} />
      <path d={`M${left.x - 6} ${left.y}H${right.x + 6}`} stroke="var(--ink)" strokeWidth="1.5" />
      <Links geometry={geometry} frame={frame} />
      <Tire at={outer.wheel} frame={frame} geometry={geometry} />
      <Tire at={inner.wheel} frame={frame} geometry={geometry} />
      <path d={line(frame.to(chassis[0]), frame.to(chassis[1]))} stroke="var(--ink)" strokeWidth="4" />
      {[outer, inner].map(({ stop }, side) =>
        stop === null ? null : (
          <StopShape key={side === 0 ? 'outer' : 'inner'} stop={stop} frame={frame} prefix={prefix} />
        ),
      )}
      <Words geometry={geometry} frame={frame} system={system} />
      <Scale frame={frame} system={system} />
    </svg>
  )
}
