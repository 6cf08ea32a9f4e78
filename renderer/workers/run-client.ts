import type { Hand } from './pool.ts'
import type { RunAnswers, RunAsk, RunReply, RunWord } from './run-messages.ts'

/** What becomes of a question about recorded runs. */
export type Asked<A> =
  | { readonly kind: 'answer'; readonly answer: A }
  | { readonly kind: 'fault'; readonly fault: string }
  | { readonly kind: 'cancelled' }

export interface Asking<A> {
  readonly done: Promise<Asked<A>>
  /** Nobody waits any more. */
  readonly cancel: () => void
}

interface Open {
  readonly settle: (end: Asked<never>) => void
  readonly tell: (share: number) => void
}

/** Asks the one worker that holds the recorded runs. It is started at the first question, and anew after it broke: then it holds none. */
export class RunClient {
  private hand: Hand | null = null
  private readonly open = new Map<number, Open>()
  private next = 1

  constructor(
    private readonly hire: () => Hand,
    /** Hears that the worker broke, with all it held. */
    private readonly lost: () => void = () => {},
  ) {}

  ask<K extends RunAsk['kind']>(
    ask: Extract<RunAsk, { kind: K }>,
    tell: (share: number) => void = () => {},
  ): Asking<RunAnswers[K]> {
    const id = this.next
    this.next += 1
    const done = new Promise<Asked<RunAnswers[K]>>(resolve => {
      this.open.set(id, { settle: resolve as Open['settle'], tell })
    })
    this.worker().postMessage({ id, ask } satisfies RunWord)
    const cancel = (): void => {
      if (!this.open.has(id)) return
      this.worker().postMessage({ cancel: id } satisfies RunWord)
      this.settle(id, { kind: 'cancelled' })
    }
    return { done, cancel }
  }

  private settle(id: number, end: Asked<unknown>): void {
    const open = this.open.get(id)
    this.open.delete(id)
    open?.settle(end as Asked<never>)
  }

  private worker(): Hand {
    if (this.hand !== null) return this.hand
    const hand = this.hire()
    hand.onmessage = ({ data }) => this.hear(data as RunReply)
    hand.onerror = ({ message }) => this.broke(message)
    this.hand = hand
    return hand
  }

  private hear(reply: RunReply): void {
    const open = this.open.get(reply.id)
    if (open === undefined) return
    if ('share' in reply) open.tell(reply.share)
    else if ('cancelled' in reply) this.settle(reply.id, { kind: 'cancelled' })
    else if ('fault' in reply) this.settle(reply.id, { kind: 'fault', fault: reply.fault })
    else this.settle(reply.id, { kind: 'answer', answer: reply.answer })
  }

  private broke(message: string | undefined): void {
    this.hand?.terminate()
    this.hand = null
    const fault = message === undefined || message === '' ? 'its helper program did not start' : message
    for (const id of [...this.open.keys()]) this.settle(id, { kind: 'fault', fault })
    this.lost()
  }
}
