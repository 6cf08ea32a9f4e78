import { type FieldSpec, spec } from './field-spec.ts'

export const springFields: Readonly<Record<string, FieldSpec>> = {
  'corner.springs.springs.*.rate': spec(
    'rate',
    'rate',
    'the spring’s rate',
    'Printed on the spring, often as length, bore, rate. Or load it in a press: force for one more inch.',
  ),
  'corner.springs.springs.*.freeLength': spec(
    'length',
    'free',
    'the spring’s free length',
    'Spring off the car, standing loose: end to end.',
  ),
  'corner.springs.springs.*.solidLength': spec(
    'length',
    'solid',
    'the spring’s solid length',
    'Length with all coils touching: from the maker, or wire thickness times the number of coils.',
  ),
  'corner.springs.preload': spec(
    'length',
    'Preload',
    'the preload',
    'Shock hanging fully out: how much shorter the springs are together than when loose.',
    { more: 'Turns of the adjuster times its pitch, from just touching.' },
  ),
  'corner.springs.crossover.gap': spec(
    'length',
    'Divider to ring',
    'the divider to the stop ring',
    'Shock hanging fully out: from the divider between the springs to the ring that stops it.',
    { short: 'Divider', more: 'No ring? Leave it empty.' },
  ),
}
