import type { CSSProperties } from 'react'

/** How a shape is inked. The inks are the window's own custom properties. */
const look = (fill: string, stroke: string, strokeWidth = 0, rest: CSSProperties = {}): CSSProperties => ({
  fill: fill === 'none' ? 'none' : `var(--${fill})`,
  stroke: stroke === 'none' ? 'none' : `var(--${stroke})`,
  strokeWidth,
  ...rest,
})

export const LOOKS = {
  tire: look('sheet', 'ink2', 1.25),
  tireFaint: look('none', 'rule', 1),
  rim: look('none', 'ink3', 1),
  engagementZone: look('stop-z', 'none', 0, { opacity: 0.78 }),
  coiloverZone: look('coil-z', 'none', 0, { opacity: 0.78 }),
  fan: look('none', 'ink3', 0.8),
  fanOther: look('none', 'ink2', 1, { strokeDasharray: '4 3' }),
  fanEngagement: look('none', 'stop', 1.75),
  fanWheel: look('none', 'ink', 1.25),
  wheelPath: look('none', 'ink', 1.25),
  mark: look('none', 'ink', 1.5),
  engagementMark: look('none', 'stop', 1.5),
  rideHeight: look('none', 'ink', 1.1, { strokeDasharray: '14 3 2 3' }),
  tubeEdge: look('none', 'ink2', 0, { strokeLinecap: 'round', strokeLinejoin: 'round' }),
  tube: look('none', 'metal', 0, { strokeLinecap: 'round', strokeLinejoin: 'round' }),
  chassis: look('metal', 'ink2', 1.2, { strokeLinejoin: 'round' }),
  chassisMount: look('metal2', 'ink2', 1.1),
  chassisHatch: look('none', 'ink3', 0.8),
  solidLine: look('none', 'ink', 1.5),
  strap: look('none', 'ink', 1.75),
  strapSlack: look('none', 'rule', 1),
  armEdge: look('none', 'ink', 2.8, { strokeLinejoin: 'round' }),
  arm: look('metal', 'none'),
  link: look('none', 'ink', 1.5, { strokeLinejoin: 'round' }),
  joint: look('sheet', 'ink', 1.4),
  jointCentre: look('ink', 'none'),
  hub: look('sheet', 'ink', 1.5),
  cut: look('none', 'ink2', 1),
  cutGround: look('sheet', 'none'),
  shaft: look('sheet', 'ink', 1),
  shockBody: look('metal2', 'ink', 1.2),
  seat: look('ink', 'none'),
  coilBehind: look('none', 'coil', 0, { strokeLinecap: 'round', opacity: 0.45 }),
  coil: look('none', 'coil', 0, { strokeLinecap: 'round' }),
  stopBody: look('stop-t', 'stop', 1.6, { strokeLinejoin: 'round' }),
  stopShaft: look('sheet', 'stop', 1.3),
  stopFoot: look('stop', 'none'),
  stopGroove: look('none', 'stop', 0.9),
  band: look('ink', 'none'),
  bracket: look('metal2', 'ink', 1, { strokeLinejoin: 'round' }),
  pad: look('ink', 'none'),
  detailRing: look('none', 'ink2', 0.9),
  rule: look('none', 'rule', 1),
  leader: look('none', 'ink3', 0.8),
  dimension: look('none', 'ink', 1),
  arrow: look('ink', 'none'),
} as const satisfies Record<string, CSSProperties>

export type Look = keyof typeof LOOKS

/** One thing drawn: a path on the page in one look; `width` where the line's width is itself a size. */
export interface Shape {
  readonly look: Look
  readonly d: string
  readonly width?: number
}

export const shape = (look: Look, d: string, width?: number): Shape => ({ look, d, width })
