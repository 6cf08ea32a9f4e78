import type { Recording } from './recording.ts'

export interface RecordingsView {
  readonly runs: readonly Recording[]
  /** Id of the one looked at. */
  readonly shown: string | null
}

/** The recorded runs there are, and who hears of them. */
export class RecordingList {
  protected view: RecordingsView = { runs: [], shown: null }
  private readonly listeners = new Set<() => void>()

  readonly read = (): RecordingsView => this.view

  readonly subscribe = (hear: () => void): (() => void) => {
    this.listeners.add(hear)
    return () => this.listeners.delete(hear)
  }

  protected write(next: RecordingsView): void {
    this.view = next
    for (const hear of [...this.listeners]) hear()
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
