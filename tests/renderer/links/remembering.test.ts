import { describe, expect, it } from 'vitest'
import type { Link } from '../../../renderer/links/link.ts'
import { remembering } from '../../../renderer/links/remembering.ts'

/** A link whose host says what the test says. */
function spoken() {
  const listeners = new Set<(name: string, payload: unknown) => void>()
  const link: Link = {
    ask: async () => ({ kind: 'reply', value: null }),
    listen: hear => {
      listeners.add(hear)
      return () => listeners.delete(hear)
    },
    fileToken: async () => null,
    onGone: () => () => undefined,
  }
  const say = (word: string) => {
    for (const hear of listeners) hear('menu', word)
  }
  return { link, say }
}

describe('a link that remembers', () => {
  it('gives all who begin together what was said before, then what is said, each once', async () => {
    const { link, say } = spoken()
    const kept = remembering(link)
    say('early')
    const heard: string[] = []
    kept.listen((_name, payload) => heard.push(`one ${payload}`))
    kept.listen((_name, payload) => heard.push(`two ${payload}`))
    await Promise.resolve()
    say('now')
    expect(heard).toEqual(['one early', 'two early', 'one now', 'two now'])
  })

  it('gives one who comes later only what is said from then on', async () => {
    const { link, say } = spoken()
    const kept = remembering(link)
    say('early')
    kept.listen(() => undefined)
    await Promise.resolve()
    const heard: unknown[] = []
    const stop = kept.listen((_name, payload) => heard.push(payload))
    say('now')
    stop()
    say('after')
    expect(heard).toEqual(['now'])
  })
})
