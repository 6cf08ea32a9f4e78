import { useCallback, useEffect, useState } from 'react'

export type Pace = 'real' | 'slow'

/** Seconds of the ride in one second. */
const RATE: Readonly<Record<Pace, number>> = { real: 1, slow: 0.2 }

export interface Playback {
  /** The moment shown, s. */
  readonly time: number
  readonly playing: boolean
  readonly pace: Pace
  toggle(): void
  seek(time: number): void
  setPace(pace: Pace): void
}

/**
 * Goes through a ride in time. Nothing plays by itself; before anybody looked anywhere, the moment shown is `telling`, and playing begins at
 * the start.
 */
export function usePlayback(duration: number, telling: number): Playback {
  const [chosen, setChosen] = useState<number | null>(null)
  const [playing, setPlaying] = useState(false)
  const [pace, setPace] = useState<Pace>('real')
  const time = Math.min(duration, chosen ?? telling)

  useEffect(() => {
    if (!playing) return
    let last: number | null = null
    let frame = requestAnimationFrame(function next(now) {
      const passed = last === null ? 0 : (now - last) / 1000
      last = now
      setChosen(before => Math.min(duration, (before ?? 0) + passed * RATE[pace]))
      frame = requestAnimationFrame(next)
    })
    return () => cancelAnimationFrame(frame)
  }, [playing, pace, duration])

  const ended = playing && time >= duration
  useEffect(() => {
    if (ended) setPlaying(false)
  }, [ended])

  const toggle = useCallback(() => {
    setPlaying(was => !was)
    setChosen(before => (before === null || before >= duration ? 0 : before))
  }, [duration])
  const seek = useCallback((to: number) => {
    setPlaying(false)
    setChosen(to)
  }, [])
  return { time, playing, pace, toggle, seek, setPace }
}
