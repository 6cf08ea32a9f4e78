import { memo } from 'react'
import { Unspoken } from '../marks/Group.tsx'
import type { MarkPlace } from '../plate/labels/mark-places.ts'
import { terrainLabels } from './labels.ts'
import { spansOnStop } from './moment.ts'
import { markBox } from './ride-marks.ts'
import { TravelWords } from './TravelWords.tsx'
import type { TerrainScene } from './terrain-scene.ts'
import type { TravelScene } from './travel-scene.ts'

interface LayerProps {
  readonly scene: TerrainScene
}

interface NamedProps extends LayerProps {
  /** The terrain's name. */
  readonly subject: string
}

interface MarkedProps {
  readonly marks: readonly MarkPlace[]
}

/** Zone tints behind trace and histogram. */
export const TerrainTints = memo(function TerrainTints({ scene }: { readonly scene: TravelScene }) {
  const { frame, axis, travel } = scene
  const width = frame.names.x - frame.trace.x
  const [top, middle, ride] = [axis.y(travel.bump), axis.y(travel.coiloverEnd), axis.y(0)]
  return (
    <Unspoken>
      <rect x={frame.trace.x} y={top} width={width} height={Math.max(0, middle - top)} fill="var(--stop-z)" />
      <rect x={frame.trace.x} y={middle} width={width} height={Math.max(0, ride - middle)} fill="var(--coil-z)" />
    </Unspoken>
  )
})

/** Dividers with their ticks, time grid, the axis of the forces. */
export const TerrainRules = memo(function TerrainRules({ scene }: LayerProps) {
  const { frame, ruler, time, forces, axis, duration } = scene
  const { trace, histogram, names, travel, road } = frame
  const dividers = [histogram, names].map(({ x }) => `M${x} ${frame.head}V${travel.bottom}`)
  const ticks = [trace, histogram, names].flatMap(({ x }) =>
    ruler.map(({ y, long }) => `M${x} ${y.toFixed(1)}h${long ? 6 : 3}`),
  )
  const grid = time.ticks.map(tick => `M${time.x(tick).toFixed(1)} ${frame.head}V${frame.forces.bottom}`)
  const levels = forces.ticks.map(tick => `M${trace.x} ${forces.y(tick).toFixed(1)}H${time.right}`)
  return (
    <Unspoken>
      {duration > 0 ? (
        <>
          <path d={[...grid, ...levels].join('')} stroke="var(--hair)" fill="none" />
          <path d={`M${trace.x} ${forces.y(0)}H${time.right}`} stroke="var(--ink3)" fill="none" />
        </>
      ) : null}
      <path
        d={`M0 ${frame.head}H${frame.width}M${trace.x} ${travel.bottom}H${frame.width}M${histogram.x} ${road.top}V${frame.height}${dividers.join('')}${ticks.join('')}`}
        stroke="var(--rule)"
        fill="none"
      />
      <path d={`M${trace.x} ${axis.top}V${frame.height}`} stroke="var(--ink)" strokeWidth="1.5" />
    </Unspoken>
  )
})

/** The lines across, and every word that stands still. */
export const TerrainWords = memo(function TerrainWords({ scene, subject, marks }: NamedProps & MarkedProps) {
  return <TravelWords scene={scene} words={terrainLabels(scene, subject, marks.map(markBox))} />
})

/** The whole of a long run, with the times it is on the stop; what the trace shows of it is framed. */
export const TerrainOverview = memo(function TerrainOverview({ scene }: LayerProps) {
  const { frame, time, duration, windowed, view } = scene
  const trace = view.shown.ride?.trace ?? null
  if (!windowed || trace === null) return null
  const { top, bottom } = frame.overview
  const x = (at: number): number => time.left + (at / duration) * (time.right - time.left)
  const { from, to } = time.window
  return (
    <Unspoken>
      <path d={`M${time.left} ${bottom}H${time.right}`} stroke="var(--ink3)" />
      {spansOnStop(trace).map(([start, end]) => (
        <rect
          key={start}
          x={x(start)}
          y={top + 2}
          width={Math.max(1, x(end) - x(start))}
          height={bottom - top - 2}
          fill="var(--stop)"
        />
      ))}
      <rect
        x={x(from)}
        y={top}
        width={x(to) - x(from)}
        height={bottom - top}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.25"
      />
    </Unspoken>
  )
})
