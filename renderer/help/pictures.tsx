import { Arrow, box, Coil, disc, Ground, Mark, Tire, Upright, Word } from '../charts/measuring/marks.tsx'

/** Pictures of words that are not one measurement: 84 × 92 units, as the pictures of how to measure. */

/** Force upwards over travel to the right. */
const Axes = () => (
  <>
    <Mark d="M12 4V80H80" stroke="ink2" />
    <Word x={80} y={90} anchor="end">
      travel
    </Word>
    <Word x={16} y={12}>
      force
    </Word>
  </>
)

/** Both ends of the travel dashed, the wheel where the car stands. */
export const Travel = ({ measured }: { readonly measured: 'all' | 'bump' | 'droop' }) => (
  <>
    <Mark d={disc(34, 24, 20)} stroke="ink3" width={1} dash="3 3" />
    <Mark d={disc(34, 68, 20)} stroke="ink3" width={1} dash="3 3" />
    <Tire x={34} y={50} r={20} />
    <Upright at={70} from={measured === 'droop' ? 50 : 24} to={measured === 'bump' ? 50 : 68} reach={38} />
  </>
)

/** The wheel where the car stands, and a line across everything. */
export const RideHeight = () => (
  <>
    <Mark d="M20 8h44v18H20z" stroke="ink2" fill="metal" />
    <Mark d="M42 26V52" stroke="ink2" width={3} />
    <Tire x={42} y={52} r={24} />
    <Ground y={76} />
    <Mark d="M2 52H82" dash="10 3 2 3" width={1.25} />
  </>
)

/** A bar of travel in zones; the ones asked for are filled. */
export const Zones = ({ shown }: { readonly shown: 'coilover' | 'engagement' }) => (
  <>
    <Mark d={box(20, 6, 26, 24)} fill={shown === 'engagement' ? 'stop-t' : 'none'} stroke="stop" />
    <Mark d={box(20, 30, 26, 34)} fill={shown === 'coilover' ? 'coil-t' : 'none'} stroke="coil" />
    <Mark d={box(20, 64, 26, 24)} stroke="ink3" width={1} dash="3 3" />
    <Mark d="M12 30H54" stroke="stop" width={2.25} />
    <Mark d="M12 64H54" dash="10 3 2 3" />
    <Upright at={66} from={shown === 'coilover' ? 30 : 6} to={shown === 'coilover' ? 64 : 30} reach={54} />
  </>
)

/** Pad and foot just meet. */
export const Meeting = () => (
  <>
    <Mark d={box(26, 2, 30, 26)} stroke="stop" fill="stop-t" width={1.5} />
    <Mark d={box(35, 28, 12, 22)} stroke="stop" fill="sheet" width={1.5} />
    <Mark d={box(30, 50, 22, 6)} stroke="none" fill="stop" />
    <Mark d={box(22, 56, 38, 6)} fill="metal2" />
    <Mark d="M4 56H80" stroke="stop" width={2} />
    <Arrow from={[41, 90]} to={[41, 66]} />
  </>
)

/** A rate that grows as the wheel rises, beside one that does not. */
export const Rising = () => (
  <>
    <Axes />
    <Mark d="M12 76L76 34" stroke="ink3" dash="3 3" />
    <Mark d="M12 76C40 62 60 46 76 8" width={2} />
  </>
)

/** How steep the force is where the wheel stands. */
export const Slope = () => (
  <>
    <Axes />
    <Mark d="M12 74C36 66 58 50 76 16" width={2} stroke="coil" />
    <Mark d="M28 70H62V44" stroke="ink3" width={1} dash="3 3" />
    <Mark d="M28 70L66 41" />
  </>
)

/** The force jumps where pad and foot meet. */
export const Step = () => (
  <>
    <Axes />
    <Mark d="M12 76L44 58" width={2} stroke="coil" />
    <Mark d="M44 58V38" width={3.5} stroke="stop" />
    <Mark d="M44 38C58 32 68 24 76 8" width={2} stroke="stop" />
  </>
)

