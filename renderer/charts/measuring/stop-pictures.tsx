import { Arrow, box, disc, Level, Mark, Upright } from './marks.tsx'

/** A hydraulic stop hanging: body, shaft, foot. */
const Hanging = ({ foot = 52, shaft = 6 }: { readonly foot?: number; readonly shaft?: number }) => (
  <>
    <Mark d={box(22, 2, 30, 26)} stroke="stop" fill="stop-t" width={1.5} />
    <Mark d={box(37 - shaft, 28, 2 * shaft, foot - 34)} stroke="stop" fill="sheet" width={1.5} />
    <Mark d={box(26, foot - 6, 22, 6)} stroke="none" fill="stop" />
  </>
)

const Pad = () => (
  <>
    <Mark d={box(18, 78, 38, 6)} fill="metal2" />
    <Mark d="M6 91c14-5 44-5 62 0" />
  </>
)

export const Gap = () => (
  <>
    <Hanging />
    <Pad />
    <Upright at={68} from={52} to={78} reach={58} />
  </>
)

export const StopStroke = () => (
  <>
    <Hanging foot={72} />
    <Upright at={68} from={28} to={66} reach={52} />
  </>
)

/** A caliper closed on a shaft. */
export const Caliper = ({ ink }: { readonly ink: 'stop' | 'ink' }) => (
  <>
    <Mark d={box(24, 2, 36, 24)} stroke={ink} fill={ink === 'stop' ? 'stop-t' : 'metal2'} width={1.5} />
    <Mark d={box(33, 26, 18, 64)} stroke={ink} fill="sheet" width={1.5} />
    <Mark d="M33 46V58h-6V70H10v-6h9V46z" fill="metal" />
    <Mark d="M51 46V58h6V70h17v-6h-9V46z" fill="metal" />
    <Level at={80} from={33} to={51} />
  </>
)

/** A charging hose and gauge on the valve of a body, which stands fully out. */
export const Charge = ({ ink }: { readonly ink: 'stop' | 'ink' }) => (
  <>
    <Mark d={box(10, 30, 26, 34)} stroke={ink} fill={ink === 'stop' ? 'stop-t' : 'metal2'} width={1.5} />
    <Mark d={box(17, 64, 12, 20)} stroke={ink} fill="sheet" width={1.5} />
    <Mark
      d={ink === 'stop' ? box(13, 84, 20, 5) : disc(23, 86, 4.5)}
      stroke={ink}
      fill={ink === 'stop' ? 'stop' : 'sheet'}
    />
    <Mark d={box(20, 23, 6, 7)} fill="metal2" />
    <Mark d="M23 23V14q0 -6 6 -6h14" stroke="ink2" width={2.5} />
    <Mark d={disc(59, 18, 15)} fill="sheet" width={1.5} />
    <Mark d="M48.5 25.5l3-2M47 14l3.4 1.2M59 6v3.6M71 14l-3.4 1.2M69.5 25.5l-3-2" stroke="ink3" width={1} />
    <Mark d="M59 18L66.5 11" width={2} />
    <Mark d={disc(59, 18, 2)} fill="ink" stroke="none" />
  </>
)

const dots = (x: number, y: number, columns: number, rows: number): string =>
  Array.from({ length: columns * rows }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)]
    return disc(x + column * 5 + (row % 2) * 2.5, y + row * 4.5, 0.8)
  }).join('')

/** Cut open: nitrogen over oil, the gas measured. */
export const StopGas = () => (
  <>
    <Mark d={box(20, 4, 34, 62)} stroke="stop" fill="sheet" width={1.5} />
    <Mark d={box(21, 5, 32, 28)} stroke="none" fill="gas-t" />
    <Mark d={dots(25, 10, 6, 5)} stroke="none" fill="ink3" />
    <Mark d={box(21, 33, 32, 32)} stroke="none" fill="stop-t" />
    <Mark d="M21 33q4 -2.4 8 0t8 0t8 0t8 0" stroke="stop" />
    <Mark d={`M20 66h9v20h16V66h9`} stroke="stop" fill="sheet" width={1.5} />
    <Mark d={box(27, 86, 20, 5)} stroke="none" fill="stop" />
    <Mark d="M62 5h5v28h-5" />
  </>
)

