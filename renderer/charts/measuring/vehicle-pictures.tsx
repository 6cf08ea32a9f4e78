import { Arrow, box, disc, Ground, Level, Mark, Tire, TireFront, Upright } from './marks.tsx'

/** A truck from the side, hubs at 20 and 64. */
const FromSide = ({ dive = 0 }: { readonly dive?: number }) => (
  <>
    <g transform={dive === 0 ? undefined : `rotate(${-dive} 20 58)`}>
      <Mark d="M4 54V42h22l8 -16h24l6 16h16v12z" stroke="ink2" fill="metal" />
    </g>
    <Tire x={20} y={58} r={11} />
    <Tire x={64} y={58} r={11} />
    <Ground y={69} />
  </>
)

/** A truck from the front, its body leaning by an angle about the middle of its axle. */
const FromFront = ({ lean = 0 }: { readonly lean?: number }) => (
  <>
    <TireFront x={16} y={60} half={8} r={14} />
    <TireFront x={68} y={60} half={8} r={14} />
    <Mark d="M24 60h36" stroke="ink2" width={2.5} />
    <g transform={lean === 0 ? undefined : `rotate(${lean} 42 56)`}>
      <Mark d="M22 52V38l6 -2 4 -18h20l4 18 6 2v14z" stroke="ink2" fill="metal" />
    </g>
    <Ground y={74} />
  </>
)

export const Wheelbase = () => (
  <>
    <FromSide />
    <Level at={82} from={20} to={64} reach={60} />
  </>
)

export type Across = 'track' | 'shocks' | 'stops'

/** Both ends of an axle: tread to tread, shock to shock, pad to pad. */
export const AxleSpacing = ({ measured }: { readonly measured: Across }) => (
  <>
    <TireFront x={12} y={46} half={9} r={24} />
    <TireFront x={72} y={46} half={9} r={24} />
    <Mark d={box(20, 43, 44, 6)} fill="metal" />
    <Mark d={disc(42, 46, 8)} fill="metal" />
    <Mark d="M36 46L38 14M48 46L46 14" width={3.5} stroke={measured === 'shocks' ? 'ink' : 'ink3'} />
    <Mark
      d={`${box(25, 14, 6, 17)}${box(53, 14, 6, 17)}`}
      stroke="stop"
      fill={measured === 'stops' ? 'stop' : 'stop-t'}
      width={1}
    />
    <Mark d={`${box(24, 39, 8, 3)}${box(52, 39, 8, 3)}`} stroke="none" fill="ink" />
    <Ground y={71} />
    {measured === 'track' ? <Level at={83} from={12} to={72} reach={72} /> : null}
    {measured === 'shocks' ? <Level at={83} from={36} to={48} reach={56} /> : null}
    {measured === 'stops' ? <Level at={83} from={28} to={56} reach={43} /> : null}
  </>
)

/** The middle of the car's weight, quartered as drawings mark it. */
export const WeightHeight = () => (
  <>
    <FromSide />
    <path d="M44 34a6 6 0 0 1 6 6h-6zM44 46a6 6 0 0 1 -6 -6h6z" style={{ fill: 'var(--ink)', stroke: 'none' }} />
    <Mark d={disc(44, 40, 6)} />
    <Upright at={78} from={40} to={69} reach={52} />
  </>
)

/** Leaning about a point: how high that point is. */
export const RollAxis = () => (
  <>
    <FromFront lean={-9} />
    <Mark d={disc(42, 56, 3.4)} fill="sheet" width={1.75} />
    <Mark d={disc(42, 56, 1)} fill="ink" stroke="none" />
    <Upright at={56} from={56} to={74} reach={46} />
    <Mark d="M20 12a34 34 0 0 1 40 -2" />
    <Mark d="M17.4 14.6l7 -6.4 .6 6.6z" fill="ink" stroke="none" />
  </>
)

/** Load on board: what the scales of one axle read more. */
export const LoadMass = ({ axle }: { readonly axle: 'front' | 'rear' }) => (
  <>
    <FromSide />
    <Mark d={axle === 'front' ? box(6, 30, 16, 12) : box(62, 30, 16, 12)} fill="metal2" />
    <Arrow from={[axle === 'front' ? 14 : 70, 8]} to={[axle === 'front' ? 14 : 70, 28]} />
    <Mark d={axle === 'front' ? box(8, 69, 24, 6) : box(52, 69, 24, 6)} fill="metal2" />
    <Ground y={76} />
  </>
)

export const Cornering = () => (
  <>
    <FromFront lean={8} />
    <Arrow from={[48, 30]} to={[80, 30]} />
  </>
)

export const Braking = () => (
  <>
    <FromSide dive={4} />
    <Arrow from={[56, 14]} to={[28, 14]} />
    <Mark d="M8 84h10M24 84h8M38 84h6" stroke="ink3" width={1.5} />
  </>
)
