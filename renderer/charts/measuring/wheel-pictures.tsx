import { Arrow, box, disc, Ground, Mark, Tire, Upright } from './marks.tsx'

export const CornerWeight = () => (
  <>
    <Tire x={40} y={40} r={34} />
    <Mark d={box(10, 74, 60, 8)} fill="metal2" />
    <Mark d="M70 78h6v-14" stroke="ink2" width={1.25} />
    <Mark d={box(66, 50, 16, 14)} fill="sheet" />
    <Mark d="M69 57h10" width={2.5} />
    <Ground y={83} />
  </>
)

/** What hangs below the springs, in ink; what they carry, faint. */
export const Unsprung = () => (
  <>
    <Mark d="M4 20h22l12 -14h42" stroke="rule" width={3} />
    <Tire x={56} y={58} r={27} />
    <Mark d="M54 53L16 44a4 4 0 0 0 -2 8l40 12z" fill="metal2" width={1.5} />
    <Mark d={disc(56, 58, 8)} fill="metal2" width={1.5} />
    <Mark d={disc(14, 48, 4)} fill="sheet" />
    <Mark d="M33 52L28 8" stroke="ink2" width={1} dash="3 3" />
    <Mark d="M36 52l-2.6 -22" width={4} />
    <Ground y={86} />
  </>
)

export const TireRadius = () => (
  <>
    <Tire x={37} y={51} r={35} />
    <Ground y={86} />
    <Upright at={76} from={51} to={86} reach={43} />
  </>
)

/** A known weight over the wheel, and how far the hub drops. */
export const TireRate = () => (
  <>
    <Mark d={disc(34, 46, 32)} stroke="rule" width={1} dash="3 3" />
    <Mark d="M8 78q-10 -26 6 -44t40 0t6 44z" stroke="ink2" fill="sheet" />
    <Mark d={disc(34, 58, 4.4)} fill="sheet" />
    <Arrow from={[34, 30]} to={[34, 52]} />
    <Mark d={box(24, 10, 20, 20)} fill="metal2" />
    <Ground y={79} />
    <Upright at={74} from={46} to={58} reach={40} />
  </>
)

/** The tire's rubber as a spring beside a small damper. */
export const TireDamping = () => (
  <>
    <Tire x={42} y={30} r={27} />
    <Mark d="M24 57v6l-5 3 10 5 -10 5 10 4 -5 3v4" stroke="ink2" />
    <Mark d="M58 57v10M50 71V64M66 64v14H50V64M52 67h12M58 78v9" width={1.5} />
    <Ground y={88} />
  </>
)

/** Ride height dashed; raised until metal is near metal. */
export const BumpClearance = () => (
  <>
    <Mark d={disc(34, 62, 22)} stroke="ink3" width={1} dash="3 3" />
    <Tire x={34} y={38} r={22} />
    <Mark d="M4 14H64" width={2} />
    <Mark d="M6 14l6 -6M16 14l6 -6M26 14l6 -6M36 14l6 -6M46 14l6 -6M56 14l6 -6" stroke="ink3" width={1} />
    <Upright at={72} from={38} to={62} reach={40} />
    <Ground y={85} />
  </>
)

/** Hanging on a strap pulled tight, ride height dashed. */
export const Strap = () => (
  <>
    <Mark d={disc(36, 36, 22)} stroke="ink3" width={1} dash="3 3" />
    <Tire x={36} y={64} r={22} />
    <Mark d="M4 8H60" width={2} />
    <Mark d="M6 8l5 -5M18 8l5 -5M30 8l5 -5M42 8l5 -5M54 8l5 -5" stroke="ink3" width={1} />
    <Mark d="M16 8L34 60" width={3} />
    <Upright at={72} from={36} to={64} reach={42} />
    <Ground y={91} />
  </>
)

/** Wheel travel asked for by the ground, above where the car stands. */
export const Amplitude = () => (
  <>
    <Mark d={disc(28, 56, 22)} stroke="ink3" width={1} dash="3 3" />
    <Tire x={28} y={36} r={22} />
    <Mark d="M4 78h10c6 0 6 -20 14 -20s8 20 14 20h38" width={1.5} />
    <Upright at={66} from={36} to={56} reach={34} />
  </>
)
