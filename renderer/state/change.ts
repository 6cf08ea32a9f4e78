import { applyPatches, enablePatches, type Patch } from 'immer'

enablePatches()

export type { Patch }

/** Patches that lead from one value to another, and back. Empty both ways when nothing differs. */
export interface Change {
  readonly patches: readonly Patch[]
  readonly inverse: readonly Patch[]
}

type Group = Record<string, unknown>
type Path = (string | number)[]

const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null && !Array.isArray(value)

function collect(from: unknown, to: unknown, path: Path, found: Patch[]): void {
  if (Object.is(from, to)) return
  if (isGroup(from) && isGroup(to)) {
    for (const key of Object.keys(from))
      if (!Object.hasOwn(to, key)) found.push({ op: 'remove', path: [...path, key] })
      else collect(from[key], to[key], [...path, key], found)
    for (const key of Object.keys(to))
      if (!Object.hasOwn(from, key)) found.push({ op: 'add', path: [...path, key], value: to[key] })
    return
  }
  if (Array.isArray(from) && Array.isArray(to) && from.length === to.length) {
    for (let i = 0; i < from.length; i++) collect(from[i], to[i], [...path, i], found)
    return
  }
  found.push({ op: 'replace', path, value: to })
}

const patchesBetween = (from: unknown, to: unknown): Patch[] => {
  const found: Patch[] = []
  collect(from, to, [], found)
  return found
}

/**
 * What differs between two plain values, as few patches as their shape allows; a list whose length differs is replaced whole.
 * Working from the two ends, and not from the steps between, makes a drag one small entry and an edit undone by hand none.
 */
export const changeBetween = (from: unknown, to: unknown): Change => ({
  patches: patchesBetween(from, to),
  inverse: patchesBetween(to, from),
})

export const isNoChange = (change: Change): boolean => change.patches.length === 0

export const apply = <T extends object>(value: T, patches: readonly Patch[]): T => applyPatches(value, patches)
