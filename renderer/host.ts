import {
  type Call,
  type EventName,
  type EventPayload,
  events,
  type MessageName,
  messages,
  type Opened,
} from '../electron/contract/contract.ts'
import { bridgeLink } from './links/bridge-link.ts'
import type { Link } from './links/link.ts'
import { loopbackLink } from './links/loopback-link.ts'

/** The machine, as the window sees it. */
export interface Host {
  /** Rejects with HostRefused when the host would not do it, with HostGone when there is no host any more. */
  call: Call
  /** The result stops the listening. */
  on<N extends EventName>(name: N, hear: (payload: EventPayload<N>) => void): () => void
  /** Open a file the person dropped on the window. */
  drop(file: File): Promise<Opened>
  /** Hear, once, that the host has ended: nothing can be saved from here on. */
  onGone(hear: () => void): () => void
}

/** The message is a sentence to show. */
export class HostRefused extends Error {}

export { HostGone } from './links/link.ts'

/** Electron's bridge where the page has it, else the server the page came from. */
export const connect = (): Host =>
  hostOver(window.stopgap === undefined ? loopbackLink(window) : bridgeLink(window.stopgap))

export function hostOver(link: Link): Host {
  const call = async (name: MessageName, request: unknown) => {
    const answer = await link.ask(name, request)
    if (answer.kind === 'refused') throw new HostRefused(answer.sentence)
    return messages[name].reply.parse(answer.value)
  }
  return {
    call: call as Call,
    on: (name, hear) =>
      link.listen((told, payload) => {
        if (told === name) hear(events[name].parse(payload) as EventPayload<typeof name>)
      }),
    drop: async file => {
      const token = await link.fileToken(file)
      return token === null ? link.readDropped(file) : ((await call('openFile', { token })) as Opened)
    },
    onGone: hear => link.onGone(hear),
  }
}
