import type { AxleId, Plan } from '../../core/plan/schema.ts'
import type { Reply } from '../../electron/contract/contract.ts'
import type { Recents, Settings } from '../../electron/contract/shapes.ts'
import type { History } from './history.ts'
import type { Notice } from './notices.ts'

/** An entry the plan did not take. The text stays in the field; the plan keeps its last good value. */
export interface Refusal {
  readonly text: string
  /** What is wrong: a short sentence. */
  readonly wrong: string
  /** What would be right. */
  readonly right: string
}

/** What the person looks at. Never undone, never saved in the plan. */
export interface View {
  readonly page: string
  readonly setup: string
  readonly axle: AxleId
  /** The setup drawn as a ghost beside the present one. */
  readonly compared: string | null
  /** Id of the terrain ridden; the first one where it is not in the plan. */
  readonly terrain: string | null
  /** Both axles under one body, and not each by itself. */
  readonly wholeCar: boolean
  /** Wheel position shown, m from ride height; kept to the travel where it is read (selectors.ts). */
  readonly wheel: number
  /** Field that has, or last had, the keyboard: `corner.stop.gap`. */
  readonly field: string | null
  readonly finding: string | null
  /** Groups the person opened or folded; the others follow the width of the window. */
  readonly folds: Readonly<Record<string, boolean>>
  /** By place in the plan: `setups.0.axles.1.corner.stop.gap`. */
  readonly refused: Readonly<Record<string, Refusal>>
  /** Loads not counted for now, by id. */
  readonly loadsOff: readonly string[]
  readonly dialog: Dialog | null
  /** What the page of changes shows; `look` when nobody has chosen. */
  readonly changes?: ChangesWay
  /** The first look around was asked for again. */
  readonly guide: boolean
}

export type ChangesWay = 'look' | 'hand' | 'compare' | 'shelf'

export type Dialog =
  | { readonly kind: 'start' }
  | { readonly kind: 'roll' }
  /** `term` is the one it opens on; null for the first. */
  | { readonly kind: 'help'; readonly term: string | null }
  | { readonly kind: 'about' }
  | { readonly kind: 'choose'; readonly purpose: 'open' | 'save' }
  | { readonly kind: 'changed'; readonly savedAt: string }

/** The file the plan is in, or will be. */
export interface DocumentState {
  readonly key: string
  readonly token: string | null
  readonly name: string
  readonly basis: string | null
  /** What the file holds, as a plan; null when there is no file or it cannot be read. */
  readonly savedPlan: Plan | null
  readonly savedAt: string | null
  /** A save is under way. */
  readonly saving: boolean
  /** Brought back from a kept copy; until the person has seen it. */
  readonly recovered: boolean
}

export interface State {
  readonly plan: Plan
  readonly history: History
  readonly view: View
  readonly document: DocumentState
  readonly settings: Settings
  readonly recents: Recents
  readonly demos: readonly { readonly token: string; readonly name: string }[]
  readonly about: Reply<'start'>['about']
  readonly notices: readonly Notice[]
  /** The host has ended: nothing can be opened or saved from here on. */
  readonly hostGone: boolean
}