/** The same gas pressed slowly and fast. */
export const SlowFast = () => (
  <>
    <Axes />
    <Mark d="M12 70C44 66 62 54 76 34" width={2} stroke="stop" />
    <Mark d="M12 70C44 62 62 42 72 8" width={2} stroke="stop" dash="5 3" />
    <Word x={56} y={72}>
      slow
    </Word>
    <Word x={40} y={24}>
      fast
    </Word>
  </>
)

/** A shock with its springs around it. */
export const Coilover = () => (
  <>
    <Mark d={box(36, 4, 12, 44)} stroke="ink2" fill="metal2" />
    <Mark d={box(39, 48, 6, 32)} stroke="ink2" fill="sheet" />
    <Coil x={42} half={17} from={14} to={76} turns={8} />
    <Mark d={`${disc(42, 4, 3.4)}${disc(42, 87, 3.4)}`} fill="sheet" />
    <Mark d={`${box(22, 10, 40, 4)}${box(22, 76, 40, 4)}`} fill="ink" stroke="none" />
  </>
)

/** Two springs in series, the divider between them. */
export const InSeries = () => (
  <>
    <Mark d={box(20, 4, 44, 4)} fill="ink" stroke="none" />
    <Coil x={42} half={18} from={8} to={36} turns={4} width={2} />
    <Mark d={box(20, 36, 44, 5)} fill="ink" stroke="none" />
    <Coil x={42} half={18} from={41} to={86} turns={6} width={3.6} />
    <Ground y={88} />
  </>
)

/** What one load after another takes, and what is left. */
export const Demands = () => (
  <>
    <Mark d="M8 14H78" stroke="stop" width={2} />
    <Mark d="M8 80H78" dash="10 3 2 3" />
    <Mark d={box(16, 62, 12, 18)} fill="metal2" />
    <Mark d={box(34, 50, 12, 30)} fill="metal2" />
    <Mark d={box(52, 36, 12, 44)} fill="metal2" />
    <Upright at={74} from={14} to={36} reach={64} />
  </>
)

/** A body going up and down by itself. */
export const Frequency = () => (
  <>
    <Mark d="M4 46H80" stroke="ink3" width={1} dash="3 3" />
    <Mark d="M4 46C12 10 22 10 30 46S48 82 56 46S72 22 80 46" width={2} />
    <Mark d="M4 86V90M56 86V90M4 88H56" />
    <Word x={30} y={84} anchor="middle">
      once
    </Word>
  </>
)

/** One setup drawn solid, the other in short dashes. */
export const TwoSetups = () => (
  <>
    <Mark d="M6 34H54" stroke="stop" width={2} />
    <Mark d="M6 58H54" width={1.25} dash="4 3" />
    <Word x={58} y={38}>
      now
    </Word>
    <Word x={58} y={62}>
      then
    </Word>
  </>
)

/** A value with the broken underline of what nobody has measured. */
export const NotMeasured = () => (
  <>
    <text x={42} y={44} textAnchor="middle" style={{ fontSize: 17, fontStyle: 'italic', fill: 'var(--ink)' }}>
      2 7/8
    </text>
    <Mark d="M14 52H70" dash="4 3" width={1.5} />
    <Word x={42} y={70} anchor="middle">
      assumed
    </Word>
  </>
)

/** One figure from many trials: a heap, and the middle most of them fall in. */
export const Heap = () => (
  <>
    <Mark d="M4 78H80" stroke="ink2" />
    <Mark d="M6 78C26 78 28 22 42 22S58 78 78 78z" fill="coil-t" stroke="coil" width={1.5} />
    <Mark d="M24 86V10M60 86V10" stroke="ink3" width={1} dash="3 3" />
    <Mark d="M24 88H60" width={2.5} />
  </>
)

/** Parts of several lengths standing on a board. */
export const Shelf = () => (
  <>
    <Mark d={box(8, 22, 14, 48)} stroke="stop" fill="stop-t" width={1.5} />
    <Coil x={38} half={9} from={34} to={70} turns={5} />
    <Mark d={box(56, 54, 8, 16)} fill="metal2" />
    <Mark d={box(68, 44, 8, 26)} fill="metal2" />
    <Mark d="M2 72H82" width={3} />
    <Mark d="M14 74V86M70 74V86" stroke="ink2" width={2} />
  </>
)
