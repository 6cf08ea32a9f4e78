// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it } from 'vitest'
import type { Plan } from '../../../core/plan/schema.ts'
import { HIGHEST_CUTOFF } from '../../../core/runs/low-pass.ts'
import { LogsPage } from '../../../renderer/pages/LogsPage.tsx'
import { RecordingsContext } from '../../../renderer/panels/runs/recordings-context.ts'
import { bringRecording } from '../../../renderer/state/brought-recording.ts'
import { showAxle } from '../../../renderer/state/view.ts'
import { put, type Shown, show } from '../a-page.tsx'
import { aPlan } from '../a-plan.ts'
import { terrains } from '../terrain/rode.ts'
import { rearOf, recordedRide } from './recorded-ride.ts'
import { CALIBRATION, someRecordings } from './some-recordings.ts'

const plan = aPlan(made => {
  made.terrains = [terrains.whoops]
})
const { axle, terrain } = rearOf(plan)
const { text } = recordedRide(axle, terrain)

let page: Shown | null = null
afterEach(() => {
  page?.close()
  page = null
})

function open(given: Plan = plan) {
  const some = someRecordings()
  page = show(
    <RecordingsContext value={some.recordings}>
      <LogsPage />
    </RecordingsContext>,
    given,
  )
  const shown = page
  const said = (): string => shown.page.textContent?.replace(/\s+/g, ' ') ?? ''
  const until = async (true_: () => boolean): Promise<void> => {
    for (let i = 0; i < 300 && !true_(); i += 1) await act(() => new Promise<void>(resolve => setTimeout(resolve, 5)))
    expect(true_(), said()).toBe(true)
  }
  const click = (name: string): void => {
    const button = [...shown.page.querySelectorAll('button')].find(each => each.textContent?.trim() === name)
    if (button === undefined) throw new Error(`No button is named “${name}”. ${said()}`)
    act(() => button.click())
  }
  const bring = (content = text, name = 'pit.csv') =>
    act(() => bringRecording(shown.files.store, new File([content], name)))
  const choose = (label: string, value: string): void => {
    const select = shown.find<HTMLSelectElement>(`select[aria-label="${label}"]`)
    act(() => {
      select.value = value
      select.dispatchEvent(new Event('change', { bubbles: true }))
    })
  }
  const run = () => some.recordings.find(some.recordings.read().shown!)!
  const row = (name: string): string[] =>
    [...shown.page.querySelectorAll('tr')]
      .filter(each => each.querySelector('th')?.textContent?.startsWith(name))
      .flatMap(each => [...each.querySelectorAll('td')].map(cell => cell.textContent ?? ''))
  /** As far as the run lies over the plan. */
  const laid = async (): Promise<void> => {
    bring()
    await until(() => said().includes('Which wheel is which column') && run().work === null)
    act(() =>
      some.recordings.setChannels(
        run().id,
        run().channels.map(channel => ({ ...channel, calibration: CALIBRATION })),
      ),
    )
    click('Read the run')
    await until(() => row('Time on the stop')[0]?.endsWith('%') === true)
  }
  return { ...some, ...shown, said, until, click, bring, choose, run, row, laid }
}

