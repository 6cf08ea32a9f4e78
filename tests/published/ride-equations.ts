import type { Corner, Terrain } from '../../core/plan/schema.ts'
import { plainCorner, plainStop } from '../core/plain-corner.ts'
import { straight } from '../core/ride/corners.ts'

/**
 * A ride written down once more from its equations alone, with none of the program's own code but the plan's numbers, for other solvers: one spring,
 * shock and stop at the wheel, dampers straight in speed; hydraulic stop without dampers of its own.
 */

export const DAMPING = { compression: 1800, rebound: 3200 } as const
export const STOP = { gap: 0.06, stroke: 0.1016, area: (Math.PI / 4) * 0.03 ** 2, charge: 6e5 } as const
export const SQUEEZED = 1.6 * STOP.area * STOP.stroke

export const corner: Corner = {
  ...plainCorner({ stop: plainStop({ gap: STOP.gap, shaftDiameter: 0.03, charge: STOP.charge, gasVolume: SQUEEZED }) }),
  shock: {
    ...plainCorner().shock,
    compression: straight(DAMPING.compression),
    rebound: straight(DAMPING.rebound),
  },
}

const GRAVITY = 9.80665
const ATMOSPHERE = 101_325
export const [sprung, unsprung] = [300, 50]
export const bump = 6 * 0.0254
export const droop = -6 * 0.0254
export const { rate } = corner.springs.springs[0]!

/** Force between chassis and wheel, N, at a wheel position and speed. */
function suspension(wheel: number, speed: number): number {
  // Past the ends of the shock its spring goes on as it stands there.
  const spring = rate * Math.min(bump - droop, Math.max(0, wheel - droop))
  const damper = speed > 0 ? DAMPING.compression * speed : DAMPING.rebound * speed
  const pushed = Math.min(STOP.stroke, wheel - STOP.gap)
  const { area, charge } = STOP
  const stop =
    pushed < 0 ? 0 : area * ((charge + ATMOSPHERE) * (SQUEEZED / (SQUEEZED - area * pushed)) ** 1.4 - ATMOSPHERE)
  const steel = (past: number, into: number): number => (past > 0 ? Math.max(0, 2e7 * past + 2e4 * into) : 0)
  return spring + damper + stop + steel(wheel - bump, speed) - steel(droop - wheel, -speed)
}

/** Height of a road and how fast it rises, m and m/s. */
export type Ground = (time: number) => readonly [number, number]

export const level: Ground = () => [0, 0]

export type Whoops = Extract<Terrain, { kind: 'whoops' }>

export const whoops = (height: number, count: number): Whoops => ({
  id: '',
  name: '',
  kind: 'whoops',
  spacing: 6,
  height,
  speed: 12,
  count,
})

/** Whoops as they rise under a wheel, a second of level road before them. */
export function waves({ spacing, height, speed, count }: Whoops): Ground {
  const turning = (2 * Math.PI * speed) / spacing
  const end = (count * spacing) / speed
  return time => {
    const on = time - 1
    return on <= 0 || on >= end
      ? [0, 0]
      : [(height / 2) * (1 - Math.cos(turning * on)), (height / 2) * turning * Math.sin(turning * on)]
  }
}

/** Slopes of chassis height and speed, wheel height and speed. */
export const slopesOver =
  (ground: Ground) =>
  (time: number, [zc = 0, vc = 0, zw = 0, vw = 0]: number[]): number[] => {
    const [height, rise] = ground(time)
    const force = suspension(zw - zc, vw - vc)
    const { tire } = corner
    const push = Math.max(0, tire.rate * (height - zw) + tire.damping * (rise - vw))
    return [vc, force / sprung - GRAVITY, vw, (push - force) / unsprung - GRAVITY]
  }

/** Where the car stands on level ground. */
export function standing(): number[] {
  const rest = (sprung * GRAVITY) / rate + droop
  const wheel = (-(sprung + unsprung) * GRAVITY) / corner.tire.rate
  return [wheel - rest, 0, wheel, 0]
}

/** Just touching, at full droop, after a drop of so many m. */
export function landing(drop: number): number[] {
  const fall = Math.sqrt(2 * GRAVITY * drop)
  return [-droop, -fall, 0, -fall]
}
