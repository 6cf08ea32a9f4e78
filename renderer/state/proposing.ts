import type { Change } from '../../core/changes/change.ts'
import type { Candidate, Question } from '../../core/changes/evaluate.ts'
import { gathered, type Proposals, type Work } from '../../core/changes/propose.ts'
import { watched } from './watched.ts'

/** What one worker is asked: some of the combinations, each with its place in the whole list. */
export interface ProposeAsk {
  readonly question: Question
  readonly list: readonly { readonly at: number; readonly changes: readonly Change[] }[]
}

/** What it says, some at a time as it gets on; or that it broke. */
export type ProposeWord =
  | {
      readonly kind: 'candidates'
      readonly candidates: readonly { readonly at: number; readonly candidate: Candidate }[]
    }
  | { readonly kind: 'fault'; readonly fault: string }

/** As much of a Worker as is used. */
export interface ProposeHand {
  postMessage(ask: ProposeAsk): void
  terminate(): void
  onmessage: ((event: MessageEvent) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

export interface ProposeView {
  /** Belong to what was asked last; null until all are worked out. */
  readonly proposals: Proposals | null
  readonly done: number
  readonly of: number
  readonly running: boolean
  readonly stopped: boolean
  readonly fault: string | null
}

const NOTHING: ProposeView = { proposals: null, done: 0, of: 0, running: false, stopped: false, fault: null }

/** Hands rest this long before candidates are worked out, ms: a target being dragged is never slowed by them. */
const PAUSE = 120

/**
 * Candidates beside the page, shared out among workers. The latest question wins: those at work for an older one are ended at once.
 * @param hire starts a worker
 * @param most workers at a time
 */
export function createProposing(hire: () => ProposeHand, most: number) {
  const { read, write: show, subscribe } = watched(NOTHING)
  let asked: Work | null = null
  let hands: ProposeHand[] = []
  let waiting: ReturnType<typeof setTimeout> | null = null

  const end = (): void => {
    if (waiting !== null) clearTimeout(waiting)
    waiting = null
    for (const hand of hands) {
      hand.onmessage = null
      hand.onerror = null
      hand.terminate()
    }
    hands = []
  }
  const fail = (fault: string): void => {
    end()
    show({ ...NOTHING, fault })
  }
  const begin = (work: Work): void => {
    const { question, list } = work
    const found: (Candidate | undefined)[] = list.map(() => undefined)
    let done = 0
    const hear = (word: ProposeWord): void => {
      if (word.kind === 'fault') {
        fail(word.fault)
        return
      }
      for (const { at, candidate } of word.candidates) {
        if (found[at] === undefined) done += 1
        found[at] = candidate
      }
      if (done < list.length) {
        show({ ...read(), done })
        return
      }
      end()
      const candidates = found.filter(candidate => candidate !== undefined)
      show({ ...NOTHING, done, of: list.length, proposals: gathered(candidates, work) })
    }
    show({ ...NOTHING, of: list.length, running: true, proposals: read().proposals })
    const shares = Math.min(most, list.length)
    try {
      for (let share = 0; share < shares; share += 1) {
        const hand = hire()
        hands.push(hand)
        hand.onmessage = ({ data }) => hear(data as ProposeWord)
        hand.onerror = ({ message }) => fail(message === '' ? 'its helper program did not start' : message)
        const part = list.map((changes, at) => ({ at, changes })).filter(({ at }) => at % shares === share)
        hand.postMessage({ question, list: part })
      }
    } catch (fault) {
      fail(fault instanceof Error ? fault.message : String(fault))
    }
  }

  return {
    read,
    subscribe,
    /** Says what is wanted now; what was found before stays in sight, as older, until it is answered. */
    ask(work: Work, keep: boolean): void {
      asked = work
      end()
      show({ ...NOTHING, of: work.list.length, running: true, proposals: keep ? read().proposals : null })
      waiting = setTimeout(() => {
        waiting = null
        begin(work)
      }, PAUSE)
    },
    stop(): void {
      if (!read().running) return
      end()
      show({ ...read(), running: false, stopped: true })
    },
    again(): void {
      if (asked === null) return
      end()
      begin(asked)
    },
    close: end,
  }
}

export type Proposing = ReturnType<typeof createProposing>
