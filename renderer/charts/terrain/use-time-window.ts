import { useState } from 'react'
import { type TimeWindow, timeWindow } from './time-axis.ts'

/** The part of a run that is drawn: it stands still while the moment is inside, so that nothing moves under a hand that drags. */
export function useTimeWindow(duration: number, time: number): TimeWindow {
  const [shown, show] = useState<TimeWindow | null>(null)
  const window = timeWindow(duration, time, shown)
  if (shown === null || shown.from !== window.from || shown.to !== window.to) show(window)
  return window
}
