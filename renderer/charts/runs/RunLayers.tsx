import { memo, useMemo } from 'react'
import { outline } from '../../../core/runs/outline.ts'
import { Unspoken } from '../marks/Group.tsx'
import { TravelWords } from '../terrain/TravelWords.tsx'
import { runLabels } from './run-labels.ts'
import { type RunScene, timesOf } from './run-scene.ts'

interface LayerProps {
  readonly scene: RunScene
}

/** Dividers with their ticks, the time grid, the axis of the speeds, and the moments picked. */
export const RunRules = memo(function RunRules({ scene }: LayerProps) {
  const { frame, ruler, time, speeds, axis, duration, view } = scene
  const { trace, histogram, names, travel, forces } = frame
  const dividers = [histogram, names].map(({ x }) => `M${x} ${frame.head}V${travel.bottom}`)
  const ticks = [trace, histogram, names].flatMap(({ x }) =>
    ruler.map(({ y, long }) => `M${x} ${y.toFixed(1)}h${long ? 6 : 3}`),
  )
  const grid = time.ticks.map(tick => `M${time.x(tick).toFixed(1)} ${frame.head}V${forces.bottom}`)
  const levels = speeds.ticks.map(tick => `M${trace.x} ${speeds.y(tick).toFixed(1)}H${time.right}`)
  const { from, to } = time.window
  const moments = [view.picked.rideHeightAt, view.picked.fullDroopAt].flatMap(at =>
    at === null || at < from || at > to ? [] : [`M${time.x(at).toFixed(1)} ${frame.head}V${forces.bottom}`],
  )
  return (
    <Unspoken>
      {duration > 0 ? (
        <>
          <path d={[...grid, ...levels].join('')} stroke="var(--hair)" fill="none" />
          <path d={`M${trace.x} ${speeds.y(0)}H${names.x}`} stroke="var(--ink3)" fill="none" />
        </>
      ) : null}
      <path
        d={`M0 ${frame.head}H${frame.width}M${trace.x} ${travel.bottom}H${frame.width}M${histogram.x} ${travel.bottom}V${forces.bottom}${dividers.join('')}${ticks.join('')}`}
        stroke="var(--rule)"
        fill="none"
      />
      <path d={moments.join('')} stroke="var(--ink)" strokeWidth="1.1" strokeDasharray="2 3" fill="none" />
      <path d={`M${trace.x} ${axis.top}V${frame.height}`} stroke="var(--ink)" strokeWidth="1.5" />
    </Unspoken>
  )
})

/** The lines across, and every word that stands still. */
export const RunWords = memo(function RunWords({ scene, subject }: LayerProps & { readonly subject: string }) {
  return <TravelWords scene={scene} words={runLabels(scene, subject)} />
})

/** The whole of a long run between full droop and full bump, what lies past engagement in the stop's ink; the part shown is framed. */
export const RunOverview = memo(function RunOverview({ scene }: LayerProps) {
  const { frame, time, windowed, view, travel, start, duration } = scene
  const { top, bottom } = frame.overview
  const { laid } = view.shown
  const columns = Math.max(1, Math.round(time.right - time.left))
  const whole = useMemo(() => {
    if (laid === null || !windowed) return []
    const times = timesOf(laid.run)
    return outline(laid.run, times.start, times.end, columns)
  }, [laid, windowed, columns])
  if (!windowed) return null
  const x = (at: number): number => time.left + ((at - start) / duration) * (time.right - time.left)
  const span = Math.max(travel.bump - travel.droop, 1e-6)
  const y = (wheel: number): number =>
    bottom - 1 - Math.min(1, Math.max(0, (wheel - travel.droop) / span)) * (bottom - top - 3)
  const line = (from: number, to: number, at: number): string =>
    `M${x(at).toFixed(1)} ${(y(from) + 0.5).toFixed(1)}V${(y(to) - 0.5).toFixed(1)}`
  const { engagement } = travel
  const { from, to } = time.window
  return (
    <Unspoken>
      <path d={whole.map(({ time: at, low, high }) => line(low, high, at)).join('')} stroke="var(--ink3)" fill="none" />
      {engagement === null ? null : (
        <path
          d={whole
            .filter(({ high }) => high > engagement)
            .map(({ time: at, low, high }) => line(Math.max(low, engagement), high, at))
            .join('')}
          stroke="var(--stop)"
          strokeWidth="1.5"
          fill="none"
        />
      )}
      <rect
        x={x(from)}
        y={top}
        width={Math.max(2, x(to) - x(from))}
        height={bottom - top}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.25"
      />
    </Unspoken>
  )
})
