import { expect, test } from 'vitest'
import { unbroken } from '../../../renderer/panels/findings/unbroken.ts'

test('a measure stays on one line, a sentence does not', () => {
  const held = (text: string) => unbroken(text).replaceAll('\u00a0', '_')
  expect(held('all 2 1/2 in before the stop (224 lb/in against 288 lb/in), 21 % of 875 lb')).toBe(
    'all 2_1/2_in before the stop (224_lb/in against 288_lb/in), 21_% of 875_lb',
  )
  expect(held('5 inches in 3 gates of 10')).toBe('5 inches in 3 gates of 10')
})
