// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Plan } from '../../../core/plan/schema.ts'
import { ledgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import { chanceLines, noEndText, reasons } from '../../../core/tolerance/saying.ts'
import { setupSureness } from '../../../core/tolerance/steps.ts'
import { SurePage } from '../../../renderer/pages/SurePage.tsx'
import { Findings } from '../../../renderer/panels/findings/Findings.tsx'
import { undo } from '../../../renderer/state/edit.ts'
import type { Sure, SureView } from '../../../renderer/state/sure.ts'
import { SureContext } from '../../../renderer/sure-context.ts'
import { seed } from '../../seeds/seed.ts'
import { press, put, type Shown, show } from '../a-page.tsx'

/** The rear axle of a car whose stop has a gas volume nobody measured. */
const plan: Plan = seed('on-its-stops.stopgap')
const [setup] = plan.setups
const sureness = setupSureness(plan, setup!, { axle: 'rear', trials: 4000 }).axles[0]!
const ledger = ledgerSureness(plan, setup!, undefined, { axle: 'rear', trials: 250 })[0]!

const known: SureView = { sureness, ledger, share: null, stopped: false, fault: null }
const told: Pick<Sure, 'read' | 'subscribe'> = { read: () => known, subscribe: () => () => false }

let shown: Shown
beforeEach(() => {
  const part = (
    <SureContext value={told as Sure}>
      <SurePage />
      <Findings />
    </SureContext>
  )
  shown = show(part, plan)
  const { store } = shown.files
  act(() => store.write({ ...store.read(), view: { ...store.read().view, axle: 'rear' } }))
})
afterEach(() => shown.close())

const plain = (found: Iterable<Element>) => [...found].map(each => each.textContent!.replaceAll('\u00a0', ' '))
const fields = () => [...shown.page.querySelectorAll<HTMLInputElement>('.sure-tolerances input')]
const field = (name: RegExp): HTMLInputElement =>
  fields().find(each => name.test(each.getAttribute('aria-label') ?? ''))!
const values = () => shown.files.store.read().plan.tolerances?.values

test('every figure has its band; one without an end says so, is drawn with an arrow, and it is told why', () => {
  const rows = [...shown.page.querySelectorAll('.sure-figures tbody tr')]
  expect(rows).toHaveLength(sureness.figures.length + ledger.bands.length)
  const endless = rows.filter(row => row.textContent!.includes('no end'))
  expect(endless).toHaveLength(sureness.figures.filter(({ high }) => high === Infinity).length)
  expect(endless.length).toBeGreaterThan(2)
  for (const row of rows) {
    const drawn = [...row.querySelectorAll('path')].map(path => path.getAttribute('d')).join(' ')
    expect(drawn).not.toMatch(/NaN|Infinity/)
    expect(drawn.includes('l5 4l-5 4')).toBe(endless.includes(row))
    expect(row.textContent).not.toMatch(/NaN|Infinity|∞/)
  }
  expect(plain(shown.page.querySelectorAll('.sure-why')).join('\n')).toContain(noEndText(sureness)!)
})

test('where slopes say otherwise it says why; every finding of axle and loads has its chance; and what to repeat first', () => {
  const said = plain(shown.page.querySelectorAll('.sure-why'))
  const why = reasons(sureness.figures)
  expect(why.length).toBeGreaterThan(0)
  for (const reason of why) expect(said).toContain(`* ${reason}`)
  expect(plain(shown.page.querySelectorAll('.sure-chances li'))).toEqual(chanceLines(sureness, ledger))
  expect(ledger.findings.map(({ id }) => id)).toContain('loads-reach-full-bump')
  const ranked = plain(shown.page.querySelectorAll('.sure-ranking li'))
  expect(ranked.some(line => /^stop gas volume, assumed: \d+ % of the doubt; measuring it leaves ±/.test(line))).toBe(
    true,
  )
})

test('findings carry their chance where it is not certain, those of the loads too', () => {
  const uncertain = [...sureness.findings, ...ledger.findings].filter(({ chance }) => chance < 0.995)
  const lines = [...shown.page.querySelectorAll<HTMLElement>('.find li[data-finding]')]
  expect(lines.length).toBeGreaterThan(0)
  for (const line of lines) {
    const has = uncertain.some(({ id }) => id === line.dataset.finding)
    expect(/Chance /.test(line.textContent!)).toBe(has)
  }
})

test('a tolerance is typed over, refused in its own units, emptied back to what is usual, and undone', () => {
  const gap = field(/^gap, how far off either way$/)
  expect(gap.value).toBe('1/16')
  put(gap, '1/8')
  press(gap, 'Enter')
  expect(values()).toEqual({ 'rear.corner.stop.gap': 0.003175 })
  expect(gap.closest('.row')!.textContent).toContain('yours')
  for (const wrong of ['a hand', '-1', '1e12']) {
    put(gap, wrong)
    press(gap, 'Enter')
    expect(shown.find('.sure-tolerances .wrong').textContent).toContain('Still using 1/8 in.')
    expect(gap.getAttribute('aria-describedby')).toBe(shown.find('.sure-tolerances .wrong').id)
    expect(values()).toEqual({ 'rear.corner.stop.gap': 0.003175 })
  }
  press(gap, 'Escape')
  expect([gap.value, shown.page.querySelector('.sure-tolerances .wrong')]).toEqual(['1/8', null])
  press(gap, 'ArrowUp')
  expect(gap.value).toBe('3/16')
  put(gap, '')
  press(gap, 'Enter')
  expect([gap.value, values()]).toEqual(['1/16', undefined])
  act(() => void undo(shown.files.store))
  expect(gap.value).toBe('3/16')
})

test('the car and its loads have theirs too, each field with a name of its own', () => {
  const names = fields().map(each => each.getAttribute('aria-label')!)
  expect(new Set(names).size).toBe(names.length)
  for (const name of ['height of the center of gravity', 'wheelbase', 'travel asked in “Ruts and rocks”'])
    expect(names).toContain(`${name}, how far off either way`)
})
