import { describe, expect, it } from 'vitest'
import { answer, type Handlers } from '../../../electron/contract/answer.ts'
import { messages } from '../../../electron/contract/contract.ts'
import { contentSecurityPolicy } from '../../../electron/contract/page.ts'
import { whyNotPlan } from '../../../electron/contract/plan-text.ts'

const withRecents = (recents: () => Promise<unknown>) => ({ recents }) as unknown as Handlers

describe('answer', () => {
  it('lets no reply out that holds more than the contract says', async () => {
    const faults: unknown[] = []
    const leaking = withRecents(async () => ({ recents: [], path: '/home/someone/car.stopgap' }))
    const done = await answer(leaking, 'recents', {}, fault => faults.push(fault))
    expect(done).toMatchObject({ kind: 'refused', status: 500 })
    expect(JSON.stringify(done)).not.toContain('someone')
    expect(faults).toHaveLength(1)
  })

  it('tells the window of a fault without its details, and somebody else with them', async () => {
    const faults: unknown[] = []
    const broken = withRecents(async () => {
      throw new Error('/home/someone/car.stopgap')
    })
    const done = await answer(broken, 'recents', {}, fault => faults.push(fault))
    expect(done).toMatchObject({ kind: 'refused', status: 500, sentence: expect.stringContaining('“recents”') })
    expect(JSON.stringify(done)).not.toContain('someone')
    expect(faults).toEqual([new Error('/home/someone/car.stopgap')])
  })

  it('hands the request on as it was checked', async () => {
    let asked: unknown
    const handlers = {
      folder: async (request: unknown) => {
        asked = request
        return { kind: 'failed', reason: 'Not here.' }
      },
    } as unknown as Handlers
    expect(await answer(handlers, 'folder', { token: null }, () => undefined)).toMatchObject({ kind: 'reply' })
    expect(asked).toEqual({ token: null })
  })
})

describe('the contract', () => {
  it('has no field for a path, but that of a run as its plan names it', () => {
    const fields = Object.entries(messages).flatMap(([name, message]) =>
      [...fieldsOf(message.request), ...fieldsOf(message.reply)].map(field => `${name} ${field}`),
    )
    expect(fields).toContain('save savedText')
    const paths = fields.filter(field => /path|file|directory|url/i.test(field.split(' ')[1]!))
    expect(paths).toEqual(['keepRun file', 'openRun file'])
  })

  it.each(['/etc/passwd', '../up.stopgap-run', 'a/../../b', 'C:\\a', '.hidden', 'a//b'])(
    'takes no run out of its plan’s folder: %s',
    file => {
      const asked = { token: 't'.repeat(22), digest: '0'.repeat(64) }
      expect(messages.openRun.request.safeParse({ ...asked, file: 'runs/a.stopgap-run' }).success).toBe(true)
      expect(messages.openRun.request.safeParse({ ...asked, file }).success).toBe(false)
    },
  )
})

/** Names of all fields in a schema, however deep. */
function fieldsOf(schema: unknown, seen = new Set<unknown>()): string[] {
  if (typeof schema !== 'object' || schema === null || seen.has(schema)) return []
  seen.add(schema)
  const { shape, ...definition } =
    (schema as { def?: Record<string, unknown> }).def ?? (schema as Record<string, unknown>)
  const own = typeof shape === 'object' && shape !== null ? Object.keys(shape) : []
  return [
    ...own,
    ...[shape, definition].flatMap(part => Object.values(part ?? {}).flatMap(inner => fieldsOf(inner, seen))),
  ]
}

describe('whyNotPlan', () => {
  it.each([
    ['', /^its content is text that is not JSON: it breaks off; it should be a plan saved by Stopgap$/],
    ['{"a": 1,\n "b": 2 "c": 3}', /^its content is text that is not JSON from line 2, column 9 on; /],
    ['{}', /^format is nothing; it should be "stopgap-plan"$/],
    [
      '{"format":"stopgap-plan","version":7}',
      /^version is 7, written by a newer Stopgap; it should be .* update Stopgap/,
    ],
    ['{"format":"stopgap-plan","version":1}', / \(and \d+ more like this\)$/],
  ])('says of %j what is there and what should be', (text, words) => expect(whyNotPlan(text)).toMatch(words))
})

it('allows pages nothing but their own files', () => {
  expect(contentSecurityPolicy).toMatch(/^default-src 'none'; /)
  expect(contentSecurityPolicy).not.toMatch(/unsafe|\*|https?:/)
})
