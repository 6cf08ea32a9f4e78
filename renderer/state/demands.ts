import { startingLoads } from '../../core/loads/starting-loads.ts'
import type { Load, Targets, Terrain } from '../../core/plan/schema.ts'
import { edit } from './edit.ts'
import type { Store } from './store.ts'
import { loadGone } from './tolerances.ts'

/** What a load or a terrain begins as: common practice, to be set to what the car does. */
const loads: { readonly [K in Load['kind']]: Omit<Extract<Load, { kind: K }>, 'id'> } = {
  payload: { kind: 'payload', name: 'Payload', masses: { rear: 100 } },
  cornering: { kind: 'cornering', name: 'Corner', lateral: 4.9 },
  braking: { kind: 'braking', name: 'Braking', deceleration: 5.9 },
  terrain: { kind: 'terrain', name: 'Ground', amplitude: 0.075 },
}

const terrains: { readonly [K in Terrain['kind']]: Omit<Extract<Terrain, { kind: K }>, 'id'> } = {
  whoops: { kind: 'whoops', name: 'Whoops', spacing: 6, height: 0.25, speed: 12, count: 8 },
  landing: { kind: 'landing', name: 'Landing', drop: 0.5 },
  rough: { kind: 'rough', name: 'Rough road', isoClass: 'E', speed: 18, duration: 30, seed: 1 },
  ledge: { kind: 'ledge', name: 'Ledge', height: 0.15, length: 1, speed: 8 },
}

function freeId(stem: string, taken: readonly { readonly id: string }[]): string {
  let id = stem
  for (let n = 2; taken.some(each => each.id === id); n++) id = `${stem}-${n}`
  return id
}

/** Fields of a load that say how large it is. */
export const sizesOf: Readonly<Record<Load['kind'], readonly string[]>> = {
  payload: ['masses.front', 'masses.rear'],
  cornering: ['lateral'],
  braking: ['deceleration'],
  terrain: ['amplitude'],
}

export const addLoad = (store: Store, kind: Load['kind']) =>
  edit(store, `load ${loads[kind].name.toLowerCase()} added`, plan => {
    plan.loads.push({ ...loads[kind], id: freeId(kind, plan.loads) } as Load)
  })

/** Two people and gear, half a tank, a hard corner, hard braking: all assumed until somebody puts in their own. */
export const offerLoads = (store: Store) =>
  edit(store, 'usual loads added', plan => {
    plan.loads.push(...startingLoads(store.read().plan))
  })

export const addTerrain = (store: Store, kind: Terrain['kind']) =>
  edit(store, `terrain ${terrains[kind].name.toLowerCase()} added`, plan => {
    plan.terrains.push({ ...terrains[kind], id: freeId(kind, plan.terrains) } as Terrain)
  })

/** What a recorded run asked of the wheel, among the demands. @param amplitude wheel travel above static, m */
export const addMeasuredDemand = (store: Store, run: string, amplitude: number) =>
  edit(store, `load ${run} added`.slice(0, 200), plan => {
    plan.loads.push({ id: freeId('recorded', plan.loads), name: run.slice(0, 200), kind: 'terrain', amplitude })
  })

export const removeDemand = (store: Store, list: 'loads' | 'terrains', at: number) =>
  edit(store, `${store.read().plan[list][at]?.name ?? 'entry'} removed`, plan => {
    const [gone] = plan[list].splice(at, 1)
    if (list === 'loads' && gone !== undefined) loadGone(plan, gone.id)
  })

export const putRoadClass = (store: Store, at: number, isoClass: Extract<Terrain, { kind: 'rough' }>['isoClass']) =>
  edit(store, `road class ${isoClass}`, plan => {
    const terrain = plan.terrains[at]
    if (terrain?.kind === 'rough') terrain.isoClass = isoClass
  })

export const targetFields: readonly (keyof Targets)[] = [
  'coiloverShare',
  'coiloverTravel',
  'landingDrop',
  'shockLeft',
  'stopPressure',
]