export const Bore = () => (
  <>
    <Mark d="M14 20a28 10 0 1 1 56 0v52a28 10 0 1 1 -56 0z" stroke="stop" fill="stop-t" width={1.5} />
    <Mark d="M14 20a28 10 0 1 0 56 0a28 10 0 1 0 -56 0z" stroke="stop" fill="stop-t" width={1.5} />
    <Mark d="M21 20a21 6.6 0 1 0 42 0a21 6.6 0 1 0 -42 0z" stroke="stop" fill="sheet" />
    <Level at={20} from={21} to={63} />
    <Mark d="M21 20v52M63 20v52" stroke="stop" width={1} dash="3 3" />
  </>
)

/** Pressure on every wall of the body, and the plate its maker stamped. */
export const Rated = () => (
  <>
    <Mark d={box(16, 6, 46, 52)} stroke="stop" fill="stop-t" width={3} />
    <Arrow from={[39, 30]} to={[21, 30]} />
    <Arrow from={[39, 30]} to={[57, 30]} />
    <Arrow from={[39, 30]} to={[39, 11]} />
    <Arrow from={[39, 34]} to={[39, 54]} />
    <Mark d={box(30, 58, 18, 20)} stroke="stop" fill="sheet" width={1.5} />
    <Mark d={box(27, 78, 24, 6)} stroke="none" fill="stop" />
  </>
)

/** A tube over the shaft, inside the body. */
export const Spacer = ({ measured }: { readonly measured: 'length' | 'outerDiameter' | 'wall' }) =>
  measured === 'length' ? (
    <>
      <Mark d={box(20, 4, 34, 58)} stroke="stop" fill="sheet" width={1.5} />
      <Mark d={box(31, 14, 12, 74)} stroke="stop" fill="sheet" width={1.5} />
      <Mark d={box(24, 8, 26, 6)} stroke="stop" fill="stop" />
      <Mark d={`${box(25, 34, 6, 28)}${box(43, 34, 6, 28)}`} fill="metal2" />
      <Upright at={68} from={34} to={62} reach={52} />
    </>
  ) : (
    <>
      <Mark d={`${disc(38, 40, 28)}${disc(38, 40, 17)}`} stroke="none" />
      <path
        d={`${disc(38, 40, 28)}${disc(38, 40, 17)}`}
        style={{ fill: 'var(--metal2)', fillRule: 'evenodd', stroke: 'var(--ink)', strokeWidth: 1.25 }}
      />
      {measured === 'wall' ? <Level at={40} from={55} to={66} /> : <Level at={82} from={10} to={66} reach={44} />}
    </>
  )

/** A block of foam in a press, on a scale. */
export const Pressed = ({ measured }: { readonly measured: 'deflection' | 'force' }) => (
  <>
    <Mark d={box(12, 14, 44, 7)} fill="metal2" />
    <Arrow from={[34, 0]} to={[34, 13]} />
    <Mark d="M18 4H50" stroke="ink3" width={1} dash="3 3" />
    <Mark d="M20 21h28q7 17 0 33H20q-7 -16 0 -33z" stroke="stop" fill="stop-t" width={1.5} />
    <Mark d="M24 32h20M23 38h22M24 44h20" stroke="stop" width={1} />
    <Mark d={box(10, 54, 48, 7)} fill="metal2" />
    <Mark d="M8 88l6-27h40l6 27z" fill="metal" />
    <Mark d={disc(34, 76, 9)} fill="sheet" />
    <Mark d="M34 76l5-5" width={measured === 'force' ? 2.25 : 1.25} />
    {measured === 'force' ? <Mark d={disc(34, 76, 12)} width={1.5} /> : <Upright at={68} from={4} to={21} reach={57} />}
  </>
)
