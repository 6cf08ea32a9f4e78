import type { GroupSpec } from './groups.ts'

export interface Folding {
  readonly folds: Readonly<Record<string, boolean>>
  readonly narrow: boolean
  /** The group holds an entry that was refused. */
  readonly refused: boolean
}

/** Whether a group stands open: one with an error always does, then the person's word counts, then the room there is. */
export const isOpen = ({ id, opens }: GroupSpec, { folds, narrow, refused }: Folding): boolean =>
  refused || (folds[id] ?? (opens === 'always' || (opens === 'wide' && !narrow)))

/** What changes when a group is opened or folded: in a narrow window, opening one folds those below it. */
export function toggled(groups: readonly GroupSpec[], id: string, open: boolean, narrow: boolean) {
  const at = groups.findIndex(group => group.id === id)
  const below = narrow && open ? groups.slice(at + 1).map(group => [group.id, false] as const) : []
  return Object.fromEntries<boolean>([...below, [id, open]])
}
