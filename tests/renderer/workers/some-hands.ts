import type { Question, Reply } from '../../../renderer/workers/messages.ts'
import type { Hand } from '../../../renderer/workers/pool.ts'

/** A worker whose answers the test gives. */
export interface FakeHand<A, R> extends Hand {
  readonly asked: Question<A>[]
  ended: boolean
  /** Answers the question of that id, asked for or not. */
  answer(id: number, answer: R): void
  say(reply: Reply<R>): void
  breakDown(message: string): void
}

export function someHands<A, R>() {
  const hands: FakeHand<A, R>[] = []
  const hire = (): Hand => {
    const hand: FakeHand<A, R> = {
      asked: [],
      ended: false,
      onmessage: null,
      onerror: null,
      postMessage: question => hand.asked.push(question as Question<A>),
      terminate: () => {
        hand.ended = true
      },
      say: reply => hand.onmessage?.({ data: reply } as MessageEvent),
      answer: (id, answer) => hand.say({ id, answer }),
      breakDown: message => hand.onerror?.({ message } as ErrorEvent),
    }
    hands.push(hand)
    return hand
  }
  return { hands, hire }
}
