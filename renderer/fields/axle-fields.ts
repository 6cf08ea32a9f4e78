import { type FieldSpec, spec } from './field-spec.ts'

export const axleFields: Readonly<Record<string, FieldSpec>> = {
  track: spec('length', 'Track', 'the track', 'From the middle of the left tread to the middle of the right one.'),
  antiRollRate: spec(
    'rollRate',
    'Anti-roll bar',
    'the anti-roll bar’s rate',
    'Turning force of the bar for each degree the body rolls on this axle: from its maker.',
    { short: 'Bar rate', more: 'No bar: 0.' },
  ),
  shockSpacing: spec(
    'length',
    'Shock spacing',
    'the shock spacing',
    'From the left shock’s lower mount to the right one’s, straight across.',
    { short: 'Shocks' },
  ),
  stopSpacing: spec(
    'length',
    'Stop spacing',
    'the stop spacing',
    'From the left pad to the right pad, straight across.',
    {
      short: 'Stops',
    },
  ),
  'vehicle.wheelbase': spec(
    'length',
    'Wheelbase',
    'the wheelbase',
    'From the front hub’s middle to the rear one’s, along the ground.',
  ),
  'vehicle.cgHeight': spec(
    'length',
    'Weight height',
    'the height of the weight’s middle',
    'How high the middle of the car’s weight is above the ground. About camshaft height on most; scales tell more.',
  ),
  'vehicle.rollAxisHeight': spec(
    'length',
    'Roll axis',
    'the height of the roll axis',
    'How high above the ground, under the weight’s middle, the body turns when it leans. From the linkage drawing.',
  ),
}
