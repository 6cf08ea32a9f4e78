import type { ServerResponse } from 'node:http'
import { events, type Tell } from '../contract/contract.ts'
import type { Windows } from './windows.ts'

const beat = 10_000

/** The windows that listen. Their streams carry the events, and their end is the end of the window. */
export function createStreams(grace: number, windows: Windows, closed: (window: string) => void = () => undefined) {
  let leave: () => void
  const abandoned = new Promise<void>(resolve => {
    leave = resolve
  })
  const open = new Map<ServerResponse, string>()
  let hadOne = false
  let over = false
  let waiting: ReturnType<typeof setTimeout> | undefined

  const heart = setInterval(() => {
    for (const stream of open.keys()) stream.write(': here\n\n')
  }, beat)
  heart.unref()

  return {
    add(stream: ServerResponse, window: string): void {
      windows.listens(window)
      hadOne = true
      clearTimeout(waiting)
      open.set(stream, window)
      stream.writeHead(200, { 'content-type': 'text/event-stream; charset=utf-8' })
      stream.write(': here\n\n')
      stream.on('close', () => {
        open.delete(stream)
        // Nothing is waited for any more: a program that is asked to end does so at once.
        if (over) return
        if (windows.stops(window)) setTimeout(() => windows.isHere(window) || closed(window), grace).unref()
        // A page that is loaded again comes back at once.
        if (open.size === 0) waiting = setTimeout(() => leave(), grace)
      })
    },
    tell: ((name, payload, window) => {
      const told = `event: ${name}\ndata: ${JSON.stringify(events[name].parse(payload))}\n\n`
      for (const [stream, of] of open) if (window === undefined || of === window) stream.write(told)
    }) as Tell,
    /** Settles when no window has been there for the length of `grace`, ms, after there was one. */
    abandoned,
    /** Whether a window ever came. */
    hadWindow: () => hadOne,
    close(): void {
      over = true
      clearInterval(heart)
      for (const stream of open.keys()) stream.end()
      open.clear()
      clearTimeout(waiting)
    },
  }
}
