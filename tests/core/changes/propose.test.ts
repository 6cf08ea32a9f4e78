import { describe, expect, it } from 'vitest'
import { evaluator, type Question, type Worked } from '../../../core/changes/evaluate.ts'
import { gathered, MOST_CANDIDATES, type Proposals, propose, proposed, work } from '../../../core/changes/propose.ts'
import {
  candidateCosts,
  candidateName,
  candidateReasons,
  candidateWork,
  landingWords,
  regionWords,
} from '../../../core/changes/propose-words.ts'
import { combinations, type Ranges, series } from '../../../core/changes/ranges.ts'
import { ranked, shortlist } from '../../../core/changes/rank.ts'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { targetName, targetsOf } from '../../../core/changes/targets.ts'
import { usualRanges } from '../../../core/changes/usual-ranges.ts'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Axle, Plan, Targets } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { allClose, close } from '../../close.ts'
import { seed } from '../../seeds/seed.ts'

const say = sayIn('inch')
const plan = seed('before-and-after.stopgap')
const axleOf = (from: Plan, id: Axle['id']): Axle => from.setups[0]!.axles.find(each => each.id === id)!
const rear = axleOf(plan, 'rear')
const usual = usualRanges(rear.corner, GENERIC_SHELF, 'inch')
const few: Ranges = {
  ...usual,
  spacers: [0.5, 1, 1.5].map(inches => inches * INCH),
  charges: [180 * PSI, 240 * PSI],
  shims: [0.25 * INCH],
}
const modest: Targets = { coiloverShare: 0.4, landingDrop: 0.42, shockLeft: 0.0127, stopPressure: 1500 * PSI }

const run = (axle: Axle, targets: Targets | undefined, ranges: Ranges): Proposals =>
  proposed(propose(axle, { units: 'inch', targets }, ranges))

const found = run(rear, modest, few)

describe('ranges', () => {
  it('usual ones: spacers by the eighth that leave an inch, charges by ten from 100 to 300 psi', () => {
    allClose(
      usual.spacers.map(length => length / INCH),
      series(0.125, 2.5, 0.125),
      { abs: 1e-9 },
    )
    allClose(
      usual.charges.map(charge => charge / PSI),
      series(100, 300, 10),
      { abs: 1e-9 },
    )
    expect(usual.tube).not.toBeNull()
    expect(usual.preload).toBe(false)
  })

  it('of the stop as it is: nothing for foam, preload for a car on its stop, the tube inside already', () => {
    const foam = usualRanges(axleOf(seed('new-chassis.stopgap'), 'rear').corner, GENERIC_SHELF, 'inch')
    expect([foam.spacers, foam.charges]).toEqual([[], []])
    expect(usualRanges(axleOf(seed('on-its-stops.stopgap'), 'rear').corner, GENERIC_SHELF, 'inch').preload).toBe(true)
    const inside = plan.setups[1]!.axles.find(({ id }) => id === 'rear')!.corner
    close(usualRanges(inside, { stops: [], springs: [], tubes: [] }, 'inch').tube?.wall ?? Number.NaN, 0.095 * INCH, {
      abs: 1e-9,
    })
  })

  it('make every combination once, the first of nothing', () => {
    const list = combinations(rear.corner, few)
    expect(list).toHaveLength(4 * 3 * 2)
    expect(list[0]).toEqual([])
    expect(new Set(list.map(changes => JSON.stringify(changes))).size).toBe(list.length)
    expect(combinations(rear.corner, usual)).toHaveLength(21 * 21)
  })

  it('pass over the charge it has', () => {
    const { corner } = rear
    const charge = corner.stop?.kind === 'hydraulic' ? corner.stop.charge : Number.NaN
    const only: Ranges = { ...usual, spacers: [], charges: [charge, 2 * charge] }
    expect(combinations(corner, only)).toHaveLength(2)
  })

  it('take parts from the shelf: stops that close where the present one does, main springs at the same height', () => {
    const { stops, springs } = GENERIC_SHELF
    const shelf: Ranges = {
      ...usual,
      spacers: [],
      charges: [],
      stops: [stops[0]!.part],
      springs: [springs[0]!.part],
    }
    const all = run(rear, modest, shelf)
    expect(all.order.length + all.refused.length).toBe(3)
    const stop = all.order.find(({ changes }) => changes.length === 1 && changes[0]!.kind === 'stop')
    close(stop!.axle.corner.stop!.gap + 2 * INCH, rear.corner.stop!.gap + 3.5 * INCH, { abs: 1e-9 })
  })
})

