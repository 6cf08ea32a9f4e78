import type { Axle, Corner, Linkage, Point, Springs, Stop } from '../../../core/plan/schema.ts'
import { INCH, POUND, POUND_FORCE, PSI } from '../../../core/units/constants.ts'

/** Corners of our own invention, one for each thing the drawing must manage. Lengths of the makers below are in inches. */

const inch = (value: number): number => value * INCH
const point = (x: number, y: number, z: number): Point => [inch(x), inch(y), inch(z)]
const perInch = POUND_FORCE / INCH

const spring = (name: string, rate: number, free: number, solid: number): Springs['springs'][number] => ({
  name,
  rate: rate * perInch,
  freeLength: inch(free),
  solidLength: inch(solid),
})

const hydraulic: Stop = {
  kind: 'hydraulic',
  stroke: inch(3),
  gap: inch(1.8125),
  shaftDiameter: inch(1.75),
  charge: 165 * PSI,
  gasVolume: 9 * INCH ** 3,
}

const foam: Stop = {
  kind: 'elastomer',
  gap: 0.046,
  curve: [
    { deflection: 0, force: 0 },
    { deflection: 0.015, force: 700 },
    { deflection: 0.03, force: 2300 },
    { deflection: 0.048, force: 12_500 },
  ],
}

/** A trailing arm seen from the side: the pivot ahead of the wheel, hub at the origin. */
const trailing: Linkage = {
  kind: 'arm',
  pivot: [point(34, 28, 2.7), point(34, 14, 2.7)],
  wheel: point(0, 32, 0),
  shockLower: point(9.5, 24, 2.3),
  shockUpper: point(14.5, 24, 32.6),
  stopPad: point(16.25, 22, 4),
  stopAxis: [0, 0, 1],
}

/** An arm across the car, leaning a little fore and aft. */
const across: Linkage = {
  kind: 'arm',
  pivot: [
    [0.18, 0.22, 0.38],
    [-0.2, 0.22, 0.36],
  ],
  wheel: [0, 0.8, 0.36],
  shockLower: [0.02, 0.58, 0.42],
  shockUpper: [-0.03, 0.36, 1],
  stopPad: [0.05, 0.5, 0.42],
  stopAxis: [0, -0.15, 1],
}

const solid: Linkage = {
  kind: 'axle',
  shockLower: [0.05, 0.48, 0.42],
  shockUpper: [0.02, 0.4, 1.05],
  stopPad: [-0.05, 0.6, 0.55],
  stopAxis: [0, 0, 1],
}

const saltbush: Corner = {
  cornerMass: 1376 * POUND,
  unsprungMass: 214 * POUND,
  linkage: trailing,
  shock: {
    stroke: inch(16),
    showing: inch(7.6875),
    shaftDiameter: inch(0.875),
    gas: { charge: 175 * PSI, volume: 27 * INCH ** 3 },
    compression: [],
    rebound: [],
  },
  springs: {
    springs: [spring('tender', 250, 10, 2.875), spring('main', 350, 18, 6.875)],
    preload: inch(2.125),
    crossover: { gap: inch(5.375) },
  },
  stop: hydraulic,
  tire: { radius: inch(17.9), rate: 255_000, damping: 450 },
  clearance: { bump: null, droop: inch(9.25) },
}

const upFront: Corner = {
  ...saltbush,
  cornerMass: 352,
  unsprungMass: 58,
  linkage: across,
  shock: { ...saltbush.shock, stroke: 0.254, showing: 0.137 },
  springs: {
    springs: [spring('tender', 260, 10, 3.4), spring('main', 410, 12, 4.1)],
    preload: 0.02,
    crossover: { gap: 0.079 },
  },
  stop: foam,
  tire: { radius: 0.42, rate: 240_000, damping: 450 },
  clearance: { bump: 0.19, droop: 0.16 },
}

const solidRear: Corner = {
  ...upFront,
  linkage: solid,
  shock: { ...upFront.shock, stroke: 0.305, showing: 0.15 },
  springs: {
    springs: [spring('tender', 150, 9, 2), spring('helper', 90, 4, 0.8), spring('main', 260, 14, 5)],
    preload: 0.03,
    crossover: { gap: 0.1 },
  },
  stop: { ...hydraulic, stroke: inch(2.5), gap: 0.07, gasVolume: 8 * INCH ** 3, body: { bore: inch(2.25) } },
  tire: { radius: 0.46, rate: 240_000, damping: 450 },
  clearance: { bump: null, droop: null },
}

