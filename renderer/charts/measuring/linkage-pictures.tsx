import { Arrow, box, disc, Ground, Mark, Tire, Upright } from './marks.tsx'

export type Moved = 'wheel' | 'shock' | 'stop'

/** Wheel jacked up a measured step: how far wheel, shock or pad has gone. What is measured has the dimension in ink. */
export const Jacked = ({ measured }: { readonly measured: Moved }) => (
  <>
    <Mark d="M2 12H62" stroke="ink2" width={2} />
    <Tire x={58} y={62} r={18} />
    <Mark d="M10 72L58 59M10 72L58 65" stroke="ink3" width={1} dash="3 3" />
    <Mark d="M8 68L58 50a4 4 0 0 1 2 8L10 76a4 4 0 0 1 -2 -8z" fill="metal" />
    <Mark d={disc(9, 72, 3)} fill="sheet" />
    <Mark d={`${box(38, 14, 10, 24)}`} fill="metal2" />
    <Mark d={box(41, 38, 4, 20)} fill="sheet" />
    <Mark d={box(20, 13, 9, 20)} stroke="stop" fill="stop-t" />
    <Mark d={box(22.5, 33, 4, 12)} stroke="stop" fill="sheet" width={1} />
    <Mark d={box(19.5, 45, 10, 3)} stroke="none" fill="stop" />
    <Mark d={box(18, 61, 13, 3)} stroke="none" fill="ink" />
    <Ground y={88} />
    <Arrow from={[58, 90]} to={[58, 81]} />
    {measured === 'wheel' ? <Upright at={80} from={48} to={66} reach={64} /> : null}
    {measured === 'shock' ? <Upright at={34} from={38} to={58} reach={41} /> : null}
    {measured === 'stop' ? <Upright at={12} from={48} to={61} reach={19} /> : null}
  </>
)

export type Joint = 'pivot' | 'wheel' | 'shockLower' | 'shockUpper' | 'stopPad'

const JOINTS: Readonly<Record<Joint, readonly [number, number]>> = {
  pivot: [10, 58],
  wheel: [56, 64],
  shockLower: [40, 58],
  shockUpper: [32, 12],
  stopPad: [24, 55],
}

const AXES = 'M6 89h18M6 89V70M21 86.5l4 2.5 -4 2.5M3.5 73l2.5 -4 2.5 4'

/** The arm with all its points; the one asked for is ringed. */
export const Points = ({ asked, along }: { readonly asked: Joint; readonly along: 'x' | 'y' | 'z' | null }) => (
  <>
    <Tire x={56} y={64} r={23} />
    <Mark d="M10 54L56 59v10L10 62a4 4 0 0 1 0 -8z" fill="metal" />
    <Mark d={box(28, 16, 9, 22)} fill="metal2" />
    <Mark d="M34 38L40 58" width={3} />
    <Mark d={box(20, 24, 8, 18)} stroke="stop" fill="stop-t" />
    <Mark d={box(20, 46, 8, 2.5)} stroke="none" fill="stop" />
    <Mark d="M24 42v4" stroke="stop" width={2} />
    <Mark d={box(19, 54, 10, 2.5)} stroke="none" fill="ink" />
    <Mark
      d={Object.values(JOINTS)
        .map(([x, y]) => disc(x, y, 2.4))
        .join('')}
      fill="sheet"
    />
    <Mark d={disc(JOINTS[asked][0], JOINTS[asked][1], 6.5)} width={1.5} />
    <Mark d={disc(JOINTS[asked][0], JOINTS[asked][1], 2.4)} fill="ink" stroke="none" />
    <Mark d={AXES} stroke="ink3" width={1} />
    {along === 'x' ? <Mark d="M6 89h18M21 86.5l4 2.5 -4 2.5" width={1.75} /> : null}
    {along === 'z' ? <Mark d="M6 89V70M3.5 73l2.5 -4 2.5 4" width={1.75} /> : null}
    {along === 'y' ? <Mark d={`${disc(6, 89, 2.6)}`} fill="ink" stroke="none" /> : null}
  </>
)

/** The way the pad goes into the stop. */
export const Direction = () => (
  <>
    <Mark d="M22 4l26 -3 4 28 -26 3z" stroke="stop" fill="stop-t" width={1.5} />
    <Mark d="M32 31l10 -1.2 2 14 -10 1.2z" stroke="stop" fill="sheet" width={1.5} />
    <Mark d="M28 46l20 -2.4 .8 5 -20 2.4z" stroke="none" fill="stop" />
    <Mark d="M24 76l34 -4 .8 5.4 -34 4z" fill="metal2" />
    <Mark d="M10 90c14 -6 44 -10 64 -6" />
    <Arrow from={[41, 73]} to={[38.6, 54]} />
  </>
)
