import type { NotLaid } from '../../core/runs/lay.ts'
import type { RunClient } from '../workers/run-client.ts'
import type { LaidWheel, RunAsk } from '../workers/run-messages.ts'

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
  private view: LaidView = nothing
  private next: LayAsk | null = null
  private under: LayAsk | null = null
  private readonly listeners = new Set<() => void>()

  constructor(private readonly client: RunClient) {}

  readonly read = (): LaidView => this.view

  readonly subscribe = (hear: () => void): (() => void) => {
    this.listeners.add(hear)
    return () => this.listeners.delete(hear)
  }

  private write(view: LaidView): void {
    this.view = view
    for (const hear of [...this.listeners]) hear()
  }

  /** null: nothing is to be laid. */
  ask(ask: LayAsk | null): void {
    this.next = ask
    if (ask === null) this.write(nothing)
    else if (!sameWheel(this.view.of, ask)) this.write({ ...nothing, working: true })
    else if (!this.view.working) this.write({ ...this.view, working: true })
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
    const wanted = newer === null ? this.view.working : sameWheel(ask, newer)
    if (wanted && end.kind === 'answer') {
      const { answer } = end
      const [laid, notLaid] = answer.ok ? [answer, null] : [null, answer]
      this.write({ laid, notLaid, of: ask, working: newer !== null, fault: null })
    } else if (wanted && end.kind === 'fault') this.write({ ...nothing, of: ask, fault: end.fault })
    void this.go()
  }
}
