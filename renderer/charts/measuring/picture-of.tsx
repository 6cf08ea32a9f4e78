import type { ReactNode } from 'react'
import { Budget, Drop, Ledge, Rough, Speed, Whoops } from './demand-pictures.tsx'
import { Direction, Jacked, type Joint, type Moved, Points } from './linkage-pictures.tsx'
import { Damper, Dyno, ShockGas, ShockStroke, Showing } from './shock-pictures.tsx'
import { AntiRollBar, Divider, FreeLength, Preload, SolidLength, SpringRate } from './spring-pictures.tsx'
import { Bore, Caliper, Charge, Gap, Pressed, Rated, Spacer, StopGas, StopStroke } from './stop-pictures.tsx'
import { AxleSpacing, Braking, Cornering, LoadMass, RollAxis, WeightHeight, Wheelbase } from './vehicle-pictures.tsx'
import {
  Amplitude,
  BumpClearance,
  CornerWeight,
  Strap,
  TireDamping,
  TireRadius,
  TireRate,
  Unsprung,
} from './wheel-pictures.tsx'

type Drawer = (found: readonly string[]) => ReactNode

const AXES = ['x', 'y', 'z'] as const

/** Patterns of field paths, the first that fits draws; what its brackets caught says which part of the picture is in ink. */
const PICTURES: readonly (readonly [RegExp, Drawer])[] = [
  [/stop\.gap$/, () => <Gap />],
  [/stop\.stroke$/, () => <StopStroke />],
  [/stop\.shaftDiameter$/, () => <Caliper ink="stop" />],
  [/stop\.charge$/, () => <Charge ink="stop" />],
  [/stop\.gasVolume$/, () => <StopGas />],
  [/stop\.body\.bore$/, () => <Bore />],
  [/ratedPressure$|stopPressure$/, () => <Rated />],
  [
    /spacer\.(length|outerDiameter|wall)$/,
    ([part]) => <Spacer measured={part as 'length' | 'outerDiameter' | 'wall'} />,
  ],
  [/stop\.curve.*\b(deflection|force)$/, ([part]) => <Pressed measured={part as 'deflection' | 'force'} />],
  [/stop\.curve/, () => <Pressed measured="force" />],
  [
    /(compression|rebound)\b(?:.*\b(velocity|force))?/,
    ([way, part]) => (
      <Dyno way={way as 'compression' | 'rebound'} measured={part === 'velocity' ? 'velocity' : 'force'} />
    ),
  ],
  [/showing$|shockLeft$/, () => <Showing />],
  [/shock\.stroke$/, () => <ShockStroke />],
  [/shaftDiameter$/, () => <Caliper ink="ink" />],
  [/charge$/, () => <Charge ink="ink" />],
  [/gas\.volume$|shock\.gas$/, () => <ShockGas />],
  [/crossover/, () => <Divider />],
  [/preload$/, () => <Preload />],
  [/freeLength$/, () => <FreeLength />],
  [/solidLength$/, () => <SolidLength />],
  [/springs.*rate$/, () => <SpringRate />],
  [/springs/, () => <FreeLength />],
  [/antiRollRate$/, () => <AntiRollBar />],
  [/cornerMass$/, () => <CornerWeight />],
  [/unsprungMass$/, () => <Unsprung />],
  [/tire\.rate$/, () => <TireRate />],
  [/tire\.damping$/, () => <TireDamping />],
  [/tire/, () => <TireRadius />],
  [/clearance\.bump$/, () => <BumpClearance />],
  [/clearance\.droop$|clearance$/, () => <Strap />],
  [/rows.*\b(wheel|shock|stop)$/, ([part]) => <Jacked measured={part as Moved} />],
  [/linkage\.(shock|stop)$/, ([part]) => <Jacked measured={part as Moved} />],
  [/stopAxis/, () => <Direction />],
  [
    /(pivot|wheel|shockLower|shockUpper|stopPad)((?:[.[]\d+\]?)*)$/,
    ([joint, place]) => <Points asked={joint as Joint} along={alongOf(joint, place)} />,
  ],
  [/linkage/, () => <Jacked measured="wheel" />],
  [/track$/, () => <AxleSpacing measured="track" />],
  [/shockSpacing$/, () => <AxleSpacing measured="shocks" />],
  [/stopSpacing$/, () => <AxleSpacing measured="stops" />],
  [/wheelbase$/, () => <Wheelbase />],
  [/cgHeight$/, () => <WeightHeight />],
  [/rollAxisHeight$/, () => <RollAxis />],
  [/masses\.(front|rear)$/, ([axle]) => <LoadMass axle={axle as 'front' | 'rear'} />],
  [/lateral$/, () => <Cornering />],
  [/deceleration$/, () => <Braking />],
  [/amplitude$/, () => <Amplitude />],
  [/loads/, () => <LoadMass axle="rear" />],
  [/spacing$/, () => <Whoops measured="spacing" />],
  [/count$/, () => <Whoops measured="count" />],
  [/terrains.*height$/, () => <Whoops measured="height" />],
  [/terrains.*length$/, () => <Ledge measured="length" />],
  [/speed$/, () => <Speed />],
  [/drop$|landingDrop$/i, () => <Drop />],
  [/duration$/, () => <Rough drawn={false} />],
  [/seed$|isoClass$/, () => <Rough drawn />],
  [/targets/, () => <Budget />],
  [/terrains/, () => <Speed />],
  [/shock/, () => <Damper x={42} top={4} end={46} foot={86} />],
]

/** Which coordinate of a point is asked for; a pivot's path names one of two points first. */
function alongOf(joint: string | undefined, place: string | undefined): (typeof AXES)[number] | null {
  const places = (place ?? '').match(/\d+/g) ?? []
  const at = joint === 'pivot' ? places[1] : places[0]
  return at === undefined ? null : (AXES[Number(at)] ?? null)
}

/** The picture of a field; every path has one, its family's where it has none of its own. */
export function pictureOf(field: string): ReactNode {
  for (const [pattern, draw] of PICTURES) {
    const found = pattern.exec(field)
    if (found !== null) return draw(found.slice(1))
  }
  return <TireRadius />
}