describe('a candidate', () => {
  const { question, list } = work(rear, { units: 'inch', targets: modest }, few)

  it('worked out alone gives the figure on the map', () => {
    for (const one of found.order) {
      const changes = list.find(
        each =>
          JSON.stringify(each) === JSON.stringify(one.changes.slice(0, each.length)) &&
          each.length === one.changes.filter(({ kind }) => kind !== 'settle').length,
      )
      expect(changes).toBeDefined()
      expect(evaluator(question)(changes!)).toEqual(one)
    }
  })

  it('worked out in another order, by two workers, gives the same proposals', () => {
    const [a, b] = [evaluator(question), evaluator(question)]
    const backwards = list
      .toReversed()
      .map((changes, i) => (i % 2 === 0 ? a : b)(changes))
      .reverse()
    expect(gathered(backwards, { usualTargets: false, leftOut: 0 })).toEqual(found)
  })

  it('is a setup a plan may have, and its figures are those of that setup', () => {
    for (const one of found.order.slice(0, 5)) {
      const again = evaluator({ ...question, axle: one.axle } satisfies Question)([])
      expect(again.ok && again.figures).toEqual(one.figures)
    }
  })

  it('is driven over a course as well, where one is named', () => {
    const course = plan.terrains.find(({ kind }) => kind === 'ledge')!
    const driven = evaluator({ ...question, course })(list[1]!) as Worked
    const whole = ride(cornerModel(driven.axle.corner), course)
    if (!whole.ok) throw new Error(whole.reason)
    const { hits, bottoms, share, stopForceMax, chassisAccelMax } = whole
    expect(driven.ride).toEqual({
      course: course.id,
      hits,
      bottoms,
      onStop: share.onStop,
      stopForceMax,
      chassisAccelMax,
    })
    expect(found.order.every(one => one.ride === null)).toBe(true)
  })

  it('that lets a car off its stop sits lower, and is measured from there', () => {
    const car = seed('on-its-stops.stopgap')
    const on = axleOf(car, 'rear')
    const evaluate = evaluator({ axle: on, units: 'inch', targets: modest })
    const off = evaluate([{ kind: 'move stop', away: 2 * INCH }]) as Worked
    expect(off.settles).toBeGreaterThan(INCH / 2)
    const { linkage } = cornerModel(on.corner)
    close(off.axle.corner.shock.showing, on.corner.shock.showing - linkage.at(off.settles).shock, { abs: 1e-9 })
    expect(candidateCosts(off, off.figures, say).at(-1)).toMatch(/^It then sits .* lower: measure everything again/)
  })
})

