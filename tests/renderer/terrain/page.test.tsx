// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { TerrainPage } from '../../../renderer/pages/TerrainPage.tsx'
import { RunsContext } from '../../../renderer/panels/terrain/runs-context.ts'
import { put as putMeasure } from '../../../renderer/state/edit.ts'
import { TerrainRuns } from '../../../renderer/state/terrain-runs.ts'
import { showSetup } from '../../../renderer/state/view.ts'
import { press, put, type Shown, show } from '../a-page.tsx'
import { aPlan } from '../a-plan.ts'
import { terrains } from './rode.ts'
import { someRider } from './some-runs.ts'

const plan = (...given: readonly (typeof terrains)[keyof typeof terrains][]) =>
  aPlan(made => {
    made.terrains = [...given]
    const proposed = made.setups[1]!.axles[1]!.corner
    if (proposed.stop !== null) proposed.stop.gap += 0.03
  })

let page: Shown | null = null

function open(made = plan(terrains.ledge, terrains.landing)) {
  const riding = someRider()
  page = show(
    <RunsContext value={new TerrainRuns(riding.rider)}>
      <TerrainPage />
    </RunsContext>,
    made,
  )
  const finish = (): void => act(() => riding.answerAll())
  const rest = (ms: number): void => act(() => void vi.advanceTimersByTime(ms))
  const click = (name: string): void => {
    const button = [...page!.page.querySelectorAll('button')].find(each => each.textContent?.trim() === name)
    if (button === undefined) throw new Error(`No button is named “${name}”.`)
    act(() => button.click())
  }
  const table = () =>
    [...page!.page.querySelectorAll('.ride-figures tr')].map(row => [...row.children].map(cell => cell.textContent))
  return { ...riding, ...page, finish, rest, click, table }
}

