import { describe, expect, it } from 'vitest'
import { momentWords, readingRows, spokenMoment } from '../../../renderer/charts/terrain/reading.ts'
import { histogramSentence, traceSentence } from '../../../renderer/charts/terrain/sentences.ts'
import { shownShare } from '../../../renderer/charts/terrain/shown-share.ts'
import { type SweepView, sweepGeometry } from '../../../renderer/charts/terrain/sweep-geometry.ts'
import { sweepSentence } from '../../../renderer/charts/terrain/sweep-words.ts'
import { timeAfterKey } from '../../../renderer/charts/terrain/TimeSlider.tsx'
import { terrainScene } from '../../../renderer/charts/terrain/terrain-scene.ts'
import { describeTerrain } from '../../../renderer/panels/terrain/describe.ts'
import { figureRows, spokenFigures } from '../../../renderer/panels/terrain/figures.ts'
import { noRideWords, standsWords } from '../../../renderer/panels/terrain/outcome-words.ts'
import { sampleAxle, withCorner } from '../charts/sample-axles.ts'
import { measure, rode, terrains } from './rode.ts'

const gentle = rode('As found', sampleAxle, { ...terrains.landing, drop: 0.1 })
const hard = rode('Hard', sampleAxle, { ...terrains.landing, drop: 3 })
const bare = rode('Bare', withCorner({ stop: null }), terrains.ledge)

describe('the table', () => {
  const cells = (rows: ReturnType<typeof figureRows>, name: string) => rows.find(row => row.name === name)?.cells

  it('says what happened in plain words, and marks what hangs on steel', () => {
    const rows = figureRows(
      [gentle, hard].map(({ ride }, i) => ({ ride, stop: true, limit: i === 0 ? { takes: 0.51, fails: 0.52 } : null })),
      'inch',
    )
    expect(cells(rows, 'Highest drop it takes')).toEqual([{ text: '20 in', about: false }, null])
    expect(cells(rows, 'Bottoms')?.[0]).toEqual({ text: 'never', about: false })
    expect(cells(rows, 'Wheel comes up to')?.[1]).toEqual({ text: 'full bump', about: false })
    expect(cells(rows, 'Hardest chassis jolt')?.map(cell => cell?.about)).toEqual([false, true])
  })

  it('says what is known of a limit that was not reached', () => {
    const said = (takes: number | null, fails: number | null) =>
      cells(figureRows([{ ride: null, stop: true, limit: { takes, fails } }], 'metric'), 'Highest drop it takes')
    expect(said(1, null)).toEqual([{ text: 'more than 1,000 mm', about: false }])
    expect(said(null, 0.05)).toEqual([{ text: 'less than 50 mm', about: false }])
  })

  it('counts hits a minute only where a ride goes on long enough', () => {
    const ride = { ...gentle.ride!, hits: 8, duration: 10 }
    const rows = (duration: number) =>
      cells(figureRows([{ ride: { ...ride, duration }, stop: true, limit: null }], 'inch'), 'Hits on the stop')
    expect([rows(10), rows(3)]).toEqual([[{ text: '8, 48/min', about: false }], [{ text: '8', about: false }]])
  })

  it('is said in one breath', () => {
    const rows = figureRows([{ ride: bare.ride, stop: false, limit: null }], 'inch')
    expect(spokenFigures('Ledge', ['Bare'], rows)).toMatch(
      /^Ledge\. Bare: bottoms (never|once|\d+ times), wheel comes up to .+, hardest chassis jolt .+ g\.$/,
    )
  })

  it('says nothing of a stop where there is none', () => {
    const names = figureRows([{ ride: bare.ride, stop: false, limit: null }], 'inch').map(({ name }) => name)
    expect(names.filter(name => name.includes('stop'))).toEqual([])
  })
})

describe('a moment', () => {
  const at = (wheel: number, stopForce: number, inAir: boolean) =>
    momentWords({ time: 0, wheel, stopForce, suspensionForce: 0, inAir }, gentle)

  it('is told by what holds the car up', () => {
    const { bump, droop } = gentle.model
    expect([at(0, 0, false), at(0.2, 500, false), at(bump, 500, false), at(droop, 0, true), at(0.2, 9, true)]).toEqual([
      'on its springs',
      'on the stop',
      'at full bump',
      'at full droop, off the ground',
      'on the stop, off the ground',
    ])
  })

  it('is spoken with its time, and read as numbers of both setups', () => {
    const view = { shown: gentle, other: hard, system: 'inch' as const }
    expect(spokenMoment(view, 0)).toBe('0.00 seconds: wheel 9 1/4 inches below ride height, at full droop')
    const rows = readingRows(view, 3)
    expect(rows.map(({ name, other }) => [name, other !== null])).toEqual([
      ['wheel', true],
      ['force', true],
      ['stop', true],
    ])
    expect(readingRows({ ...view, shown: bare, other: null }, 1).map(({ name }) => name)).toEqual(['wheel', 'force'])
    expect(readingRows({ ...view, shown: { ...gentle, ride: null } }, 1)).toEqual([])
  })

  it('moves with the keys, and stays in the ride', () => {
    expect(['ArrowRight', 'ArrowLeft', 'PageUp', 'Home', 'End', 'x'].map(key => timeAfterKey(key, 1, 3))).toEqual([
      1.02,
      0.98,
      1.5,
      0,
      3,
      null,
    ])
    expect([timeAfterKey('PageDown', 0.2, 3), timeAfterKey('ArrowUp', 3, 3)]).toEqual([0, 3])
  })
})

