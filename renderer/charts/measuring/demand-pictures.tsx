import { Arrow, box, disc, Ground, Level, Mark, Tire, Upright, Word } from './marks.tsx'

const WHOOPS = 'M2 74q8 0 12 -12t12 -12t12 12t12 12t12 -12t12 -12t8 6'

export const Whoops = ({ measured }: { readonly measured: 'spacing' | 'height' | 'count' }) => (
  <>
    <Mark d={WHOOPS} width={1.5} />
    <Tire x={26} y={36} r={13} />
    {measured === 'spacing' ? <Level at={86} from={26} to={74} reach={52} /> : null}
    {measured === 'height' ? <Upright at={50} from={50} to={74} reach={28} /> : null}
    {measured === 'count' ? (
      <>
        <Word x={26} y={88} anchor="middle">
          1
        </Word>
        <Word x={74} y={88} anchor="middle">
          2
        </Word>
      </>
    ) : null}
  </>
)

export const Speed = () => (
  <>
    <Mark d="M2 80q10 0 14 -8t14 -2t14 4t14 -6t14 4t10 0" width={1.5} />
    <Tire x={38} y={50} r={20} />
    <Mark d="M4 44h10M2 52h10M4 60h10" stroke="ink3" width={1.25} />
    <Arrow from={[44, 18]} to={[76, 18]} />
  </>
)

/** From a hanging wheel to the ground. */
export const Drop = () => (
  <>
    <Mark d="M4 30H30" stroke="ink3" width={1.5} />
    <Tire x={38} y={28} r={20} />
    <Ground y={84} />
    <Arrow from={[38, 54]} to={[38, 76]} />
    <Upright at={70} from={48} to={84} reach={46} />
  </>
)

export const Ledge = ({ measured }: { readonly measured: 'height' | 'length' }) => (
  <>
    <Mark d="M2 78H30q2 0 2 -2V60q0 -2 2 -2H60q2 0 2 2v16q0 2 2 2H82" width={1.5} />
    <Tire x={17} y={61} r={16} />
    {measured === 'height' ? (
      <Upright at={76} from={58} to={78} reach={64} />
    ) : (
      <Level at={42} from={32} to={62} reach={56} />
    )}
  </>
)

/** A road recorded over time; `drawn` says that chance made it. */
export const Rough = ({ drawn }: { readonly drawn: boolean }) => (
  <>
    <Tire x={26} y={34} r={17} />
    <Mark d="M2 54l5 -2 4 4 5 -5 6 3 5 -4 6 5 4 -6 6 4 5 -2 4 5 6 -6 5 4 6 -3 4 4 9 -3" width={1.5} />
    {drawn ? (
      <>
        <Mark d="M28 66h24v22H28z" fill="sheet" />
        <Mark
          d={`${disc(34, 72, 1.8)}${disc(46, 72, 1.8)}${disc(40, 77, 1.8)}${disc(34, 82, 1.8)}${disc(46, 82, 1.8)}`}
          fill="ink"
          stroke="none"
        />
      </>
    ) : (
      <>
        <Mark d={disc(42, 77, 11)} fill="sheet" />
        <Mark d="M42 77V69M42 77l5 3" width={1.75} />
      </>
    )}
  </>
)

/** The budget's own bar: how much of bump is to stay on the coilover. */
export const Budget = () => (
  <>
    <Mark d={box(20, 4, 24, 36)} stroke="none" fill="stop-t" />
    <Mark
      d="M20 12l8 -8M20 24L40 4M20 36L44 12M24 40L44 20M36 40l8 -8M20 8l24 24M20 20l20 20M20 32l8 8M28 4l16 16M40 4l4 4"
      stroke="stop"
      width={1}
    />
    <Mark d={box(20, 40, 24, 44)} stroke="none" fill="coil-t" />
    <Mark d="M20 52l12 -12M20 64L44 40M20 76L44 52M24 84L44 64M36 84l8 -8" stroke="coil" width={1.25} />
    <Mark d={box(20, 4, 24, 80)} width={1.5} />
    <Mark d="M12 40H52" stroke="stop" width={2} />
    <Upright at={64} from={40} to={84} reach={46} />
    <Mark d="M8 84H76" dash="9 2 2 2" width={1} />
  </>
)
