import type { Answer } from '../electron/contract/answer.ts'
import type { Call, EventName, EventPayload, MessageName, Reply } from '../electron/contract/contract.ts'
import type { Opened } from '../electron/contract/shapes.ts'
import type { Dropped } from './links/dropped.ts'
import type { Link } from './links/link.ts'

/** The machine, as the window sees it. */
export interface Host {
  /** Rejects with HostRefused when the host would not do it, with HostGone when there is no host any more. */
  call: Call
  /** The result stops the listening. */
  on<N extends EventName>(name: N, hear: (payload: EventPayload<N>) => void): () => void
  /** Open a file the person dropped on the window. */
  drop(file: File): Promise<Dropped>
  /** Hear, once, that the host has ended: nothing can be saved from here on. */
  onGone(hear: () => void): () => void
}

/** The message is a sentence to show. */
export class HostRefused extends Error {}

export { HostGone } from './links/link.ts'

/** What the host replied. It has checked that itself before it left, see electron/contract/answer.ts. */
export function replied<N extends MessageName>(answer: Answer): Reply<N> {
  if (answer.kind === 'refused') throw new HostRefused(answer.sentence)
  return answer.value as Reply<N>
}

export function hostOver(link: Link): Host {
  const call = async (name: MessageName, request: unknown) => replied(await link.ask(name, request))
  return {
    call: call as Call,
    on: (name, hear) =>
      link.listen((told, payload) => {
        if (told === name) hear(payload as EventPayload<typeof name>)
      }),
    drop: async file => {
      const token = await link.fileToken(file)
      if (token !== null) return (await call('openFile', { token })) as Opened
      const { readDropped } = await import('./links/dropped.ts')
      return readDropped(file)
    },
    onGone: hear => link.onGone(hear),
  }
}
