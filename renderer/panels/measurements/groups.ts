import type { ComponentType } from 'react'
import { AxleGroup, NotesGroup, VehicleGroup } from './AxleGroups.tsx'
import { ClearanceGroup, DamperGroup, TireGroup, WeightGroup } from './CornerGroups.tsx'
import { LoadGroup, TargetGroup, TerrainGroup } from './DemandGroups.tsx'
import * as key from './key-values.ts'
import { LinkageGroup } from './LinkageGroup.tsx'
import { RideHeight } from './RideHeight.tsx'
import { ShockGroup } from './ShockGroup.tsx'
import { SpringGroup } from './SpringGroup.tsx'
import { StopGroup } from './StopGroup.tsx'

export interface GroupSpec {
  readonly id: string
  readonly title: string
  readonly Body: ComponentType
  /** What the folded line says. */
  readonly keyValues: key.KeyValues
  /** Fields that belong here, by the beginning of their path; the longest beginning wins. */
  readonly holds: readonly string[]
  /** Open from the start: in a wide window, or in any. */
  readonly opens: 'always' | 'wide' | 'never'
}

/** Every group of the measurements, in the order they are taken in. */
export const groups: readonly GroupSpec[] = [
  {
    id: 'ride-height',
    title: 'Ride height',
    Body: RideHeight,
    keyValues: key.rideHeight,
    holds: ['corner.stop.gap', 'corner.shock.showing'],
    opens: 'always',
  },
  { id: 'stop', title: 'Stop', Body: StopGroup, keyValues: key.stop, holds: ['corner.stop'], opens: 'always' },
  { id: 'shock', title: 'Shock', Body: ShockGroup, keyValues: key.shock, holds: ['corner.shock'], opens: 'wide' },
  {
    id: 'springs',
    title: 'Springs',
    Body: SpringGroup,
    keyValues: key.springs,
    holds: ['corner.springs'],
    opens: 'wide',
  },
  {
    id: 'weights',
    title: 'Weights',
    Body: WeightGroup,
    keyValues: key.weights,
    holds: ['corner.cornerMass', 'corner.unsprungMass'],
    opens: 'wide',
  },
  { id: 'tire', title: 'Tire', Body: TireGroup, keyValues: key.tire, holds: ['corner.tire'], opens: 'never' },
  {
    id: 'linkage',
    title: 'Linkage',
    Body: LinkageGroup,
    keyValues: key.linkage,
    holds: ['corner.linkage'],
    opens: 'never',
  },
  {
    id: 'clearance',
    title: 'Clearance',
    Body: ClearanceGroup,
    keyValues: key.clearance,
    holds: ['corner.clearance'],
    opens: 'never',
  },
  {
    id: 'dampers',
    title: 'Damper curves',
    Body: DamperGroup,
    keyValues: key.dampers,
    holds: ['corner.shock.compression', 'corner.shock.rebound', 'corner.stop.compression', 'corner.stop.rebound'],
    opens: 'never',
  },
  {
    id: 'axle',
    title: 'Axle',
    Body: AxleGroup,
    keyValues: key.axle,
    holds: ['suspension', 'track', 'antiRollRate', 'shockSpacing', 'stopSpacing'],
    opens: 'never',
  },
  { id: 'vehicle', title: 'Vehicle', Body: VehicleGroup, keyValues: key.vehicle, holds: ['vehicle'], opens: 'never' },
  { id: 'loads', title: 'Loads', Body: LoadGroup, keyValues: key.loads, holds: ['loads'], opens: 'never' },
  {
    id: 'terrains',
    title: 'Terrains',
    Body: TerrainGroup,
    keyValues: key.terrains,
    holds: ['terrains'],
    opens: 'never',
  },
  { id: 'targets', title: 'Targets', Body: TargetGroup, keyValues: key.targets, holds: ['targets'], opens: 'never' },
  {
    id: 'notes',
    title: 'Title and notes',
    Body: NotesGroup,
    keyValues: key.notes,
    holds: ['title', 'notes'],
    opens: 'never',
  },
]

const within = (field: string, path: string): boolean => field === path || field.startsWith(`${path}.`)

/** The group a field is in; null for a field no group holds. */
export function groupOf(field: string): GroupSpec | null {
  let best: { group: GroupSpec; length: number } | null = null
  for (const group of groups)
    for (const path of group.holds)
      if (within(field, path) && path.length > (best?.length ?? 0)) best = { group, length: path.length }
  return best?.group ?? null
}
