import type { Answer } from '../electron/contract/answer.ts'
import {
  type Call,
  type EventName,
  type EventPayload,
  events,
  type MessageName,
  messages,
  type Reply,
} from '../electron/contract/contract.ts'
import type { Opened } from '../electron/contract/shapes.ts'
import { type Dropped, readDropped } from './links/dropped.ts'
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

/** What the host replied, checked. */
export function checkedReply<N extends MessageName>(name: N, answer: Answer): Reply<N> {
  if (answer.kind === 'refused') throw new HostRefused(answer.sentence)
  return messages[name].reply.parse(answer.value) as Reply<N>
}

export function hostOver(link: Link): Host {
  const call = async (name: MessageName, request: unknown) => checkedReply(name, await link.ask(name, request))
  return {
    call: call as Call,
    on: (name, hear) =>
      link.listen((told, payload) => {
        if (told === name) hear(events[name].parse(payload) as EventPayload<typeof name>)
      }),
    drop: async file => {
      const token = await link.fileToken(file)
      return token === null ? readDropped(file) : ((await call('openFile', { token })) as Opened)
    },
    onGone: hear => link.onGone(hear),
  }
}
