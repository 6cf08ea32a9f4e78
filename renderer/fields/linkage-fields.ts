import { type FieldSpec, spec } from './field-spec.ts'

/** The same six words for every point: one coordinate at a time. */
const point = (named: string, how: string): FieldSpec =>
  spec('length', 'point', named, how, {
    more: 'Car at ride height, all points from one origin: x forward, y to the left, z up.',
  })

export const linkageFields: Readonly<Record<string, FieldSpec>> = {
  'corner.linkage.shock': spec(
    'ratio',
    'Motion ratio, shock',
    'the shock’s motion ratio',
    'Jack the wheel up a measured inch or two: how far the shock closed, over how far the wheel rose.',
    { short: 'Ratio, shock', more: 'Below 1 on most cars.' },
  ),
  'corner.linkage.stop': spec(
    'ratio',
    'Motion ratio, stop',
    'the stop’s motion ratio',
    'Jack the wheel up a measured inch or two: how far the gap closed, over how far the wheel rose.',
    { short: 'Ratio, stop' },
  ),
  'corner.linkage.rows.*.wheel': spec(
    'length',
    'wheel',
    'the wheel’s rise',
    'Springs out, jack the wheel in steps from droop to bump. Ride height is the row of zeros; below it is minus.',
  ),
  'corner.linkage.rows.*.shock': spec(
    'length',
    'shock',
    'the shock’s movement',
    'How far the shock has closed since ride height; minus where it has opened.',
  ),
  'corner.linkage.rows.*.stop': spec(
    'length',
    'stop',
    'the pad’s movement',
    'How far the pad has moved towards the stop since ride height, along the stop.',
  ),
  'corner.linkage.pivot.*.*': point('the arm’s pivot', 'Middle of the bushing or joint the arm turns about.'),
  'corner.linkage.wheel.*': point('the wheel’s middle', 'Middle of the tire’s tread width, at hub height.'),
  'corner.linkage.shockLower.*': point('the shock’s lower mount', 'Middle of the lower eye’s bolt.'),
  'corner.linkage.shockUpper.*': point('the shock’s upper mount', 'Middle of the upper eye’s bolt.'),
  'corner.linkage.stopPad.*': point('the stop’s pad', 'Middle of the pad’s face, where the foot meets it.'),
  'corner.linkage.stopAxis.*': spec(
    'ratio',
    'direction',
    'the stop’s direction',
    'Which way the pad moves into the stop: 0, 0, 1 is straight up. Only the direction counts, not its length.',
  ),
}
