import { memo, useDeferredValue, useMemo } from 'react'
import { Unspoken } from '../marks/Group.tsx'
import { OTHER_DASH } from '../plate/cross-lines.ts'
import { type Room, useRoom } from '../plate/use-room.ts'
import { ChartText } from '../text/ChartText.tsx'
import { canvasMeasure } from '../text/measure-text.ts'
import { linePath } from './signal-path.ts'
import { type SweepView, sweepGeometry } from './sweep-geometry.ts'
import { sweepSentence } from './sweep-words.ts'

interface SweepChartProps {
  readonly view: SweepView
  /** Of the setup shown, and of the one it is compared with. */
  readonly names: readonly string[]
  /** In words: `speed`, `height of the drop`. */
  readonly against: string
}

/** One figure of the ride against speed or drop, both setups, the present value marked. As large as its parent. */
export const SweepChart = memo(function SweepChart(props: SweepChartProps) {
  const { host, room } = useRoom()
  // The ride is drawn first; a sweep takes longer to ride, and follows.
  const follow = useDeferredValue(true, false)
  return (
    <div className="sweep-chart" ref={host}>
      {room === null || !follow ? null : <SweepDrawing {...props} {...room} />}
    </div>
  )
})

function SweepDrawing({ view, names, against, size, family }: SweepChartProps & Room) {
  const measure = useMemo(() => canvasMeasure(family), [family])
  const geometry = useMemo(() => sweepGeometry(view, size.width, size.height, measure), [view, size, measure])
  return (
    <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={sweepSentence(view, names, against)}>
      <Unspoken>
        <path
          d={[
            ...geometry.xTicks.map(x => `M${x} ${geometry.top}V${geometry.bottom}`),
            ...geometry.yTicks.map(y => `M${geometry.left} ${y}H${geometry.right}`),
          ].join('')}
          stroke="var(--hair)"
        />
        <path
          d={`M${geometry.left} ${geometry.top}V${geometry.bottom}H${geometry.right}`}
          stroke="var(--ink3)"
          fill="none"
        />
        {geometry.engagement === null ? null : (
          <path d={`M${geometry.left} ${geometry.engagement}H${geometry.right}`} stroke="var(--stop)" strokeWidth="2" />
        )}
        {geometry.bump === null ? null : (
          <path d={`M${geometry.left} ${geometry.bump}H${geometry.right}`} stroke="var(--ink)" strokeWidth="1.5" />
        )}
        <path d={`M${geometry.presentX} ${geometry.top}V${geometry.bottom}`} stroke="var(--ink)" strokeWidth="1.25" />
        <path
          d={linePath(geometry.other)}
          stroke="var(--ink2)"
          strokeWidth="1.1"
          strokeDasharray={OTHER_DASH}
          fill="none"
        />
        <path d={linePath(geometry.shown)} stroke="var(--ink)" strokeWidth="1.5" strokeLinejoin="round" fill="none" />
        {geometry.shown.map(({ x, y, bottoms }) =>
          bottoms ? (
            <path key={x} d={`M${x - 4} ${y + 3}h8l-4 -7z`} fill="var(--alarm)" />
          ) : (
            <circle key={x} cx={x} cy={y} r="1.8" fill="var(--ink)" />
          ),
        )}
        {geometry.labels.map(label => (
          <ChartText key={label.id} label={label} />
        ))}
      </Unspoken>
    </svg>
  )
}
