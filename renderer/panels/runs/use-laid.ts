import { useEffect, useMemo, useSyncExternalStore } from 'react'
import { LaidSlot, type LaidView, type LayAsk } from '../../state/laid-slot.ts'
import { isRead, type Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import type { LaidOver } from '../../workers/run-messages.ts'

/** One channel of a run laid over the plan, again whenever either changes. @param at place in the run's channels; null for none */
export function useLaid(recordings: Recordings, run: Recording | null, at: number | null, over: LaidOver): LaidView {
  const slot = useMemo(() => new LaidSlot(recordings.client), [recordings])
  const channel = run === null || at === null || !isRead(run) ? null : (run.channels[at] ?? null)
  const place = run === null || channel === null ? -1 : run.taken.indexOf(channel.column)
  const { plan, setup, axle } = over
  const found = run?.found ?? null
  const id = run?.id ?? null
  const ask = useMemo((): LayAsk | null => {
    if (id === null || channel === null || found === null) return null
    const { column: _, axle: __, side: ___, ...rest } = channel
    return { kind: 'lay', run: id, place, channel: rest, over: { plan, setup, axle } }
  }, [id, channel, place, found, plan, setup, axle])
  useEffect(() => slot.ask(ask), [slot, ask])
  useEffect(() => () => slot.ask(null), [slot])
  return useSyncExternalStore(slot.subscribe, slot.read)
}