describe('the page of recorded runs', () => {
  it('says what to bring where there is nothing', () => {
    const { said } = open()
    expect(said()).toContain('No recorded run yet')
    expect(said()).toContain('The file is only read.')
  })

  it('shows how a file is read, marks rows that are not taken, and reads it as it is put right', async () => {
    const lines = text.split('\r\n')
    lines.splice(10, 0, lines[9]!, 'torn')
    const { said, until, bring, find, run, page: shown, choose } = open()
    bring(lines.join('\r\n'))
    await until(() => said().includes('The first 60 rows'))
    expect(said()).toContain('2 of them not as they should be')
    expect([...shown.querySelectorAll('.preview .bad .why')].map(cell => cell.textContent)).toEqual([
      'not taken: the time of the row before',
      'not taken: another number of cells',
    ])
    choose('What battery is', 'front left')
    expect(run().channels.at(-1)).toMatchObject({ column: 3, axle: 'front', side: 'left' })
    const fields = [...shown.querySelectorAll<HTMLLabelElement>('.reading-row')]
    const parted = fields.find(label => label.textContent?.startsWith('Cells are parted by'))!.querySelector('select')!
    expect(parted.value).toBe(';')
    const head = fields.find(label => label.textContent?.startsWith('Lines before'))!.querySelector('input')!
    put(head, 'three')
    act(() => head.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true })))
    expect(said()).toContain('Not changed: a whole number, 0 to 250.')
    put(head, '4')
    act(() => head.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true })))
    await until(() => run().reading?.headerRows === 4)
    expect(find<HTMLButtonElement>('.read-now .chief').disabled).toBe(true)
  })

  it('takes two points of a sensor in volts, and says when they make no line', async () => {
    const { said, until, bring, choose, find, run } = open()
    bring()
    await until(() => said().includes('The first 60 rows'))
    choose('What rear left means', 'points')
    const type = (name: string, typed: string) =>
      put(find<HTMLInputElement>(`input[aria-label="rear left, ${name}"]`), typed)
    type('first reading', '2,5')
    type('first travel', '0')
    type('second reading', '2.5')
    type('second travel', '100 mm')
    const last = find<HTMLInputElement>('input[aria-label="rear left, second travel"]')
    const enter = () => act(() => last.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true })))
    enter()
    expect(said()).toContain('Not changed: two different readings at two different travels are needed.')
    type('second reading', '3.7')
    enter()
    expect(run().channels[0]!.calibration.scale).toBeCloseTo(CALIBRATION.scale, 12)
  })

  it('lays the run over the plan: shares, hits, time past each load, findings, what it cannot tell', async () => {
    const { laid, row, said, find, until } = open()
    await laid()
    expect(row('Hits on the stop')[0]).toMatch(/^\d+, \d+\/min$/)
    expect(row('Lasts')[0]).toMatch(/ s$/)
    await until(() => said().includes('Engagement in the data') && !said().includes('It is looked for.'))
    expect(said()).toContain('What it cannot tell')
    expect(find('[aria-label="Findings of the run"]').textContent).toMatch(/^Findings pit, left: /)
  })

  it('stands beside the other wheel, and another run is one more to choose', async () => {
    const { laid, row, choose, until, bring, said, run, find, recordings } = open()
    await laid()
    choose('Compared with', 'side 1')
    await until(() => (row('Wheel comes up to')[1] ?? '') !== '')
    expect(row('Wheel comes up to').length).toBe(2)
    const first = run().id
    bring(text, 'after.csv')
    await until(() => run().name === 'after' && run().found !== null && said().includes('Hits on the stop'))
    choose('Compared with', `run ${first}`)
    await until(() => (row('Time on the stop')[1] ?? '') !== '')
    expect(new Set(row('Time on the stop')).size).toBe(1)
    expect(find<HTMLSelectElement>('select[aria-label="Run"]').options.length).toBe(2)
    expect(recordings.read().runs.length).toBe(2)
  })

  it('sets zero and sign where moments are picked, and filters where a cutoff is entered', async () => {
    const { laid, click, run, said, until, find } = open()
    await laid()
    const cutoff = find<HTMLInputElement>('input[aria-label="Low-pass cutoff, Hz"]')
    put(cutoff, '400')
    act(() => cutoff.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true })))
    expect(said()).toContain(`no more than ${(500 * HIGHEST_CUTOFF).toPrecision(3)} for so many rows a second`)
    put(cutoff, '20')
    act(() => cutoff.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true })))
    expect(run().channels.map(({ lowPass }) => lowPass)).toEqual([20, 20])
    click('Ride height here')
    expect(run().channels[0]!.rideHeightAt).not.toBeNull()
    const [left, right] = run().channels
    expect(right!.rideHeightAt).toBe(left!.rideHeightAt)
    await until(() => said().includes('Zero where it stood.'))
  })

  it('says which axle a run has nothing of, and shows the other', async () => {
    const { laid, files, said, click, until, row } = open()
    await laid()
    act(() => showAxle(files.store, 'front'))
    expect(said()).toContain('This run has no channel of the front axle. It has rear left, rear right.')
    click('Show the rear axle')
    await until(() => row('Time on the stop').length > 0)
  })

  it('counts what a run asked of the wheel among the demands, undone as one step', async () => {
    const { laid, click, files } = open()
    await laid()
    click('Count it among the demands')
    expect(files.store.read().plan.loads.at(-1)).toMatchObject({ kind: 'terrain', name: 'pit' })
  })

  it('is kept beside a plan that is in a file, opened again with it, and missed without harm', async () => {
    const { laid, said, click, files, until, run, row, recordings } = open()
    await laid()
    expect(said()).toContain('save the plan first')
    let content = ''
    files.host.answer({
      keepRun: ({ base64 }) => {
        content = base64
        return { kind: 'kept', file: 'Test mule, pit.stopgap-run', digest: '0a'.repeat(32) }
      },
      openRun: ({ digest }) =>
        digest === '0a'.repeat(32)
          ? { kind: 'run', base64: content }
          : {
              kind: 'missing',
              reason: 'The run in “gone” could not be opened: it has been moved, renamed or deleted.',
            },
    })
    const token = 'A'.repeat(22)
    act(() => files.store.write({ ...files.store.read(), document: { ...files.store.read().document, token } }))
    click('Keep it beside the plan')
    await until(() => said().includes('Kept beside the plan.'))
    expect(files.store.read().plan.runs).toEqual([
      { id: 'run', name: 'pit', setup: run().driven, file: 'Test mule, pit.stopgap-run', digest: '0a'.repeat(32) },
    ])
    const figures = row('Hits on the stop')
    act(() => recordings.close(run().id))
    const kept = page!.find<HTMLSelectElement>('select[aria-label="Run"]')
    act(() => {
      kept.value = 'kept run'
      kept.dispatchEvent(new Event('change', { bubbles: true }))
    })
    await until(() => said().includes('Kept beside the plan.') && row('Hits on the stop').length > 0)
    expect(row('Hits on the stop')).toEqual(figures)
    act(() => recordings.close(run().id))
    act(() => {
      const state = files.store.read()
      const runs = state.plan.runs!.map(each => ({ ...each, digest: '0b'.repeat(32) }))
      files.store.write({ ...state, plan: { ...state.plan, runs } })
    })
    act(() => {
      kept.value = 'kept run'
      kept.dispatchEvent(new Event('change', { bubbles: true }))
    })
    await until(() => said().includes('moved, renamed or deleted'))
  })

  it('says why a file is no table', async () => {
    const { bring, until, said } = open()
    bring('Dear driver,\nthank you for the day.\n', 'letter.txt')
    await until(() => said().includes('No row can be read in this way'))
    expect(said()).toContain('Look here')
  })
})
