import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest'
import { seedFolder } from '../../seeds/seed.ts'
import { ran } from './terminal.ts'

const folder = mkdtempSync(path.join(tmpdir(), 'stopgap-sheet-'))
afterAll(() => rmSync(folder, { recursive: true }))
afterEach(() => vi.unstubAllEnvs())

const demo = path.join(seedFolder, 'before-and-after.stopgap')
const sheet = (...args: string[]) => ran(folder, 'sheet', demo, ...args)
const read = (name: string): string => readFileSync(path.join(folder, name), 'utf8')

describe('sheet PLAN -o FILE', () => {
  it('makes both sheets as one page of HTML, on the paper asked for', async () => {
    expect(await sheet('-o', 'both.html', '--paper', 'a4')).toEqual({
      code: 0,
      out: 'Both sheets are in both.html.\n',
      err: '',
    })
    expect(read('both.html').match(/class="sheet (customer|shop) a4"/g)).toHaveLength(2)
    expect(read('both.html')).toContain('@page{size:210mm 297mm')
  })

  it('makes one sheet as a drawing', async () => {
    expect((await sheet('-o', 'shop.svg', '--sheet', 'shop')).code).toBe(0)
    expect(read('shop.svg')).toMatch(/^<svg .*width="215.9mm" height="279.4mm"/)
  })

  it('says what to do where there is no browser to print with, and writes nothing', async () => {
    vi.stubEnv('STOPGAP_BROWSER', path.join(folder, 'no-browser'))
    const { code, err } = await sheet('-o', 'a.pdf')
    expect([code, err]).toEqual([2, expect.stringMatching(/Install Chrome.*or ask for \.html/s)])
    expect(readdirSync(folder)).not.toContain('a.pdf')
  })

  it.each([
    [['-o', 'a.txt'], /has to end in \.pdf, \.html or \.svg/],
    [['-o', 'a.html', '--paper', 'a3'], /no paper “a3”/],
    [['-o', 'a.html', '--sheet', 'owner'], /no sheet “owner”/],
    [['-o', 'a.html', '--axle', 'middle'], /no axle “middle”/],
    [['-o', 'a.html', '--after', 'gone'], /no setup “gone”/],
    [['-o', 'nowhere/a.html'], /nowhere\/a\.html could not be made/],
  ])('refuses %j in words', async (args, words) => {
    expect(await sheet(...args)).toEqual({ code: 2, out: '', err: expect.stringMatching(words) })
  })
})
