import { randomBytes } from 'node:crypto'

/** What a token of the contract stands for. */
export type Thing =
  | { kind: 'file' | 'folder' | 'demo' | 'remains' | 'recording'; path: string }
  | { kind: 'kept' | 'previous'; key: string }

/** Tokens are random, the same for the same thing, and die with the run. */
export function createTokens() {
  const things = new Map<string, Thing>()
  const given = new Map<string, string>()
  return {
    give(thing: Thing): string {
      const mark = `${thing.kind} ${'path' in thing ? thing.path : thing.key}`
      const known = given.get(mark)
      if (known !== undefined) return known
      const token = randomBytes(16).toString('base64url')
      given.set(mark, token)
      things.set(token, thing)
      return token
    },
    find: (token: string): Thing | null => things.get(token) ?? null,
  }
}

export type Tokens = ReturnType<typeof createTokens>
