import type { CSSProperties } from 'react'

/** Pieces the measuring pictures are made of: 84 × 92 units, the plate's own inks, ink for what is measured. */

export type PictureInk = 'ink' | 'ink2' | 'ink3' | 'coil' | 'stop' | 'rule'
export type PictureFill =
  | 'none'
  | 'sheet'
  | 'metal'
  | 'metal2'
  | 'stop'
  | 'stop-t'
  | 'coil-t'
  | 'gas-t'
  | 'ink'
  | 'ink3'

interface MarkProps {
  readonly d: string
  readonly stroke?: PictureInk | 'none'
  readonly fill?: PictureFill
  readonly width?: number
  readonly dash?: string
}

const paint = (name: string): string => (name === 'none' ? 'none' : `var(--${name})`)

/** One path. */
export function Mark({ d, stroke = 'ink', fill = 'none', width = 1.25, dash }: MarkProps) {
  const style: CSSProperties = {
    fill: paint(fill),
    stroke: paint(stroke),
    strokeWidth: width,
    strokeDasharray: dash,
    strokeLinejoin: 'round',
  }
  return <path d={d} style={style} />
}

export const box = (x: number, y: number, width: number, height: number): string =>
  `M${x} ${y}h${width}v${height}h${-width}z`
export const disc = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0z`

/** Below this a dimension's arrows stand outside it. */
const FITS = 17

interface DimensionProps {
  /** Where along the page the dimension's own line is. */
  readonly at: number
  readonly from: number
  readonly to: number
  /** Where the thin lines that lead to it begin. */
  readonly reach?: number
}

/** An upright dimension: what the tape is held along. */
export function Upright({ at, from, to, reach }: DimensionProps) {
  const [high, low] = from < to ? [from, to] : [to, from]
  const outside = low - high < FITS
  const lead = reach === undefined ? '' : [high, low].map(y => `M${reach} ${y}H${at + (reach < at ? 4 : -4)}`).join('')
  const line = outside ? `M${at} ${high - 11}V${high}M${at} ${low}v11` : `M${at} ${high}V${low}`
  const head = (y: number, down: boolean): string => `M${at} ${y}l-3 ${down ? -7 : 7}h6z`
  return (
    <>
      {lead === '' ? null : <Mark d={lead} stroke="ink3" width={1} />}
      <Mark d={line} />
      <Mark d={head(high, outside) + head(low, !outside)} fill="ink" stroke="none" />
    </>
  )
}

/** A level dimension. */
export function Level({ at, from, to, reach }: DimensionProps) {
  const [left, right] = from < to ? [from, to] : [to, from]
  const outside = right - left < FITS
  const lead =
    reach === undefined ? '' : [left, right].map(x => `M${x} ${reach}V${at + (reach < at ? 4 : -4)}`).join('')
  const line = outside ? `M${left - 11} ${at}H${left}M${right} ${at}h11` : `M${left} ${at}H${right}`
  const head = (x: number, rightwards: boolean): string => `M${x} ${at}l${rightwards ? -7 : 7} -3v6z`
  return (
    <>
      {lead === '' ? null : <Mark d={lead} stroke="ink3" width={1} />}
      <Mark d={line} />
      <Mark d={head(left, outside) + head(right, !outside)} fill="ink" stroke="none" />
    </>
  )
}

/** An arrow that something moves or pushes along. */
export function Arrow({
  from,
  to,
  width = 1.75,
}: {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  readonly width?: number
}) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const length = Math.hypot(dx, dy)
  const [ux, uy] = [dx / length, dy / length]
  const back: readonly [number, number] = [to[0] - 7 * ux, to[1] - 7 * uy]
  return (
    <>
      <Mark d={`M${from[0]} ${from[1]}L${back[0]} ${back[1]}`} width={width} />
      <Mark
        d={`M${to[0]} ${to[1]}L${back[0] - 3.6 * uy} ${back[1] + 3.6 * ux}L${back[0] + 3.6 * uy} ${back[1] - 3.6 * ux}z`}
        fill="ink"
        stroke="none"
      />
    </>
  )
}

interface CoilProps {
  readonly x: number
  readonly half: number
  readonly from: number
  readonly to: number
  readonly turns: number
  readonly width?: number
}

/** A coil spring between two heights. */
export function Coil({ x, half, from, to, turns, width = 3 }: CoilProps) {
  const pitch = (to - from - width) / (turns - 0.5)
  const near = Array.from({ length: turns }, (_, i) => {
    const y = from + width / 2 + i * pitch
    return `M${x - half} ${y + pitch / 2}L${x + half} ${y}`
  })
  const far = Array.from({ length: turns - 1 }, (_, i) => {
    const y = from + width / 2 + i * pitch + pitch / 2
    return `M${x - half} ${y}L${x + half} ${y + pitch / 2}`
  })
  return (
    <>
      <g opacity={0.45}>
        <Mark d={far.join('')} stroke="coil" width={width * 0.55} />
      </g>
      <Mark d={near.join('')} stroke="coil" width={width} />
    </>
  )
}

/** The ground, or a bench. */
export const Ground = ({
  y,
  from = 4,
  to = 80,
}: {
  readonly y: number
  readonly from?: number
  readonly to?: number
}) => <Mark d={`M${from} ${y}H${to}`} stroke="ink2" width={1.25} />

/** A tire from the side, with its hub. */
export const Tire = ({ x, y, r }: { readonly x: number; readonly y: number; readonly r: number }) => (
  <>
    <Mark d={disc(x, y, r)} stroke="ink2" fill="sheet" />
    <Mark d={disc(x, y, r * 0.52)} stroke="ink3" width={1} />
    <Mark d={disc(x, y, Math.max(2.4, r * 0.14))} fill="sheet" />
  </>
)

/** A tire from the front. */
export const TireFront = ({
  x,
  y,
  half,
  r,
}: {
  readonly x: number
  readonly y: number
  readonly half: number
  readonly r: number
}) => (
  <>
    <path
      d={`M${x - half} ${y - r + 4}q0 -4 4 -4h${2 * half - 8}q4 0 4 4v${2 * r - 8}q0 4 -4 4h${8 - 2 * half}q-4 0 -4 -4z`}
      style={{ fill: 'var(--sheet)', stroke: 'var(--ink2)', strokeWidth: 1.25 }}
    />
    <Mark d={`M${x - half} ${y - r / 2}h${2 * half}M${x - half} ${y + r / 2}h${2 * half}`} stroke="rule" width={1} />
  </>
)

/** A word in a picture, where a shape alone would not say it. */
export const Word = ({
  x,
  y,
  children,
  anchor = 'start',
}: {
  readonly x: number
  readonly y: number
  readonly children: string
  readonly anchor?: 'start' | 'middle' | 'end'
}) => (
  <text x={x} y={y} textAnchor={anchor} style={{ fontSize: 10.5, fill: 'var(--ink2)' }}>
    {children}
  </text>
)