describe('sentences', () => {
  const scene = terrainScene({ shown: gentle, other: hard, system: 'inch' }, { from: 0, to: 3 }, 1172, 470, measure)

  it('say what the charts show', () => {
    const { share, hits } = gentle.ride!
    expect(traceSentence(scene, 'Landing')).toContain(
      `${shownShare(share.onStop)} of the time on the stop, ${hits} ${hits === 1 ? 'hit' : 'hits'}, never bottoms.`,
    )
    expect(traceSentence(scene, 'Landing')).toContain('Hard: from')
    expect(histogramSentence(scene)).toContain(`As found: ${shownShare(share.droop)} below ride height`)
  })

  it('never round a little down to nothing', () => {
    expect([0, 0.001, 0.004, 0.006, 1].map(shownShare)).toEqual(['0 %', 'under 1 %', 'under 1 %', '1 %', '100 %'])
  })
})

describe('a sweep drawn', () => {
  const points = [2, 4, 6, 8].map(value => ({
    value,
    onStop: value / 20,
    wheelMax: value / 40,
    bottoms: value > 6 ? 2 : 0,
  }))
  const view: SweepView = {
    kind: 'highest wheel',
    by: 'speed',
    present: 4,
    far: 8,
    shown: points,
    other: points.slice(0, 2),
    travel: { bump: 0.2, droop: -0.2, engagement: 0.1, coiloverEnd: 0.1 },
    system: 'inch',
  }

  it('is made of numbers inside its frame, at any size, with or without points', () => {
    for (const kind of ['on the stop', 'highest wheel'] as const)
      for (const shown of [points, []])
        for (const [w, h] of [
          [270, 180],
          [1000, 400],
          [1, 1],
        ] as const) {
          const drawn = sweepGeometry({ ...view, kind, shown }, w, h, measure)
          const numbers = [...drawn.shown, ...drawn.other].flatMap(({ x, y }) => [x, y])
          expect([...numbers, drawn.presentX, ...drawn.xTicks, ...drawn.yTicks].every(Number.isFinite)).toBe(true)
          expect(drawn.shown.every(({ x, y }) => x <= drawn.right && y >= drawn.top - 1 && y <= drawn.bottom + 1)).toBe(
            true,
          )
        }
  })

  it('marks where it bottoms, and the present speed', () => {
    const drawn = sweepGeometry(view, 300, 180, measure)
    expect(drawn.shown.map(({ bottoms }) => bottoms)).toEqual([false, false, false, true])
    expect(drawn.presentX).toBeCloseTo(drawn.shown[1]!.x, 9)
    expect(drawn.labels.map(({ id }) => id)).toEqual(expect.arrayContaining(['present', 'shown', 'bump', 'engagement']))
  })

  it('is told in a sentence', () => {
    expect(sweepSentence(view, ['As found', 'Proposed'], 'speed')).toBe(
      'Highest wheel against speed. As found: +1 15/16 in at 4 mph, +3 15/16 in at the present 9 mph, +7 7/8 in, bottoming at 18 mph. Proposed: +1 15/16 in at 4 mph, +3 15/16 in at the present 9 mph, +3 15/16 in at 9 mph.',
    )
    expect(sweepSentence({ ...view, shown: [], other: null }, ['As found'], 'speed')).toBe(
      'Highest wheel against speed. As found: not worked out yet.',
    )
  })
})

describe('outcomes in words', () => {
  it('say why a setup has no ride, and what to look at', () => {
    expect(noRideWords('As found', { ok: false, reason: 'step too short', time: 1.26 })).toMatch(
      /^As found could be followed for 1.3 s only/,
    )
    expect(noRideWords('As found', { ok: false, reason: 'too many steps', time: 0 })).toMatch(/shakes faster/)
  })

  it('say of a car that has no rest on its springs that it stands on steel', () => {
    const soft = rode(
      'Soft',
      withCorner({
        springs: {
          ...sampleAxle.corner.springs,
          springs: [{ name: 'main', rate: 500, freeLength: 0.45, solidLength: 0.17 }],
        },
        stop: null,
      }),
      terrains.ledge,
    )
    expect(standsWords(soft, false, 'inch')).toMatch(/^Soft has no rest on its springs: it stands at full bump/)
    const light = rode('Light', withCorner({ cornerMass: 110, unsprungMass: 97 }), terrains.ledge)
    expect(standsWords(light, false, 'inch')).toMatch(/full droop/)
    expect([standsWords(gentle, false, 'inch') === null, standsWords(bare, false, 'inch')]).toEqual([false, null])
    expect(standsWords(gentle, true, 'inch')).toBeNull()
  })

  it('describe a terrain in the units people drive in', () => {
    expect(Object.values(terrains).map(terrain => describeTerrain(terrain, 'inch'))).toEqual([
      '19.7 ft apart, 9 13/16 in high, 20 mph, 4 in a row',
      'a drop of 19 11/16 in',
      '5 7/8 in high, 39 3/8 in long, 18 mph',
      'class E, 34 mph, 20 s',
    ])
    expect(describeTerrain(terrains.whoops, 'metric')).toBe('6 m apart, 250 mm high, 32 km/h, 4 in a row')
  })
})
