import { join } from 'node:path'
import { type Claims, createClaims } from './claims.ts'
import { type KeptCopies, keptCopies } from './kept.ts'
import { latestWriter } from './latest-writer.ts'
import { type Marks, marksIn } from './marks.ts'
import { type OneAtATime, oneAtATime } from './one-at-a-time.ts'
import { type PartsShelf, partsShelf } from './parts-shelf.ts'
import { type PreviousVersions, previousVersions } from './previous.ts'
import { reason } from './reason.ts'
import { type RecentPlans, recentPlans } from './recents.ts'
import { type RecipeStore, storedRecipes } from './recipes.ts'
import { type SettingsStore, storedSettings } from './settings.ts'
import { createTokens, type Tokens } from './tokens.ts'

/** Everything in the application's own folder, and the tokens of this run. */
export interface Shelves {
  tokens: Tokens
  kept: KeptCopies
  previous: PreviousVersions
  recents: RecentPlans
  settings: SettingsStore
  /** Which window keeps its changes where. */
  claims: Claims
  /** What nobody else may do at the same time, in this Stopgap or another one. */
  alone: OneAtATime
  marks: Marks
  recipes: RecipeStore
  /** Stops, springs and tubes somebody keeps to hand. */
  parts: PartsShelf
  /** Waits for bookkeeping; a refusal of the system is reported, and stops nothing. */
  attempt(work: Promise<unknown>): Promise<void>
  /** Sentences the person has not been told yet, each once. */
  takeReports(): string[]
}

/**
 * @param isHere whether a window of this run is still there
 * @param shared hears that another window has come to the plan a window has
 */
export function shelvesIn(
  folder: string,
  isHere: (window: string) => boolean = () => true,
  shared?: (window: string, plan: string) => void,
): Shelves {
  const reports = new Set<string>()
  const told = new Set<string>()
  const report = (sentence: string) => {
    if (!told.has(sentence)) reports.add(sentence)
    told.add(sentence)
  }
  const writer = latestWriter()
  const marks = marksIn(join(folder, 'open'), name => claims.takenElsewhere(name))
  const claims = createClaims(marks, isHere, shared)
  const alone = oneAtATime(marks)
  return {
    tokens: createTokens(),
    kept: keptCopies(join(folder, 'kept'), writer, report),
    previous: previousVersions(join(folder, 'previous'), writer),
    recents: recentPlans(join(folder, 'recent.json'), writer, alone, report),
    settings: storedSettings(join(folder, 'settings.json'), writer, report),
    claims,
    alone,
    marks,
    parts: partsShelf(join(folder, 'shelf.json'), writer, report),
    recipes: storedRecipes(join(folder, 'recipes.json'), writer, report),
    attempt: async work => {
      try {
        await work
      } catch (error) {
        report(`${cannotKeep}: ${reason(error)}.`)
      }
    },
    takeReports: () => {
      const sentences = [...reports]
      reports.clear()
      return sentences
    },
  }
}

const cannotKeep =
  'Stopgap cannot write in its own folder, so changes that are not saved, recent plans and settings are not remembered'
