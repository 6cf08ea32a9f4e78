import type { NotLaid } from '../../core/runs/lay.ts'
import type { RunClient } from '../workers/run-client.ts'
import type { LaidWheel, RunAsk } from '../workers/run-messages.ts'
import { watched } from './watched.ts'

export type LayAsk = Extract<RunAsk, { kind: 'lay' }>

export interface LaidView {
  /** What came of it last. One of another run or channel is not shown while this one is worked out. */
  readonly laid: LaidWheel | null
  readonly notLaid: NotLaid | null
  /** The one it is of. */
  readonly of: LayAsk | null
  readonly working: boolean
  readonly fault: string | null
}

const nothing: LaidView = { laid: null, notLaid: null, of: null, working: false, fault: null }

const sameWheel = (a: LayAsk | null, b: LayAsk): boolean => a !== null && a.run === b.run && a.place === b.place

/** Lays one channel over the plan again and again, as either changes: one at a time, and next the one asked for last. */
export class LaidSlot {
  private readonly seen = watched(nothing)
  readonly read = this.seen.read
  readonly subscribe = this.seen.subscribe
  private next: LayAsk | null = null
  private under: LayAsk | null = null

  constructor(private readonly client: RunClient) {}

  /** null: nothing is to be laid. */
  ask(ask: LayAsk | null): void {
    this.next = ask
    if (ask === null) this.seen.write(nothing)
    else if (!sameWheel(this.read().of, ask)) this.seen.write({ ...nothing, working: true })
    else if (!this.read().working) this.seen.write({ ...this.read(), working: true })
    void this.go()
  }

  private async go(): Promise<void> {
    if (this.under !== null || this.next === null) return
    const ask = this.next
    this.next = null
    this.under = ask
    const end = await this.client.ask<'lay'>(ask).done
    this.under = null
    // What was asked meanwhile is laid instead; of the same wheel this is at least nearer than what is shown.
    const newer = this.next as LayAsk | null
    const wanted = newer === null ? this.read().working : sameWheel(ask, newer)
    if (wanted && end.kind === 'answer') {
      const { answer } = end
      const [laid, notLaid] = answer.ok ? [answer, null] : [null, answer]
      this.seen.write({ laid, notLaid, of: ask, working: newer !== null, fault: null })
    } else if (wanted && end.kind === 'fault') this.seen.write({ ...nothing, of: ask, fault: end.fault })
    void this.go()
  }
}
