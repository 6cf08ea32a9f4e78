import { Arrow, box, Coil, Ground, Mark, Upright, Word } from './marks.tsx'

/** Loose and loaded: one more inch takes the rate. */
export const SpringRate = () => (
  <>
    <Coil x={18} half={11} from={14} to={86} turns={8} />
    <Mark d="M30 14H74M30 30H74" stroke="ink3" width={1} />
    <Coil x={50} half={11} from={30} to={86} turns={8} />
    <Arrow from={[50, 4]} to={[50, 28]} />
    <Upright at={72} from={14} to={30} />
    <Ground y={87} />
  </>
)

export const FreeLength = () => (
  <>
    <Coil x={30} half={17} from={6} to={86} turns={8} width={3.5} />
    <Ground y={87} />
    <Upright at={66} from={6} to={87} reach={50} />
  </>
)

export const SolidLength = () => (
  <>
    <Mark d="M10 6H50" stroke="ink3" width={1} dash="3 3" />
    <Coil x={30} half={17} from={42} to={86} turns={9} width={3.6} />
    <Arrow from={[30, 14]} to={[30, 38]} />
    <Ground y={87} />
    <Upright at={66} from={42} to={87} reach={50} />
  </>
)

/** Loose on the left, on the hanging shock on the right. */
export const Preload = () => (
  <>
    <Coil x={18} half={11} from={6} to={86} turns={8} />
    <Mark d="M30 6H76" stroke="ink3" width={1} />
    <Mark d={box(46, 2, 8, 78)} fill="metal2" stroke="ink2" width={1} />
    <Coil x={50} half={11} from={24} to={82} turns={8} />
    <Mark d={box(35, 19, 30, 5)} fill="ink" stroke="none" />
    <Mark d={box(35, 82, 30, 5)} fill="ink" stroke="none" />
    <Upright at={74} from={6} to={24} reach={66} />
    <Ground y={87} from={4} to={30} />
  </>
)

/** The divider between the springs, and the ring on the body that stops it. */
export const Divider = () => (
  <>
    <Mark d={box(24, 2, 16, 88)} fill="metal2" stroke="ink2" width={1} />
    <Coil x={32} half={15} from={2} to={62} turns={7} />
    <Mark d={box(20, 16, 24, 5)} fill="ink" stroke="none" />
    <Mark d={box(12, 62, 40, 5)} fill="ink" stroke="none" />
    <Coil x={32} half={15} from={67} to={92} turns={3} width={3.5} />
    <Upright at={66} from={21} to={62} reach={52} />
  </>
)

/** A bar twisted between two arms. */
export const AntiRollBar = () => (
  <>
    <Mark d="M14 66L26 34H66L72 58" width={4.5} stroke="ink2" />
    <Mark d="M14 66L26 34H66L72 58" width={2.2} stroke="rule" />
    <Mark d={`${box(34, 28, 8, 12)}${box(52, 28, 8, 12)}`} fill="metal2" />
    <Arrow from={[14, 88]} to={[14, 70]} />
    <Arrow from={[72, 36]} to={[72, 56]} />
    <Mark d="M60 20a26 26 0 0 0 -30 -4" />
    <Mark d="M27 18l7.5 -4.6 -.4 6.6z" fill="ink" stroke="none" />
    <Word x={44} y={86} anchor="middle">
      twist
    </Word>
  </>
)
