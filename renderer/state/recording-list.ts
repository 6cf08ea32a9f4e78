import type { Recording } from './recording.ts'
import { watched } from './watched.ts'

export interface RecordingsView {
  readonly runs: readonly Recording[]
  /** Id of the one looked at. */
  readonly shown: string | null
}

/** The recorded runs there are, and who hears of them. */
export class RecordingList {
  private readonly seen = watched<RecordingsView>({ runs: [], shown: null })
  readonly read = this.seen.read
  readonly subscribe = this.seen.subscribe
  protected readonly write = this.seen.write

  protected get view(): RecordingsView {
    return this.read()
  }

  find(id: string): Recording | null {
    return this.view.runs.find(run => run.id === id) ?? null
  }

  change(id: string, part: Partial<Recording>): void {
    if (this.find(id) === null) return
    this.write({ ...this.view, runs: this.view.runs.map(run => (run.id === id ? { ...run, ...part } : run)) })
  }

  show(id: string): void {
    this.write({ ...this.view, shown: id })
  }
}
