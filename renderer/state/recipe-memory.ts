import { formatRecipes, readRecipes } from '../../core/plan/recipe-file.ts'
import type { ChannelChoice } from '../../core/runs/channel.ts'
import { type Fingerprint, type Recipe, recipeFor, recipeOf } from '../../core/runs/recipe.ts'
import type { Recording } from './recording.ts'

/** Recipes remembered; the oldest go first. */
const MOST_RECIPES = 100

/** Where recipes are remembered from one start to the next. */
export interface RecipeShelf {
  read(): Promise<string>
  keep(text: string): Promise<void>
}

/** How files were read, for the next of their kind. */
export class RecipeMemory {
  private recipes: readonly Recipe[] = []
  /** Calibrations as they were used, with zero and sign, by run and place in its channels. */
  private readonly used = new Map<string, Map<number, ChannelChoice['calibration']>>()
  /** Settles when those of before are there. */
  readonly ready: Promise<void>

  constructor(private readonly shelf: RecipeShelf) {
    this.ready = this.begin()
  }

  private async begin(): Promise<void> {
    const read = readRecipes(await this.shelf.read())
    this.recipes = read.ok ? read.recipes : []
  }

  find(fingerprint: Fingerprint): Recipe | null {
    return recipeFor(this.recipes, fingerprint)
  }

  /** A channel was laid with a calibration: it is how the next file of its kind is read. */
  wasUsed(run: string, at: number, calibration: ChannelChoice['calibration']): void {
    this.used.set(run, (this.used.get(run) ?? new Map()).set(at, calibration))
  }

  /** What a run was laid with counts no more. */
  forget(run: string): void {
    this.used.delete(run)
  }

  remember(run: Recording | null): void {
    if (run === null || run.reading === null || run.fingerprint === null || run.found === null) return
    const used = this.used.get(run.id)
    const channels = run.channels.map((channel, i) => ({
      ...channel,
      calibration: used?.get(i) ?? channel.calibration,
    }))
    const recipe = recipeOf(run.source, run.fingerprint, run.reading, channels)
    const before = this.find(run.fingerprint)
    if (before !== null && JSON.stringify({ ...before, name: '' }) === JSON.stringify({ ...recipe, name: '' })) return
    this.recipes = [...this.recipes.filter(each => each !== before), recipe].slice(-MOST_RECIPES)
    void this.shelf.keep(formatRecipes(this.recipes))
  }
}
