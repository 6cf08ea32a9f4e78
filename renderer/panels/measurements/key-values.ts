import type { Axle, Linkage, Plan, Vehicle } from '../../../core/plan/schema.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { Quantity } from '../../../core/units/quantity.ts'

/** What a folded group says of itself on its one line. */
export type KeyValues = (axle: Axle, plan: Plan) => string

const spelled = (plan: Plan) => (value: number, quantity: Quantity) =>
  formatMeasure(value, quantity, plan.units, { unit: true })

const bare = (plan: Plan) => (value: number, quantity: Quantity) => formatMeasure(value, quantity, plan.units)

export const rideHeight: KeyValues = ({ corner }, plan) => {
  const say = spelled(plan)
  const showing = `${say(corner.shock.showing, 'length')} showing`
  return corner.stop === null ? showing : `gap ${say(corner.stop.gap, 'length')}`
}

export const stop: KeyValues = ({ corner }, plan) => {
  const given = corner.stop
  if (given === null) return 'none'
  return given.kind === 'elastomer' ? 'elastomer' : `hydraulic, ${spelled(plan)(given.stroke, 'length')}`
}

export const shock: KeyValues = ({ corner: { shock: given } }, plan) => {
  const say = spelled(plan)
  const gas = given.gas === null ? 'no gas' : say(given.gas.charge, 'pressure')
  return `${say(given.stroke, 'length')}, ${gas}`
}

export const springs: KeyValues = ({ corner }, plan) => {
  const rates = corner.springs.springs.map(({ rate }) => rate)
  const last = spelled(plan)(rates.at(-1)!, 'rate')
  return [...rates.slice(0, -1).map(rate => bare(plan)(rate, 'rate')), last].join(' over ')
}

export const weights: KeyValues = ({ corner }, plan) => `${spelled(plan)(corner.cornerMass, 'mass')} corner`

export const tire: KeyValues = ({ corner }, plan) => spelled(plan)(corner.tire.rate, 'rate')

export const linkageNames: Readonly<Record<Linkage['kind'], string>> = {
  ratio: 'Ratio',
  table: 'Table',
  arm: 'Arm',
  axle: 'Axle',
}

export const linkage: KeyValues = ({ corner }) => {
  const given = corner.linkage
  if (given.kind === 'ratio') return `ratio ${given.shock.toFixed(2)} and ${given.stop.toFixed(2)}`
  if (given.kind === 'table') return `table, ${given.rows.length} rows`
  return given.kind === 'arm' ? 'arm, 7 points' : 'solid axle, 4 points'
}

export const clearance: KeyValues = ({ corner: { clearance: given } }, plan) => {
  const say = spelled(plan)
  const parts = [
    given.bump === null ? null : `metal at ${say(given.bump, 'length')}`,
    given.droop === null ? null : `strap at ${say(given.droop, 'length')}`,
  ].filter(part => part !== null)
  return parts.length === 0 ? 'none' : parts.join(', ')
}

export const dampers: KeyValues = ({ corner }) => {
  const { stop: given, shock: damper } = corner
  const ofStop = given?.kind === 'hydraulic' ? [given.compression ?? [], given.rebound ?? []] : []
  const curves = [damper.compression, damper.rebound, ...ofStop].filter(curve => curve.length > 0).length
  return curves === 0 ? 'none' : curves === 1 ? '1 curve' : `${curves} curves`
}

export const axle: KeyValues = (given, plan) => `${given.suspension}, track ${spelled(plan)(given.track, 'length')}`

export const vehicle: KeyValues = (_, plan) => {
  const { name, wheelbase }: Vehicle = plan.vehicle
  return name === '' ? `wheelbase ${spelled(plan)(wheelbase, 'length')}` : name
}

const listed = (count: number): string => (count === 0 ? 'none' : String(count))

export const loads: KeyValues = (_, plan) => listed(plan.loads.length)
export const terrains: KeyValues = (_, plan) => listed(plan.terrains.length)

export const targets: KeyValues = (_, plan) => {
  const share = plan.targets?.coiloverShare
  if (share !== undefined) return `${spelled(plan)(share, 'share')} on the coilover`
  return listed(Object.keys(plan.targets ?? {}).length)
}

export const notes: KeyValues = (_, plan) => (plan.notes === '' ? 'none' : plan.notes.split('\n')[0]!)
