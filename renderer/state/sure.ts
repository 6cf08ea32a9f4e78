import type { Axle, AxleId, Plan, Setup } from '../../core/plan/schema.ts'
import type { AxleSureness } from '../../core/tolerance/steps.ts'

/** What is asked of the worker: one axle of one setup, in a plan that holds no more. */
export interface SureAsk {
  readonly plan: Plan
  readonly axle: AxleId
}

/** What the worker says: how far it is, what came of it, or that it broke. */
export type SureWord =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly sureness: AxleSureness }
  | { readonly kind: 'fault'; readonly fault: string }

/** As much of a Worker as is used. */
export interface SureHand {
  postMessage(ask: SureAsk): void
  terminate(): void
  onmessage: ((event: MessageEvent) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** How sure the axle shown is, as far as that is known. */
export interface SureView {
  /** Belongs to the axle as it stands; null until the trials are through. */
  readonly sureness: AxleSureness | null
  /** 0 to 1 while trials run; null when none do. */
  readonly share: number | null
  readonly stopped: boolean
  readonly fault: string | null
}

const NOTHING: SureView = { sureness: null, share: null, stopped: false, fault: null }

/** Hands rest this long before trials begin, ms: typing is never slowed by them. */
const PAUSE = 500

/**
 * Trials beside the page. The latest question wins: what runs for an older one is ended at once, and its answer is never heard.
 * @param hire starts a worker
 */
export function createSure(hire: () => SureHand) {
  const listeners = new Set<() => void>()
  let view = NOTHING
  let asked: { axle: Axle; tolerances: Plan['tolerances']; targets: Plan['targets']; ask: SureAsk } | null = null
  let hand: SureHand | null = null
  let waiting: ReturnType<typeof setTimeout> | null = null

  const show = (next: SureView): void => {
    view = next
    for (const listener of listeners) listener()
  }
  const end = (): void => {
    if (waiting !== null) clearTimeout(waiting)
    waiting = null
    if (hand !== null) {
      hand.onmessage = null
      hand.onerror = null
      hand.terminate()
    }
    hand = null
  }
  const fail = (fault: string): void => {
    end()
    show({ ...NOTHING, fault })
  }
  const hear = (word: SureWord): void => {
    if (word.kind === 'progress') show({ ...view, share: word.share })
    else if (word.kind === 'fault') fail(word.fault)
    else {
      end()
      show({ ...NOTHING, sureness: word.sureness })
    }
  }
  const begin = (ask: SureAsk): void => {
    waiting = null
    try {
      hand = hire()
    } catch (fault) {
      fail(fault instanceof Error ? fault.message : String(fault))
      return
    }
    hand.onmessage = ({ data }) => hear(data as SureWord)
    hand.onerror = ({ message }) => fail(message === '' ? 'its helper program did not start' : message)
    show({ ...NOTHING, share: 0 })
    hand.postMessage(ask)
  }

  return {
    read: (): SureView => view,
    subscribe: (listener: () => void): (() => void) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    /** Says what is shown now; trials begin when that has changed and the hands rest. */
    ask(plan: Plan, setup: Setup, axle: Axle): void {
      const { tolerances, targets } = plan
      if (asked?.axle === axle && asked.tolerances === tolerances && asked.targets === targets) return
      const alone = { ...plan, setups: [{ ...setup, axles: [axle] }] }
      asked = { axle, tolerances, targets, ask: { plan: alone, axle: axle.id } }
      end()
      if (view !== NOTHING) show(NOTHING)
      waiting = setTimeout(begin, PAUSE, asked.ask)
    },
    stop(): void {
      end()
      show({ ...NOTHING, stopped: true })
    },
    again(): void {
      if (asked === null) return
      end()
      begin(asked.ask)
    },
    close: end,
  }
}

export type Sure = ReturnType<typeof createSure>
