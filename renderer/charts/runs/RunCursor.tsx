import { wheelAt } from '../../../core/runs/outline.ts'
import { TimeSlider } from '../terrain/TimeSlider.tsx'
import { heldY } from '../terrain/terrain-scene.ts'
import { spokenReading, wheelIn } from './run-reading.ts'
import type { RunScene } from './run-scene.ts'

interface RunCursorProps {
  readonly scene: RunScene
  /** The moment shown, s of the run's own time. */
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** The moment shown: drag it, or step it with the keys. */
export function RunCursor({ scene, time, onTime, onPlay }: RunCursorProps) {
  const { axis, view, start } = scene
  const here = wheelIn(view, time)
  const other = view.other
  const there = other === null || other.run === null ? null : wheelAt(other.run, time)
  return (
    <TimeSlider
      scene={scene}
      start={start}
      time={time}
      spoken={spokenReading(view, time)}
      here={here === null ? null : heldY(axis, view.shown.model, here)}
      there={there === null ? null : heldY(axis, other!.model, there)}
      onTime={onTime}
      onPlay={onPlay}
    />
  )
}
