import { EventEmitter } from 'node:events'
import type { ServerResponse } from 'node:http'
import { beforeEach, expect, it, vi } from 'vitest'
import { createStreams } from '../../../electron/browser-host/streams.ts'
import { createWindows } from '../../../electron/browser-host/windows.ts'

beforeEach(() => {
  vi.useFakeTimers()
  return () => vi.useRealTimers()
})

/** A stream of a window, and what was written into it. */
function aStream() {
  const written: string[] = []
  const stream = Object.assign(new EventEmitter(), {
    writeHead: () => stream,
    write: (text: string) => written.push(text),
    end: () => stream.emit('close'),
  })
  return { written, stream: stream as unknown as ServerResponse }
}

it('what is said to one window no other hears; what is said to all, all do', () => {
  const streams = createStreams(5000, createWindows())
  const [a, b] = [aStream(), aStream()]
  streams.add(a.stream, 'a')
  streams.add(b.stream, 'b')
  streams.tell('shared', { key: 'key-of-a-plan' }, 'a')
  streams.tell('menu', { command: 'undo' })
  const heard = ({ written }: typeof a) => written.flatMap(text => /^event: (\w+)/.exec(text)?.[1] ?? [])
  expect([heard(a), heard(b)]).toEqual([['shared', 'menu'], ['menu']])
})

it('once it is told to end, nothing is waited for: no timer keeps the program', () => {
  const streams = createStreams(5000, createWindows())
  const { stream } = aStream()
  streams.add(stream, 'a')
  streams.close()
  stream.emit('close')
  expect(vi.getTimerCount()).toBe(0)
})
