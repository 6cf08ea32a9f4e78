/** As much of a browser's window as the loopback link uses, with a cookie jar of one cookie; requests are real. */
export async function openPage(address: string): Promise<Window> {
  const entered = await fetch(address, { redirect: 'manual' })
  const cookie = entered.headers.get('set-cookie')?.split(';')[0]
  const location = entered.headers.get('location')
  if (cookie === undefined || location == null) throw new Error(`${entered.status} ${await entered.text()}`)
  const { origin, hash } = new URL(location, address)
  const stored = new Map<string, string>()
  const page = {
    location: { hash, pathname: '/' },
    history: { replaceState: () => undefined },
    sessionStorage: {
      getItem: (name: string) => stored.get(name) ?? null,
      setItem: (name: string, value: string) => stored.set(name, value),
    },
    addEventListener: () => undefined,
    fetch: (path: string, init: RequestInit = {}) => {
      const headers = { ...(init.headers as Record<string, string>), cookie, origin, 'sec-fetch-site': 'same-origin' }
      return fetch(new URL(path, origin), { ...init, keepalive: false, headers })
    },
  }
  return page as unknown as Window
}
