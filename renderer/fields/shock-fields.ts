import { type FieldSpec, spec } from './field-spec.ts'

export const shockFields: Readonly<Record<string, FieldSpec>> = {
  'corner.shock.showing': spec(
    'length',
    'Shaft showing',
    'the shaft showing',
    'On the ground at ride height: the bright shaft from the body to what the body meets when it closes.',
    { short: 'Showing', more: 'Up to the bump washer, if there is one.' },
  ),
  'corner.shock.stroke': spec(
    'length',
    'Stroke',
    'the shock’s stroke',
    'Shock off the car, no spring: shaft showing fully out, less what shows fully closed.',
    { more: 'Let the gas out before you push it closed.' },
  ),
  'corner.shock.shaftDiameter': spec(
    'length',
    'Shaft diameter',
    'the shock’s shaft diameter',
    'Across the bright shaft, with a caliper.',
    { short: 'Shaft dia.' },
  ),
  'corner.shock.gas.charge': spec(
    'pressure',
    'Charge',
    'the shock’s charge',
    'At the valve, shock fully out and cold, with a nitrogen gauge.',
    { more: 'Keep your face away from the valve.' },
  ),
  'corner.shock.gas.volume': spec(
    'volume',
    'Gas volume',
    'the shock’s gas volume',
    'Room for nitrogen with the shock fully out: from the maker, or the reservoir’s bore and the depth of its piston.',
    { short: 'Gas vol.' },
  ),
  'corner.shock.compression.*.velocity': spec(
    'shaftSpeed',
    'shaft speed',
    'the shaft speed',
    'From the damper’s dyno sheet, going in. Start with a row of 0 and 0.',
  ),
  'corner.shock.compression.*.force': spec(
    'force',
    'force',
    'the damping force',
    'From the damper’s dyno sheet, going in, at that shaft speed.',
  ),
  'corner.shock.rebound.*.velocity': spec(
    'shaftSpeed',
    'shaft speed',
    'the shaft speed',
    'From the damper’s dyno sheet, coming out. Start with a row of 0 and 0.',
  ),
  'corner.shock.rebound.*.force': spec(
    'force',
    'force',
    'the damping force',
    'From the damper’s dyno sheet, coming out, at that shaft speed.',
  ),
  'corner.stop.compression.*.velocity': spec(
    'shaftSpeed',
    'shaft speed',
    'the stop’s shaft speed',
    'From the stop’s dyno sheet, going in. Start with a row of 0 and 0.',
  ),
  'corner.stop.compression.*.force': spec(
    'force',
    'force',
    'the stop’s damping force',
    'From the stop’s dyno sheet, going in, at that shaft speed.',
  ),
  'corner.stop.rebound.*.velocity': spec(
    'shaftSpeed',
    'shaft speed',
    'the stop’s shaft speed',
    'From the stop’s dyno sheet, coming out. Start with a row of 0 and 0.',
  ),
  'corner.stop.rebound.*.force': spec(
    'force',
    'force',
    'the stop’s damping force',
    'From the stop’s dyno sheet, coming out, at that shaft speed.',
  ),
}
