import { box, disc, Mark, Upright, Word } from './marks.tsx'

interface ShockProps {
  readonly x: number
  readonly top: number
  readonly end: number
  readonly foot: number
}

/** A shock without its springs: body from `top` to `end`, shaft to the lower eye at `foot`. */
export const Damper = ({ x, top, end, foot }: ShockProps) => (
  <>
    <Mark d={box(x - 3, end, 6, foot - 10 - end)} fill="sheet" />
    <Mark d={box(x - 8, top + 4, 16, end - top - 4)} fill="metal2" />
    <Mark d={box(x - 11, foot - 10, 22, 4)} fill="ink" stroke="none" />
    <Mark d={`${disc(x, top + 2, 4.5)}${disc(x, foot - 1.5, 4.5)}`} fill="sheet" />
    <Mark d={`${disc(x, top + 2, 1.2)}${disc(x, foot - 1.5, 1.2)}`} fill="ink" stroke="none" />
  </>
)

export const Showing = () => (
  <>
    <Damper x={30} top={3} end={44} foot={84} />
    <Upright at={62} from={44} to={74} reach={40} />
  </>
)

/** Fully out beside fully closed: the difference is the stroke. */
export const ShockStroke = () => (
  <>
    <Damper x={16} top={3} end={40} foot={88} />
    <Damper x={46} top={3} end={40} foot={56} />
    <Upright at={72} from={56} to={88} reach={58} />
    <Mark d="M24 88H68" stroke="ink3" width={1} />
  </>
)

/** A reservoir cut open: nitrogen over its piston. */
export const ShockGas = () => (
  <>
    <Damper x={16} top={6} end={46} foot={88} />
    <Mark d="M24 14h8q6 0 6 6v50q0 6 6 6" stroke="ink2" width={2} />
    <Mark d={box(44, 8, 22, 76)} fill="sheet" width={1.5} />
    <Mark d={box(45, 9, 20, 36)} stroke="none" fill="gas-t" />
    <Mark
      d={[0, 1, 2, 3, 4, 5, 6]
        .flatMap(row => [0, 1, 2].map(column => disc(49 + column * 5 + (row % 2) * 2.5, 14 + row * 4.6, 0.8)))
        .join('')}
      stroke="none"
      fill="ink3"
    />
    <Mark d={box(45, 45, 20, 7)} fill="metal2" />
    <Mark d="M72 9h5v36h-5" />
  </>
)

/** A damper's dyno sheet: force over shaft speed, going in above, coming out below. */
export const Dyno = ({
  way,
  measured,
}: {
  readonly way: 'compression' | 'rebound'
  readonly measured: 'velocity' | 'force'
}) => {
  const up = way === 'compression'
  const [x, y] = [56, up ? 22 : 74]
  return (
    <>
      <Mark d="M14 4V88M14 46H80" stroke="ink2" width={1} />
      <Mark d="M14 46q8 -16 24 -18t40 -10" width={up ? 2 : 1} stroke={up ? 'ink' : 'ink3'} />
      <Mark d="M14 46q8 20 24 23t40 10" width={up ? 1 : 2} stroke={up ? 'ink3' : 'ink'} />
      <Mark d={measured === 'velocity' ? `M${x} ${y}V46` : `M${x} ${y}H14`} stroke="ink3" width={1} dash="3 2" />
      <Mark d={disc(x, y + 0.5, 3)} fill="sheet" width={1.5} />
      {measured === 'velocity' ? (
        <Mark d={disc(x, 46, 2.4)} fill="ink" stroke="none" />
      ) : (
        <Mark d={disc(14, y, 2.4)} fill="ink" stroke="none" />
      )}
      <Word x={18} y={up ? 12 : 86}>
        {up ? 'in' : 'out'}
      </Word>
      <Word x={80} y={up ? 57 : 42} anchor="end">
        speed
      </Word>
    </>
  )
}