describe('the terrain page', () => {
  beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }))
  afterEach(() => {
    page?.close()
    page = null
    vi.useRealTimers()
  })

  it('says what to add where the plan has no terrain, and rides it once it is added', () => {
    const { page: shown, click, waiting, files } = open(plan())
    expect(shown.textContent).toContain('No terrain yet')
    click('Add whoops')
    expect(files.store.read().plan.terrains.map(({ kind }) => kind)).toEqual(['whoops'])
    expect(waiting().map(({ ask }) => ask.terrain.kind)).toEqual(['whoops', 'whoops'])
  })

  it('takes a road that is dropped on it, and leaves what is no road to others', async () => {
    const { page: shown, waiting, finish } = open()
    finish()
    const drop = (file: File): Event => {
      const event = new Event('drop', { bubbles: true, cancelable: true })
      Object.defineProperty(event, 'dataTransfer', { value: { files: [file], types: ['Files'] } })
      act(() => void shown.querySelector('main')!.dispatchEvent(event))
      return event
    }
    expect(drop(new File(['{}'], 'truck.stopgap')).defaultPrevented).toBe(false)
    expect(waiting()).toEqual([])
    const road = 'distance (m),height (m)\n0,0\n5,0.2\n10,0\n'
    expect(drop(new File([road], 'gully.CSV')).defaultPrevented).toBe(true)
    for (let i = 0; i < 200 && !shown.textContent?.includes('gully'); i += 1)
      await act(() => new Promise<void>(resolve => setImmediate(resolve)))
    expect(waiting().map(({ ask }) => ask.terrain.kind)).toEqual(['measured', 'measured'])
  })

  it('drives a road from a file, names it, and keeps it when the next file is no road', async () => {
    const { find, waiting, finish, table, page: shown } = open()
    finish()
    const give = async (text: string, name: string) => {
      const input = find<HTMLInputElement>('input[type="file"]')
      Object.defineProperty(input, 'files', { value: [new File([text], name)], configurable: true })
      act(() => void input.dispatchEvent(new Event('change', { bubbles: true })))
      for (let i = 0; i < 200 && !shown.textContent?.includes(name); i += 1)
        await act(() => new Promise<void>(resolve => setImmediate(resolve)))
      expect(shown.textContent).toContain(name)
    }
    await give('distance (m),height (m)\n0,0\n5,0.2\n10,0\n', 'creek.csv')
    expect(waiting().map(({ ask }) => ask.terrain.kind)).toEqual(['measured', 'measured'])
    finish()
    expect(table().length).toBeGreaterThan(3)
    expect(shown.querySelector('.terrain-about')?.textContent).toContain('32.8 ft long')
    await give('distance (m),height (m)\n0,0\n', 'short.csv')
    expect(shown.querySelector('.road-trouble')?.textContent).toBe(
      '“short.csv” cannot be used as a road: it has 1 place; a road needs two or more. Close',
    )
    expect(find<HTMLInputElement>('[aria-label="Speed on this road"]').value).toBe('25.0 mph')
  })

  it('drives an own road as fast as is typed; nothing, too fast or no number is told and changes nothing', async () => {
    const { page: shown, find, waiting, finish } = open()
    finish()
    const input = find<HTMLInputElement>('input[type="file"]')
    const road = new File(['distance (m),height (m)\n0,0\n5,0.2\n10,0\n'], 'creek.csv')
    Object.defineProperty(input, 'files', { value: [road], configurable: true })
    act(() => void input.dispatchEvent(new Event('change', { bubbles: true })))
    for (let i = 0; i < 200 && shown.querySelector('.road-speed') === null; i += 1)
      await act(() => new Promise<void>(resolve => setImmediate(resolve)))
    finish()
    const speed = find<HTMLInputElement>('[aria-label="Speed on this road"]')
    const said = (): string | null => shown.querySelector('.terrain-about [role="alert"]')?.textContent ?? null
    for (const [typed, told] of [
      ['', /^Not changed: Nothing entered\. Enter /],
      ['0', /^Not changed: a road is driven faster than nothing and no faster than 447\.4 mph$/],
      ['900 mph', /^Not changed: a road is driven faster than nothing and no faster than 447\.4 mph$/],
      ['fast', /^Not changed: /],
    ] as const) {
      put(speed, typed)
      press(speed, 'Enter')
      expect(said(), typed).toMatch(told)
      expect([speed.value, speed.getAttribute('aria-invalid'), waiting()], typed).toEqual([typed, 'true', []])
      press(speed, 'Escape')
      expect([speed.value, said()], typed).toEqual(['25.0 mph', null])
    }
    put(speed, '10')
    press(speed, 'Enter')
    expect([speed.value, said()]).toEqual(['10.0 mph', null])
    expect(waiting().map(({ ask }) => 'speed' in ask.terrain && ask.terrain.speed)).toEqual([4.4704, 4.4704])
  })

  it('tells before and after side by side, the one shown marked', () => {
    const { table, finish, page: shown } = open()
    expect(table()[1]).toEqual(['Time on the stop', '', ''])
    finish()
    expect(table()[0]).toEqual(['What it comes to', 'As found', 'Proposed'])
    expect(table().every(row => row.every(cell => cell !== ''))).toBe(true)
    const marked = () => [...shown.querySelectorAll('thead .shown b')].map(({ textContent }) => textContent)
    expect(marked()).toEqual(['As found'])
    act(() => showSetup(page!.files.store, 'proposed'))
    finish()
    expect([table()[0], marked()]).toEqual([['What it comes to', 'As found', 'Proposed'], ['Proposed']])
  })

  it('rides another terrain when it is chosen', () => {
    const { waiting, finish, find, table, rest } = open()
    finish()
    act(() => find<HTMLInputElement>('.terrain-strip label:nth-of-type(2) input').click())
    expect(waiting().map(({ ask }) => ask.terrain.id)).toEqual(['landing', 'landing'])
    finish()
    rest(250)
    finish()
    expect(table()[1]![0]).toBe('Highest drop it takes')
    expect(table()[1]![1]).toMatch(/in$/)
  })

  it('rides anew after an edit, and only what was edited', () => {
    const { files, finish, waiting, rest } = open()
    finish()
    act(() => void putMeasure(files.store, 'gap', 'corner.stop.gap', 0.02))
    expect(waiting().map(({ ask }) => ask.driven)).toMatchObject([{ corner: { stop: { gap: 0.02 } } }])
    rest(0)
    finish()
  })

  it('shows progress and Stop for long work, and goes on when asked to', () => {
    const { page: shown, rest, click, finish, waiting } = open()
    expect(shown.querySelector('.ride-work')).toBeNull()
    rest(300)
    expect(shown.querySelector('progress')?.getAttribute('aria-label')).toBe('Rides worked out')
    click('Stop')
    expect([shown.querySelector('.ride-work')?.textContent, waiting().length]).toEqual(['Stopped. Go on', 0])
    click('Go on')
    finish()
    expect(shown.querySelector('.ride-work')).toBeNull()
  })

  it('says why it cannot be worked out, and tries again', () => {
    const { page: shown, waiting, fail, click, finish, table } = open()
    act(() => fail(waiting()[0]!, 'its helper program did not start'))
    const said = shown.querySelector('[role="alert"]')?.textContent
    expect(said).toContain('the plan is as it was')
    expect(said).toContain('Show log')
    expect(said).not.toContain('its helper program did not start')
    click('Try again')
    finish()
    expect(shown.querySelector('[role="alert"]')).toBeNull()
    expect(table()[1]![1]).toMatch(/%$/)
  })

  it('plays when told to, and not before', () => {
    const { finish, click, page: shown, find } = open()
    const play = find<HTMLButtonElement>('.terrain-play .chief')
    expect([play.textContent, play.disabled]).toEqual(['Play', true])
    finish()
    expect([play.textContent, play.disabled]).toEqual(['Play', false])
    click('Play')
    expect(shown.querySelector('.terrain-play .chief')?.textContent).toBe('Pause')
    click('Pause')
  })

  it('marks assumed damping, with the way to the curves', () => {
    const { finish, page: shown } = open(
      aPlan(made => {
        made.terrains = [terrains.ledge]
        for (const { axles } of made.setups)
          for (const { corner } of axles) Object.assign(corner.shock, { compression: [], rebound: [] })
      }),
    )
    finish()
    expect(shown.textContent).toContain('Damping is assumed: the plan holds no damper curves.')
  })

  it('says of a car without rest on its springs that it stands on steel', () => {
    const { finish, page: shown } = open(
      aPlan(made => {
        made.terrains = [terrains.ledge]
        for (const spring of made.setups[0]!.axles[1]!.corner.springs.springs) spring.rate = 500
        made.setups[0]!.axles[1]!.corner.stop = null
      }),
    )
    finish()
    expect(shown.querySelector('.ride-caution')?.textContent).toMatch(/^Caution As found has no rest on its springs/)
  })

  it('reads its figures out once the hands rest', () => {
    const { finish, page: shown, rest } = open()
    finish()
    const live = () => shown.querySelector('[aria-live="polite"]')?.textContent
    expect(live()).toBe('')
    rest(1000)
    expect(live()).toMatch(/^Ledge\. As found: time on the stop/)
  })

  it('drives the whole car where it is told to, and says how far its nose went', () => {
    const { finish, find, waiting, table, files } = open()
    finish()
    const names = () => table().map(([name]) => name)
    expect(names()).not.toContain('Nose down, and up')
    act(() => find<HTMLInputElement>('.whole-car input').click())
    expect(files.store.read().view.wholeCar).toBe(true)
    expect(find<HTMLInputElement>('.whole-car input').checked).toBe(true)
    expect(waiting().map(({ ask }) => ask.driven)).toMatchObject([
      { kind: 'car', axle: 'rear' },
      { kind: 'car', axle: 'rear' },
    ])
    finish()
    expect(table().find(([name]) => name === 'Nose down, and up')?.[1]).toMatch(/^[\d.]+°, [\d.]+°$/)
  })

  it('calls its rides off when it is left', () => {
    const { waiting } = open()
    expect(waiting().length).toBe(2)
    page?.close()
    page = null
    expect(waiting().length).toBe(0)
  })
})
