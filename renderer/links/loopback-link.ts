import type { Answer } from '../../electron/contract/answer.ts'
import { pageSecretHeader, windowNameHeader } from '../../electron/contract/page.ts'
import { eventsIn } from './event-stream.ts'
import { HostGone, type Link } from './link.ts'

/** Requests may outlive their page up to this many characters together, so the last change is kept even as the window closes. */
const outlives = 60_000
const triesToReturn = 4
const pauseBetweenTries = 500

/** Through the loopback server that served this page. */
export function loopbackLink(page: Window): Link {
  // The name is new with every load: a copy of this tab has the same secret, and is another window all the same.
  const own = { [pageSecretHeader]: takeSecret(page), [windowNameHeader]: crypto.randomUUID() }
  const listeners = new Set<(name: string, payload: unknown) => void>()
  const mourners = new Set<() => void>()
  let gone = false
  let outliving = 0

  const ask = async (name: string, request: unknown): Promise<Answer> => {
    const body = JSON.stringify(request)
    const keepalive = outliving + body.length < outlives
    if (keepalive) outliving += body.length
    try {
      const headers = { ...own, 'content-type': 'application/json' }
      const response = await page.fetch(`/call/${name}`, { method: 'POST', headers, body, keepalive })
      if (response.ok) return { kind: 'reply', value: await response.json() }
      return { kind: 'refused', status: response.status, sentence: (await response.text()).trim() }
    } catch (error) {
      throw error instanceof TypeError ? new HostGone() : error
    } finally {
      if (keepalive) outliving -= body.length
    }
  }

  /** The stream of events is also the sign of life, both ways. */
  const watch = async () => {
    for (let tries = 0; tries < triesToReturn; tries++) {
      if (tries > 0) await new Promise(resolve => setTimeout(resolve, pauseBetweenTries))
      try {
        const response = await page.fetch('/events', { headers: own })
        if (!response.ok || response.body === null) break
        tries = 0
        for await (const { name, payload } of eventsIn(response.body)) for (const hear of listeners) hear(name, payload)
      } catch (error) {
        if (!(error instanceof TypeError)) throw error
      }
    }
    gone = true
    for (const hear of mourners) hear()
  }
  void watch()
  rememberSize(page, ask)

  return {
    ask,
    listen: hear => {
      listeners.add(hear)
      return () => listeners.delete(hear)
    },
    fileToken: async () => null,
    onGone: hear => {
      if (gone) queueMicrotask(hear)
      else mourners.add(hear)
      return () => mourners.delete(hear)
    },
  }
}

/** The secret comes once, behind the # of the address, and stays with this tab of this address only. */
function takeSecret(page: Window): string {
  const place = 'stopgap-page'
  const given = /^#page=([\w-]+)$/.exec(page.location.hash)?.[1]
  if (given !== undefined) {
    page.sessionStorage.setItem(place, given)
    page.history.replaceState(null, '', page.location.pathname)
  }
  return page.sessionStorage.getItem(place) ?? ''
}

/** The host cannot see the size of this window, so the window tells it, for the next start. */
function rememberSize(page: Window, ask: Link['ask']) {
  let timer: ReturnType<typeof setTimeout> | undefined
  page.addEventListener('resize', () => {
    clearTimeout(timer)
    timer = setTimeout(() => {
      const window = { width: page.outerWidth, height: page.outerHeight }
      ask('settings', { window }).catch((error: unknown) => {
        if (!(error instanceof HostGone)) throw error
      })
    }, 500)
  })
}
