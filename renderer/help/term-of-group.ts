/** The word help opens on from a group of measurements, by the group's id. */
const words: Readonly<Record<string, string>> = {
  'ride-height': 'ride-height',
  stop: 'bump-stop',
  shock: 'shaft-showing',
  springs: 'tender-main',
  weights: 'weights',
  tire: 'tire',
  linkage: 'motion-ratio',
  clearance: 'full-bump',
  dampers: 'damper-curve',
  axle: 'roll',
  vehicle: 'roll',
  loads: 'demands',
  terrains: 'landing',
  targets: 'coilover-share',
  notes: 'setups',
}

export const termOfGroup = (group: string): string | null => words[group] ?? null
