import type { Axle, AxleId, Plan, Setup } from '../../core/plan/schema.ts'
import type { LedgerSureness } from '../../core/tolerance/ledger-sureness.ts'
import type { AxleSureness } from '../../core/tolerance/steps.ts'
import { watched } from './watched.ts'

/** What is asked of the worker: one axle of one setup, in a plan that holds no other setup. */
export interface SureAsk {
  readonly plan: Plan
  readonly axle: AxleId
  /** Ids of the loads counted. */
  readonly chosen: readonly string[]
}

/** To the worker: what to try, or nothing any more. The latest wins: it takes no block of trials more for an older one. Or that hands move. */
export type SureCall =
  | { readonly kind: 'trials'; readonly id: number; readonly ask: SureAsk | null }
  | { readonly kind: 'hands' }

/** What the worker says, and in answer to which call. */
export interface SureReply {
  readonly id: number
  readonly word: SureWord
}

/** How far it is, what came of the axle and then of its ledger, or that it broke. */
export type SureWord =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly sureness: AxleSureness }
  | { readonly kind: 'ledger'; readonly ledger: LedgerSureness }
  | { readonly kind: 'fault'; readonly fault: string }

/** As much of a Worker as is used. */
export interface SureHand {
  postMessage(call: SureCall): void
  terminate(): void
  onmessage: ((event: MessageEvent) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** How sure the axle shown is, as far as that is known. */
export interface SureView {
  /** Belongs to the axle as it stands; null until the trials are through. */
  readonly sureness: AxleSureness | null
  /** The same of what loads take and leave; null as long as that is not known, or there are none. */
  readonly ledger: LedgerSureness | null
  /** 0 to 1 while trials run; null when none do. */
  readonly share: number | null
  readonly stopped: boolean
  readonly fault: string | null
}

const NOTHING: SureView = { sureness: null, ledger: null, share: null, stopped: false, fault: null }

/** Hands rest this long before trials begin, ms: typing is never slowed by them. */
const PAUSE = 500

/**
 * Trials beside the page. The latest question wins: what runs for an older one is called off, and its answer is never heard. The worker stays, for
 * one that starts anew takes from whoever types.
 * @param hire starts a worker
 */
export function createSure(hire: () => SureHand) {
  const { read, write: show, subscribe } = watched(NOTHING)
  let asked: (SureAsk & { setup: Setup; off: readonly string[]; from: Axle }) | null = null
  let hand: SureHand | null = null
  /** The call whose answer is waited for; 0 when none is. */
  let running = 0
  let calls = 0
  let waiting: ReturnType<typeof setTimeout> | null = null

  const callOff = (): void => {
    if (waiting !== null) clearTimeout(waiting)
    waiting = null
    if (running !== 0) hand?.postMessage({ kind: 'trials', id: ++calls, ask: null })
    running = 0
  }
  const close = (): void => {
    callOff()
    if (hand !== null) {
      hand.onmessage = null
      hand.onerror = null
      hand.terminate()
    }
    hand = null
  }
  const fail = (fault: string): void => {
    close()
    show({ ...NOTHING, fault })
  }
  const hear = (word: SureWord): void => {
    if (word.kind === 'progress') show({ ...read(), share: word.share })
    else if (word.kind === 'fault') fail(word.fault)
    else if (word.kind === 'ledger') {
      running = 0
      show({ ...read(), ledger: word.ledger, share: null })
    } else if (asked === null || asked.plan.loads.length === 0) {
      running = 0
      show({ ...NOTHING, sureness: word.sureness })
    } else show({ ...NOTHING, sureness: word.sureness, share: 0 })
  }
  const hired = (): SureHand => {
    if (hand !== null) return hand
    const made = hire()
    made.onmessage = ({ data }) => {
      const { id, word } = data as SureReply
      if (id === running) hear(word)
    }
    made.onerror = ({ message }) => fail(message === '' ? 'its helper program did not start' : message)
    hand = made
    return made
  }
  const begin = (ask: SureAsk): void => {
    waiting = null
    try {
      const worker = hired()
      running = ++calls
      show({ ...NOTHING, share: 0 })
      worker.postMessage({ kind: 'trials', id: running, ask })
    } catch (fault) {
      fail(fault instanceof Error ? fault.message : String(fault))
    }
  }

  return {
    read,
    subscribe,
    /** Says what is shown now; trials begin when that has changed and the hands rest. */
    ask(plan: Plan, setup: Setup, axle: Axle, off: readonly string[]): void {
      const { tolerances, targets, loads, vehicle } = plan
      if (
        asked?.from === axle &&
        asked.setup === setup &&
        asked.off === off &&
        asked.plan.tolerances === tolerances &&
        asked.plan.targets === targets &&
        asked.plan.loads === loads &&
        asked.plan.vehicle === vehicle
      )
        return
      const chosen = loads.map(({ id }) => id).filter(id => !off.includes(id))
      asked = { plan: { ...plan, setups: [setup] }, axle: axle.id, chosen, setup, off, from: axle }
      callOff()
      if (read() !== NOTHING) show(NOTHING)
      waiting = setTimeout(begin, PAUSE, { plan: asked.plan, axle: axle.id, chosen })
    },
    /** Somebody types or points: trials under way pause until the hands rest, whatever the key does. */
    hands(): void {
      if (running !== 0) hand?.postMessage({ kind: 'hands' })
    },
    /** What is known by then stays. */
    stop(): void {
      callOff()
      show({ ...NOTHING, sureness: read().sureness, stopped: true })
    },
    again(): void {
      if (asked === null) return
      const { plan, axle, chosen } = asked
      callOff()
      begin({ plan, axle, chosen })
    },
    close,
  }
}

export type Sure = ReturnType<typeof createSure>
