import type { Answer } from '../../electron/contract/answer.ts'

/** One way of reaching a host. What goes over it is checked in host.ts, the same for every way. */
export interface Link {
  ask(name: string, request: unknown): Promise<Answer>
  listen(hear: (name: string, payload: unknown) => void): () => void
  /** null where the host cannot know the file, which is then read here. */
  fileToken(file: File): Promise<string | null>
  onGone(hear: () => void): () => void
}

export class HostGone extends Error {
  constructor() {
    super('Stopgap has ended, so nothing can be opened or saved from this window. Start it again.')
  }
}