describe('proposals', () => {
  it('put what meets every target first, the least work before more, then the most in hand', () => {
    expect(found.feasible).toBeGreaterThan(0)
    const flags = found.order.map(({ feasible }) => feasible)
    expect(flags).toEqual([...flags].sort((a, b) => Number(b) - Number(a)))
    const feasible = found.order.filter(each => each.feasible)
    for (const { targets, dangers } of feasible) {
      expect(targets.every(({ met }) => met)).toBe(true)
      expect(dangers).toEqual([])
    }
    for (const { targets, dangers } of found.order.slice(feasible.length))
      expect(targets.some(({ met }) => !met) || dangers.length > 0).toBe(true)
  })

  it('count what misses what', () => {
    const misses = found.order.filter(({ targets }) => targets.some(({ id, met }) => id === 'coiloverShare' && !met))
    expect(found.misses.coiloverShare).toBe(misses.length)
    const [first] = regionWords(found, id => targetName(id, modest[id]!, say))
    expect(first).toMatch(/^\d+ of 23 miss: /)
  })

  it('are the same again, and can be stopped between any two', () => {
    expect(run(rear, modest, few)).toEqual(found)
    const steps = propose(rear, { units: 'inch', targets: modest }, few)
    const first = steps.next()
    expect(first.done).toBe(false)
    expect(first.value).toMatchObject({ done: 1, of: 24 })
    expect(steps.return({} as Proposals).done).toBe(true)
    expect(steps.next().done).toBe(true)
  })

  it('of a plan without targets aim at the usual share, and say so', () => {
    expect(targetsOf(undefined)).toEqual({ targets: { coiloverShare: 0.4 }, usual: true })
    expect(targetsOf({})).toMatchObject({ usual: true })
    expect(targetsOf({ shockLeft: 0.01 })).toEqual({ targets: { shockLeft: 0.01 }, usual: false })
    expect(run(rear, undefined, { ...few, spacers: [], charges: [], shims: [] }).usualTargets).toBe(true)
  })

  it('of ranges too wide to look at say how many were left out', () => {
    const wide: Ranges = { ...usual, shims: series(0.001, 0.02, 0.001) }
    const { list, leftOut } = work(rear, { units: 'inch', targets: modest }, wide)
    expect(list).toHaveLength(MOST_CANDIDATES)
    expect(leftOut).toBe(441 * 21 - MOST_CANDIDATES)
  })

  it('are shown one of each job', () => {
    const list = shortlist(found.order, 100)
    const jobs = list.map(({ changes }) =>
      changes.map(each => (each.kind === 'spacer' ? `${each.kind}${each.length}` : each.kind)).join(),
    )
    expect(new Set(jobs).size).toBe(jobs.length)
    expect(list[0]).toBe(found.order[0])
    expect(shortlist(found.order, 2)).toHaveLength(2)
  })

  it('name a danger that is new, and are not feasible with it', () => {
    const evaluate = evaluator({ axle: rear, units: 'inch', targets: {} })
    const far = evaluate([{ kind: 'move stop', away: 3 * INCH }]) as Worked
    expect(far.feasible).toBe(false)
    expect(candidateReasons(far, say)[0]).toMatch(/^Danger: /)
    expect(ranked([far, evaluate([])])[0]!.changes).toEqual([])
  })
})

describe('proposals in words', () => {
  const best = found.order[0]!

  it('say what is done, why, and what it costs', () => {
    expect(candidateName(found.present, say)).toBe('As it is')
    expect(candidateName(best, say)).toMatch(/^A .* spacer inside the stop|^The stop charged|^A .* shim/)
    const reasons = candidateReasons(best, say)
    expect(reasons.every(reason => reason.startsWith('Meets: '))).toBe(true)
    expect(reasons).toHaveLength(4)
    expect(candidateReasons(found.present, say)[0]).toMatch(
      /^Misses: the coilover’s share of bump 26 %, 40 % wanted\.$/,
    )
    expect(candidateWork(best).length).toBeGreaterThan(0)
    expect(candidateCosts(best, found.present.figures, say)[0]).toMatch(/(less|more) (energy|force|landing)/)
    expect(candidateCosts(found.present, found.present.figures, say)).toEqual([])
  })

  it('say how a landing height is known', () => {
    expect(landingWords({ drop: INCH, by: 'simulation' }, say)).toBe('1 in, by driving landings as a quarter car')
    expect(landingWords({ drop: INCH, by: 'energy' }, say)).toMatch(/by the energy alone/)
    expect(landingWords({ drop: 10, by: 'energy' }, say)).toMatch(/or more/)
  })
})
