import { scaleLinear } from 'd3'

/** The part of a run that is drawn, s. */
export interface TimeWindow {
  readonly from: number
  readonly to: number
}

/** A trace longer than this is shown a part at a time, s. */
const AT_ONCE = 12

/** Parts overlap by at least this: what comes before and after a moment is in sight with it, s. */
const OVERLAP = 3

/**
 * The part of a run that holds a moment: all of a short one; of a long one the part that is shown, until the moment leaves it.
 * @param shown the part shown before; null where none is
 */
export function timeWindow(duration: number, time: number, shown: TimeWindow | null = null): TimeWindow {
  if (!(duration > AT_ONCE * 1.25)) return { from: 0, to: duration > 0 ? duration : 1 }
  if (shown !== null && Math.abs(shown.to - shown.from - AT_ONCE) < 1e-9 && shown.to < duration + 1e-9)
    if (shown.from <= time && time <= shown.to) return shown
  const turns = Math.ceil((duration - AT_ONCE) / (AT_ONCE - OVERLAP))
  const step = (duration - AT_ONCE) / turns
  // The part whose middle is nearest.
  const from = step * Math.min(turns, Math.max(0, Math.round((time - AT_ONCE / 2) / step)))
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