const arm = (points: Partial<Extract<Linkage, { kind: 'arm' }>>): Linkage => ({ ...trailing, ...points })

export const CORNERS = {
  trailing: saltbush,
  across: upFront,
  solid: solidRear,
  table: {
    ...solidRear,
    linkage: {
      kind: 'table',
      rows: [
        { wheel: -0.1524, shock: -0.099, stop: -0.1118 },
        { wheel: -0.0762, shock: -0.0508, stop: -0.0584 },
        { wheel: 0, shock: 0, stop: 0 },
        { wheel: 0.0635, shock: 0.0445, stop: 0.0521 },
        { wheel: 0.127, shock: 0.0914, stop: 0.108 },
        { wheel: 0.1905, shock: 0.1422, stop: 0.1676 },
      ],
    },
    stop: { ...hydraulic, stroke: 0.07, gap: 0.048 },
  },
  ratio: { ...upFront, linkage: { kind: 'ratio', shock: 0.62, stop: 0.45 }, clearance: { bump: null, droop: 0.18 } },
  ratioAboveOne: { ...upFront, linkage: { kind: 'ratio', shock: 1.4, stop: 1.5 } },
  noStop: {
    ...saltbush,
    stop: null,
    springs: { springs: [spring('main', 200, 20, 6)], preload: inch(3), crossover: null },
  },
  onStop: { ...saltbush, stop: { ...hydraulic, gap: inch(-0.75) } },
  coilBind: {
    ...saltbush,
    springs: { ...saltbush.springs, springs: [spring('tender', 250, 10, 2.875), spring('main', 350, 14, 6.2)] },
  },
  shockClosed: {
    ...saltbush,
    shock: { ...saltbush.shock, showing: inch(3) },
    springs: { ...saltbush.springs, preload: inch(0.5), crossover: { gap: inch(6) } },
  },
  leadingArm: {
    ...saltbush,
    linkage: arm({
      pivot: [point(-30, 28, 3), point(-30, 14, 3)],
      shockLower: point(-9, 24, 2),
      shockUpper: point(-13, 24, 33),
      stopPad: point(-5, 22, 4),
      stopAxis: [0.2, 0, 1],
    }),
  },
  leaning: { ...saltbush, linkage: arm({ shockUpper: point(14.5, 8, 30) }) },
  upsideDown: {
    ...saltbush,
    linkage: arm({ shockLower: point(9.5, 24, 20), shockUpper: point(14.5, 24, -12), stopPad: point(16, 22, -3) }),
    shock: { ...saltbush.shock, showing: inch(10) },
  },
  farApart: { ...saltbush, linkage: arm({ shockUpper: [0.4, 0.6, 6], stopPad: [3, 0.5, 0.1] }) },
  hugeTire: { ...saltbush, tire: { ...saltbush.tire, radius: 1.4 } },
  tinyTire: { ...saltbush, tire: { ...saltbush.tire, radius: 0.02 } },
  longStop: { ...saltbush, stop: { ...hydraulic, stroke: inch(9), gap: inch(7), gasVolume: 40 * INCH ** 3 } },
  spreadPivots: {
    ...saltbush,
    linkage: arm({ pivot: [point(30, 30, 3), point(16, 4, 2)] }),
  },
} as const satisfies Record<string, Corner>

export type CornerName = keyof typeof CORNERS

const FRONT: ReadonlySet<CornerName> = new Set(['across', 'ratio', 'ratioAboveOne', 'leadingArm'])

export const axleOf = (corner: Corner, id: Axle['id']): Axle => ({
  id,
  suspension: corner.linkage.kind === 'axle' ? 'solid' : 'independent',
  track: 1.72,
  antiRollRate: 0,
  shockSpacing: 0.96,
  stopSpacing: 1.2,
  corner,
})

export const namedAxle = (name: CornerName): Axle => axleOf(CORNERS[name], FRONT.has(name) ? 'front' : 'rear')
