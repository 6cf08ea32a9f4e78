import type { FigureBand } from '../../../core/tolerance/sureness.ts'

const WIDTH = 120
const INSET = 4

/** A band without an end is drawn this much longer than all that has one, and an arrow. */
const ON = 1.25

/** One band on its own scale: the trials above, slopes below, the value as a diamond; an arrow where there is no end. */
export function BandPicture({
  value,
  low,
  high,
  firstOrder,
}: Pick<FigureBand, 'value' | 'low' | 'high' | 'firstOrder'>) {
  const ends = [low, high, value, ...(firstOrder === null ? [] : [firstOrder.low, firstOrder.high])].filter(
    Number.isFinite,
  )
  const least = Math.min(...ends)
  const most = Number.isFinite(high) ? Math.max(...ends) : least + (Math.max(...ends) - least) * ON
  const x = (at: number): number =>
    most > least ? INSET + ((at - least) / (most - least)) * (WIDTH - 2 * INSET) : WIDTH / 2
  const span = (from: number, to: number, y: number): string =>
    Number.isFinite(to)
      ? `M${x(from).toFixed(1)} ${y - 3}v6M${x(to).toFixed(1)} ${y - 3}v6M${x(from).toFixed(1)} ${y}H${x(to).toFixed(1)}`
      : `M${x(from).toFixed(1)} ${y - 3}v6M${x(from).toFixed(1)} ${y}H${x(most).toFixed(1)}m-5 -4l5 4l-5 4`
  const tall = firstOrder === null ? 14 : 20
  return (
    <svg width={WIDTH} height={tall} viewBox={`0 0 ${WIDTH} ${tall}`} aria-hidden="true">
      <path d={span(low, high, 7)} stroke="var(--ink)" strokeWidth="1.5" fill="none" />
      {firstOrder === null ? null : (
        <path d={span(firstOrder.low, firstOrder.high, 15)} stroke="var(--ink3)" strokeDasharray="3 2" fill="none" />
      )}
      <path
        d={`M${x(value).toFixed(1)} 2l4 5l-4 5l-4 -5z`}
        fill="var(--sheet)"
        stroke="var(--ink)"
        strokeWidth="1.25"
      />
    </svg>
  )
}
