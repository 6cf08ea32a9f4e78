import { type FieldSpec, spec } from './field-spec.ts'

export const cornerFields: Readonly<Record<string, FieldSpec>> = {
  'corner.cornerMass': spec(
    'mass',
    'Corner',
    'the corner weight',
    'One scale under each tire, car level and at ride height, fuel and crew as usual: what this scale reads.',
  ),
  'corner.unsprungMass': spec(
    'mass',
    'Unsprung',
    'the unsprung weight',
    'Wheel, tire, hub and brake, and about half of arm, shock and shaft. Weigh what you can take off.',
  ),
  'corner.tire.radius': spec(
    'length',
    'Radius',
    'the tire’s radius',
    'From the ground to the middle of the hub, car on its wheels.',
  ),
  'corner.tire.rate': spec(
    'rate',
    'Rate',
    'the tire’s rate',
    'Put a known weight over the wheel and tape how far the hub drops: weight over drop.',
    { more: 'At the pressure it is driven on.' },
  ),
  'corner.tire.damping': spec(
    'damping',
    'Damping',
    'the tire’s damping',
    'Hard to measure; small beside the shock. The usual figure does.',
  ),
  'corner.clearance.bump': spec(
    'length',
    'Metal contact',
    'metal contact',
    'Springs out, raise the wheel until metal is close to metal: how far it rose from ride height.',
    { short: 'Contact', more: 'Nothing touches? Leave it empty.' },
  ),
  'corner.clearance.droop': spec(
    'length',
    'Limit strap taut',
    'the limit strap',
    'Lift the chassis until the strap is tight: how far the wheel hangs below ride height.',
    { short: 'Strap taut', more: 'No strap? Leave it empty.' },
  ),
}
