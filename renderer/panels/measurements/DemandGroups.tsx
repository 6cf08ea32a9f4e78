import type { Load, Terrain } from '../../../core/plan/schema.ts'
import { Row } from '../../fields/Row.tsx'
import { TextField } from '../../fields/TextField.tsx'
import {
  addLoad,
  addTerrain,
  offerLoads,
  putRoadClass,
  removeDemand,
  sizesOf,
  targetFields,
} from '../../state/demands.ts'
import { countLoad, openDialog } from '../../state/view.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { focusField } from './focus-field.ts'
import { sizeOfLoad } from './size-of-load.ts'

const NO_TARGET = { value: undefined, word: 'none' } as const
const NO_LOAD = { value: undefined, word: 'none' } as const

const loadNames: Readonly<Record<Load['kind'], string>> = {
  payload: 'Payload',
  cornering: 'Cornering',
  braking: 'Braking',
  terrain: 'Ground',
}

const terrainFields: Readonly<Record<Terrain['kind'], readonly string[]>> = {
  whoops: ['spacing', 'height', 'speed', 'count'],
  landing: ['drop'],
  rough: ['speed', 'duration', 'seed'],
  ledge: ['height', 'length', 'speed'],
}

const terrainNames: Readonly<Record<Terrain['kind'], string>> = {
  whoops: 'Whoops',
  landing: 'Landing',
  rough: 'Rough road',
  ledge: 'Ledge',
}

const CLASSES = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const

function Demand({ list, at, name, kind }: { list: 'loads' | 'terrains'; at: number; name: string; kind: string }) {
  const store = useStore()
  return (
    <div className="row named">
      <TextField
        field={`${list}.${at}.name`}
        id={`${list}-${at}-name`}
        name={`${kind}, name`}
        called="name"
        longest={200}
      />
      <button
        type="button"
        className="step"
        aria-label={`Remove ${name}`}
        onClick={() => {
          removeDemand(store, list, at)
          const left = store.read().plan[list].length
          focusField(`${list}.${Math.min(at, left - 1)}.name`, `#group-${list} button`)
        }}
      >
        Remove
      </button>
    </div>
  )
}

/** Whether a load is among the demands drawn and added up. */
function Counted({ id, name }: { id: string; name: string }) {
  const store = useStore()
  const counted = useSelect(state => !state.view.loadsOff.includes(id))
  return (
    <label className="counted">
      <input
        type="checkbox"
        checked={counted}
        aria-label={`Count ${name} among the demands`}
        onChange={event => countLoad(store, id, event.currentTarget.checked)}
      />
      counted
    </label>
  )
}

/** Buttons that add one more of a kind. */
function AddKind<K extends string>({ names, onAdd }: { names: Readonly<Record<K, string>>; onAdd: (kind: K) => void }) {
  return (
    <p className="steps">
      Add:
      {(Object.keys(names) as K[]).map(kind => (
        <button key={kind} type="button" className="step" onClick={() => onAdd(kind)}>
          {names[kind]}
        </button>
      ))}
    </p>
  )
}

export function LoadGroup() {
  const store = useStore()
  const loads = useSelect(state => state.plan.loads)
  return (
    <>
      {loads.map((load, at) => (
        <div key={load.id} className="part">
          <Demand list="loads" at={at} name={load.name} kind={loadNames[load.kind]} />
          <Counted id={load.id} name={load.name} />
          {sizesOf[load.kind].map(field => (
            <Row key={field} field={`loads.${at}.${field}`} empty={load.kind === 'payload' ? NO_LOAD : null} />
          ))}
        </div>
      ))}
      {loads.length > 0 ? null : (
        <p className="steps">
          <button
            type="button"
            className="step"
            onClick={() => {
              offerLoads(store)
              focusField('loads.0.name')
            }}
          >
            Begin with usual loads
          </button>
        </p>
      )}
      <AddKind
        names={loadNames}
        onAdd={kind => {
          addLoad(store, kind)
          focusField(sizeOfLoad(store, store.read().plan.loads.at(-1)?.id ?? '') ?? 'loads')
        }}
      />
      <p className="steps">
        <button type="button" className="step" onClick={() => openDialog(store, { kind: 'roll' })}>
          Axle in roll
        </button>
      </p>
    </>
  )
}

export function TerrainGroup() {
  const store = useStore()
  const terrains = useSelect(state => state.plan.terrains)
  return (
    <>
      {terrains.map((terrain, at) => (
        <div key={terrain.id} className="part">
          <Demand list="terrains" at={at} name={terrain.name} kind={terrainNames[terrain.kind]} />
          {terrain.kind === 'rough' ? (
            <div className="row wide">
              <label htmlFor={`terrain-${at}-class`}>Road class</label>
              <select
                id={`terrain-${at}-class`}
                className="words"
                value={terrain.isoClass}
                onChange={event => putRoadClass(store, at, event.currentTarget.value as (typeof CLASSES)[number])}
              >
                {CLASSES.map(letter => (
                  <option key={letter} value={letter}>
                    {letter === 'A' ? 'A, smooth' : letter === 'H' ? 'H, worst' : letter}
                  </option>
                ))}
              </select>
            </div>
          ) : null}
          {terrainFields[terrain.kind].map(field => (
            <Row key={field} field={`terrains.${at}.${field}`} />
          ))}
        </div>
      ))}
      <AddKind
        names={terrainNames}
        onAdd={kind => {
          addTerrain(store, kind)
          focusField(`terrains.${store.read().plan.terrains.length - 1}.${terrainFields[kind][0]}`)
        }}
      />
    </>
  )
}

export const TargetGroup = () => (
  <>
    {targetFields.map(field => (
      <Row key={field} field={`targets.${field}`} empty={NO_TARGET} />
    ))}
  </>
)
