import fc from 'fast-check'
import { expect, test } from 'vitest'
import { asked, type Entry, OPTIONAL, type StartForm, startFrom } from '../../renderer/panels/dialogs/start-answers.ts'

const text = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.01, max: 40, noNaN: true }).map(value => value.toFixed(3)) },
  { weight: 2, arbitrary: fc.constantFrom('', '0', '-1', '1e9', '2 7/8', '73 mm', 'wide', '1e-9', '0.001') },
)
const entries: readonly Entry[] = [
  'cornerMass',
  'stroke',
  'showing',
  'stopStroke',
  'gap',
  'ratioShock',
  'ratioStop',
  'rise',
  'shockClosed',
  'gapClosed',
  'tender',
  'main',
]
const form: fc.Arbitrary<StartForm> = fc.record({
  title: fc.constant(''),
  units: fc.constantFrom('inch', 'metric'),
  axle: fc.constantFrom('front', 'rear'),
  suspension: fc.constantFrom('independent', 'solid'),
  stop: fc.constantFrom('yes', 'no'),
  springs: fc.constantFrom('one', 'two'),
  ratios: fc.constantFrom('jack', 'known'),
  texts: fc.record(Object.fromEntries(entries.map(entry => [entry, text])) as Record<Entry, fc.Arbitrary<string>>),
})

test('a guided start makes a plan of whatever is typed, or says at an entry that is asked for what is wrong', () => {
  let [made, refused] = [0, 0]
  fc.assert(
    fc.property(form, given => {
      const started = startFrom(given)
      if (started.ok) {
        made += 1
        return
      }
      refused += 1
      const told = Object.entries(started.errors)
      expect(told.length).toBeGreaterThan(0)
      for (const [entry, words] of told) {
        expect(asked(given)).toContain(entry)
        expect(words).toMatch(/\S/)
        expect(words).not.toMatch(/NaN|Infinity|undefined/)
      }
      const empty = asked(given).filter(entry => !OPTIONAL.has(entry) && given.texts[entry] === '')
      for (const entry of empty) expect(started.errors[entry]).toMatch(/^Nothing entered\./)
    }),
    { seed: 7, numRuns: 600 },
  )
  expect(made).toBeGreaterThan(20)
  expect(refused).toBeGreaterThan(20)
})
