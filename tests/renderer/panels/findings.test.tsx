// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { Plan } from '../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { countedFindings } from '../../../renderer/panels/findings/counted.ts'
import { Findings } from '../../../renderer/panels/findings/Findings.tsx'
import { Measurements } from '../../../renderer/panels/measurements/Measurements.tsx'
import { resultsShown } from '../../../renderer/state/selectors.ts'
import { focusFinding } from '../../../renderer/state/view.ts'
import { fieldsHere, type Shown, show } from '../a-page.tsx'
import { aPlan } from '../a-plan.ts'

await fieldsHere()

/** A stop whose body is rated far below what it sees, and a gap that meets it early. */
const troubled = (): Plan =>
  aPlan(plan => {
    const { stop } = plan.setups[0]!.axles[1]!.corner
    if (stop?.kind !== 'hydraulic') throw new Error('The plan has lost its hydraulic stop.')
    stop.gap = 0.5 * INCH
    stop.body = { bore: 2 * INCH, ratedPressure: 300 * PSI }
    plan.targets = { coiloverShare: 0.6 }
  })

let shown: Shown
beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', (work: FrameRequestCallback) => {
    queueMicrotask(() => work(0))
    return 0
  })
  shown = show(
    <>
      <Measurements />
      <Findings />
    </>,
    troubled(),
  )
})
afterEach(() => {
  shown.close()
  vi.unstubAllGlobals()
})

const lines = () => [...shown.page.querySelectorAll<HTMLElement>('.find li')]

describe('the findings', () => {
  test('are the axle’s, each with its word, its number, its sentence and its remedy', () => {
    const { findings } = resultsShown(shown.files.store.read()).budget
    expect(findings.length).toBeGreaterThan(1)
    expect(findings[0]!.severity).toBe('danger')
    const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ')
    const words = { danger: 'Danger', caution: 'Caution', note: 'Note' }
    expect(lines().map(line => plain(line.textContent))).toEqual(
      findings.map(({ severity, message, remedy }, i) =>
        expect.stringContaining(`${i + 1}${words[severity]}${message}${remedy}`),
      ),
    )
    expect(shown.find('.find h2 span').textContent).toBe(countedFindings(findings))
  })

  test('pointed at anywhere, outline the line and the field it rests on', () => {
    const [first] = resultsShown(shown.files.store.read()).budget.findings
    act(() => focusFinding(shown.files.store, first!.id))
    expect(lines()[0]!.classList.contains('on')).toBe(true)
    expect([...shown.page.querySelectorAll<HTMLElement>('.rests')].map(input => input.dataset.field)).toEqual([
      first!.field,
    ])
  })

  test('reached by keyboard point, and left stop pointing', () => {
    const button = lines()[0]!.querySelector('button')!
    act(() => button.focus())
    expect(shown.files.store.read().view.finding).toBe(resultsShown(shown.files.store.read()).budget.findings[0]!.id)
    act(() => button.blur())
    expect(shown.files.store.read().view.finding).toBeNull()
  })

  test('lead to the field, opening the group it is in', async () => {
    const { findings } = resultsShown(shown.files.store.read()).budget
    const early = findings.findIndex(({ field }) => field === 'corner.stop.gap')
    expect(early).toBeGreaterThanOrEqual(0)
    act(() => shown.find<HTMLButtonElement>('#group-ride-height h3 button').click())
    expect(shown.page.querySelector('[data-field="corner.stop.gap"]')).toBeNull()
    await act(async () => lines()[early]!.querySelector('button')!.click())
    expect((document.activeElement as HTMLElement).dataset.field).toBe('corner.stop.gap')
  })
})

test('counts are words with their number, and silence is a sentence', () => {
  expect(
    countedFindings([{ severity: 'note' }, { severity: 'caution' }, { severity: 'danger' }, { severity: 'caution' }]),
  ).toBe('1 danger, 2 cautions, 1 note')
  expect(countedFindings([])).toBe('nothing stands out on this axle')
})
