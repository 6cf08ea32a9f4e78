import type { FigureBand } from '../../../core/tolerance/sureness.ts'

const WIDTH = 120
const INSET = 4

/** One band on its own scale: the trials above, slopes below, the value as a diamond. */
export function BandPicture({
  value,
  low,
  high,
  firstOrder,
}: Pick<FigureBand, 'value' | 'low' | 'high' | 'firstOrder'>) {
  const ends = [low, high, value, ...(firstOrder === null ? [] : [firstOrder.low, firstOrder.high])]
  const [least, most] = [Math.min(...ends), Math.max(...ends)]
  const x = (at: number): number =>
    most > least ? INSET + ((at - least) / (most - least)) * (WIDTH - 2 * INSET) : WIDTH / 2
  const span = (from: number, to: number, y: number): string =>
    `M${x(from).toFixed(1)} ${y - 3}v6M${x(to).toFixed(1)} ${y - 3}v6M${x(from).toFixed(1)} ${y}H${x(to).toFixed(1)}`
  return (
    <svg width={WIDTH} height="20" viewBox={`0 0 ${WIDTH} 20`} aria-hidden="true">
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
