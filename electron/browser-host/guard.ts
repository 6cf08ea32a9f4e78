import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'
import type { IncomingMessage } from 'node:http'
import { pageSecretHeader } from '../contract/page.ts'
import { Refusal } from './refusal.ts'

/**
 * Who may talk to the server. Anything on this machine, and any page in any browser on it, can reach a loopback port, so:
 * the Host must be ours (a name that was made to point here is not), the request must come from our own page, the browser
 * must hold the cookie it got for a ticket that works once, and calls must show the page's secret. The secret is
 * needed because browsers send a cookie of 127.0.0.1 to every port of it.
 */
export function createGuard(port: number) {
  const host = `127.0.0.1:${port}`
  const origin = `http://${host}`
  const cookieName = `stopgap-${port}`
  const cookie = secret()
  const pageSecret = secret()
  const tickets = new Set<string>()

  return {
    origin,

    newAddress(): string {
      const ticket = secret()
      tickets.add(ticket)
      return `${origin}/enter?ticket=${ticket}`
    },

    checkSource({ headers, method }: IncomingMessage): void {
      if (headers.host !== host) throw new Refusal(403, 'Stopgap answers at its own address only.')
      const from = headers.origin
      const site = headers['sec-fetch-site']
      const ours = from === origin || (from === undefined && method !== 'POST')
      const near = site === undefined || site === 'same-origin' || site === 'none'
      if (!ours || !near)
        throw new Refusal(403, 'Another page asked for this, and Stopgap answers its own window only.')
    },

    /** Takes a ticket for good; the headers send the page on its way with cookie and secret. */
    enter(ticket: string | null): Record<string, string> {
      if (ticket === null || !tickets.delete(ticket)) {
        throw new Refusal(403, 'This address has been used already, or was never given out. Start Stopgap again.')
      }
      return {
        'set-cookie': `${cookieName}=${cookie}; Path=/; HttpOnly; SameSite=Strict`,
        location: `/#page=${pageSecret}`,
      }
    },

    checkCookie({ headers }: IncomingMessage): void {
      const pairs = (headers.cookie ?? '').split(';').map(pair => pair.trim())
      if (!pairs.some(pair => same(pair, `${cookieName}=${cookie}`))) {
        throw new Refusal(403, 'This browser was not let in. Use the address Stopgap gave when it started.')
      }
    },

    checkSecret({ headers }: IncomingMessage): void {
      if (!same(String(headers[pageSecretHeader] ?? ''), pageSecret)) {
        throw new Refusal(403, 'This page does not belong to Stopgap as it runs now. Start Stopgap again.')
      }
    },
  }
}

export type Guard = ReturnType<typeof createGuard>

const secret = () => randomBytes(32).toString('base64url')

/** Takes the same time wherever they differ. */
function same(a: string, b: string): boolean {
  const hash = (text: string) => createHash('sha256').update(text).digest()
  return timingSafeEqual(hash(a), hash(b))
}
