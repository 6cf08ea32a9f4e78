import type { Finding } from '../../core/budget/results.ts'

/** Findings for somebody who knows no names of parts, by their id. */
const PLAIN: Readonly<Record<string, string>> = {
  'rides-on-stop': 'Standing still it already leans on its stop.',
  'off-ride-height': 'It does not stand at the height it was measured at.',
  'shock-closes-first': 'In a hard hit the shock itself ends the travel, metal to metal.',
  'shock-nearly-closes': 'In a hard hit the shock comes very near its own end.',
  'coil-binds-first': 'In a hard hit the springs are pressed solid before anything else stops the wheel.',
  'coil-nearly-binds': 'In a hard hit the springs are nearly pressed solid.',
  'springs-loose-at-droop': 'With the wheel hanging, the springs can come loose in their seats.',
  'motion-ratio-falls': 'The way its parts move, it gets softer toward the top, where it should get firmer.',
  'little-coilover-travel': 'The stop catches the wheel early.',
  'no-bump-travel': 'The wheel can hardly rise from where it stands.',
  'works-backwards': 'Something was measured wrong: nothing here can be relied on before it is measured again.',
  'pad-leaves-stop': 'Near the top of its travel the wheel comes off its stop again.',
  'stop-never-met': 'The stop is never reached: something else ends the travel before it.',
  'stop-open-at-contact': 'The wheel’s travel ends against the body before the stop has done its work.',
  'stop-open-at-linkage-end': 'The wheel’s travel ends before the stop has done its work.',
  'stop-over-rated-pressure': 'In a hard hit the pressure in the stop can pass what it is rated for.',
  'tender-working-at-engagement':
    'A spring is still handing over to the next when the stop is met: it can feel like two steps.',
  'crossover-at-engagement':
    'One spring hands over to the next just where the stop is met: it can feel like one hard step.',
}

/** A finding in plain words; one nobody put into them is told as the shop reads it. */
export const forOwner = ({ id, message }: Finding): string => PLAIN[id] ?? message
