import { type PointerEvent, useMemo, useRef } from 'react'
import type { Axle } from '../../../core/plan/schema.ts'
import { CornerDrawing } from '../drawing/CornerDrawing.tsx'
import { ChartPatterns } from '../patterns/ChartPatterns.tsx'
import { pointerIn } from '../plate/pointer-in.ts'
import { type Size, useSize } from '../plate/use-size.ts'
import { TerrainHistogram } from '../terrain/TerrainHistogram.tsx'
import { TerrainTints } from '../terrain/TerrainLayers.tsx'
import { WheelTag } from '../terrain/TimeCursor.tsx'
import { timeWindow } from '../terrain/time-axis.ts'
import { canvasMeasure } from '../text/measure-text.ts'
import { RunCursor } from './RunCursor.tsx'
import { RunOverview, RunRules, RunWords } from './RunLayers.tsx'
import { RunTraces } from './RunTraces.tsx'
import { wheelIn } from './run-reading.ts'
import { type RunView, runScene, timesOf } from './run-scene.ts'

export interface RunPlateProps {
  readonly axle: Axle
  readonly view: RunView
  /** What the run is called. */
  readonly subject: string
  /** The moment shown, s of the run's own time. */
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** Drawing, trace, shaft speed and histograms of a recorded run on the wheel travel axis, as large as its parent. */
export function RunPlate(props: RunPlateProps) {
  const host = useRef<HTMLDivElement>(null)
  const size = useSize(host)
  return (
    <div className="terrain-plate" ref={host}>
      {size === null || host.current === null ? null : (
        <RunDrawing {...props} size={size} family={getComputedStyle(host.current).fontFamily} />
      )}
    </div>
  )
}

interface DrawingProps extends RunPlateProps {
  readonly size: Size
  readonly family: string
}

const PATTERNS = 'run'

function RunDrawing({ axle, view, subject, time, onTime, onPlay, size, family }: DrawingProps) {
  const measure = useMemo(() => canvasMeasure(family), [family])
  const { laid, model, budget } = view.shown
  const { start, end } = laid === null ? { start: 0, end: 0 } : timesOf(laid.run)
  const part = timeWindow(end - start, time - start)
  const [from, to] = [part.from + start, part.to + start]
  const scene = useMemo(
    () => runScene(view, { from, to }, size.width, size.height, measure),
    [view, from, to, size, measure],
  )
  const { frame, axis, duration, time: across } = scene
  const wheel = Math.min(model.bump, Math.max(model.droop, wheelIn(view, time) ?? 0))
  const scrub = useRef<'trace' | 'overview' | null>(null)
  const go = (event: PointerEvent<SVGSVGElement>): void => {
    const { x } = pointerIn(event.currentTarget, event)
    if (scrub.current === 'trace') onTime(across.timeAt(x))
    else onTime(start + Math.min(1, Math.max(0, (x - across.left) / (across.right - across.left))) * duration)
  }
  const begin = (event: PointerEvent<SVGSVGElement>): void => {
    if (event.button !== 0 || !event.isPrimary || duration <= 0 || !(event.target instanceof Element)) return
    const held = event.target.closest('[data-scrub]')?.getAttribute('data-scrub')
    if (held !== 'trace' && held !== 'overview') return
    event.preventDefault()
    scrub.current = held
    event.currentTarget.setPointerCapture(event.pointerId)
    event.currentTarget.querySelector<SVGGElement>('.time-cursor')?.focus({ preventScroll: true })
    go(event)
  }
  const finish = (): void => {
    scrub.current = null
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be drawn in
    <svg
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="group"
      aria-label={`${subject} over ${axle.id}: drawing, wheel position and shaft speed over time, time spent at each height`}
      onPointerDown={begin}
      onPointerMove={event => scrub.current !== null && go(event)}
      onPointerUp={finish}
      onPointerCancel={finish}
    >
      <ChartPatterns prefix={PATTERNS} />
      <TerrainTints scene={scene} />
      <CornerDrawing
        axle={axle}
        model={model}
        budget={budget}
        other={null}
        wheel={wheel}
        system={view.system}
        x={frame.corner.x}
        width={frame.corner.width}
        head={frame.head}
        height={frame.height}
        axisY={axis.y}
        small={frame.small}
      />
      <RunRules scene={scene} />
      <TerrainHistogram scene={scene} patterns={PATTERNS} />
      <RunTraces scene={scene} />
      <RunWords scene={scene} subject={subject} />
      <RunOverview scene={scene} />
      {duration > 0 ? (
        <>
          <rect
            data-scrub="trace"
            x={across.left - 4}
            y={frame.head}
            width={across.right - across.left + 8}
            height={Math.max(0, frame.overview.top - frame.head)}
            fill="transparent"
          />
          <rect
            data-scrub="overview"
            x={across.left - 4}
            y={frame.overview.top}
            width={across.right - across.left + 8}
            height={Math.max(0, frame.height - frame.overview.top)}
            fill="transparent"
          />
          <g data-scrub="trace">
            <RunCursor scene={scene} time={time} onTime={onTime} onPlay={onPlay} />
          </g>
          <WheelTag scene={scene} wheel={wheel} />
        </>
      ) : null}
    </svg>
  )
}
