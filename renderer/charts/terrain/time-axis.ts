import { scaleLinear } from 'd3'

/** The part of a run that is drawn, s. */
export interface TimeWindow {
  readonly from: number
  readonly to: number
}

/** A trace longer than this is shown a part at a time, s. */
const AT_ONCE = 12

/** The part of a run that holds a moment: all of a short one; parts do not move while the moment is inside. */
export function timeWindow(duration: number, time: number): TimeWindow {
  if (!(duration > AT_ONCE * 1.25)) return { from: 0, to: duration > 0 ? duration : 1 }
  const from = Math.min(AT_ONCE * Math.floor(Math.max(0, time) / AT_ONCE), duration - AT_ONCE)
  return { from, to: from + AT_ONCE }
}

export const isWindowed = ({ from, to }: TimeWindow, duration: number): boolean => from > 0 || to < duration

export interface TimeAxis {
  readonly window: TimeWindow
  readonly left: number
  readonly right: number
  /** px of a time, s. */
  readonly x: (time: number) => number
  /** The time at a place, kept to the window. */
  readonly timeAt: (x: number) => number
  readonly ticks: readonly number[]
}

const TICK_APART = 64

export function timeAxis(window: TimeWindow, left: number, right: number): TimeAxis {
  const end = Math.max(right, left + 1)
  const scale = scaleLinear([window.from, window.to], [left, end])
  const perSecond = (end - left) / (window.to - window.from)
  return {
    window,
    left,
    right: end,
    x: time => left + (time - window.from) * perSecond,
    timeAt: x => Math.min(window.to, Math.max(window.from, scale.invert(x))),
    ticks: scale.ticks(Math.max(2, Math.floor((right - left) / TICK_APART))),
  }
}

/** A time as shown: hundredths where they can be seen. */
export const shownTime = (time: number): string => time.toFixed(2)
