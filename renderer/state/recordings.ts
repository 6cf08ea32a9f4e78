import type { AxleId, PlanRun } from '../../core/plan/schema.ts'
import type { ChannelChoice } from '../../core/runs/channel.ts'
import { guessChannels } from '../../core/runs/choose.ts'
import type { Encoding } from '../../core/runs/encoding.ts'
import type { Reading } from '../../core/runs/reading.ts'
import type { Asking, RunClient } from '../workers/run-client.ts'
import type { Looked } from '../workers/run-messages.ts'
import { asRestored, tooLongToKeep } from './kept-recording.ts'
import { RecipeMemory, type RecipeShelf } from './recipe-memory.ts'
import { emptyRecording, type Recording, wantedColumns, whyNotRead } from './recording.ts'
import { RecordingList } from './recording-list.ts'

/** Runs held at once: what each takes of memory is bound, and so is how many there are. */
export const MOST_OPEN = 4

const lost = 'Its numbers are not held any more. Open it again.'

/** The recorded runs of a window. Their numbers are with the worker; one file is read at a time, the one asked for last. */
export class Recordings extends RecordingList {
  private readonly asking = new Map<string, Asking<unknown>>()
  private readonly recipes: RecipeMemory
  private document: string | null = null
  private readonly lookedInto = new Set<string>()
  private next = 1

  constructor(
    readonly client: RunClient,
    shelf: RecipeShelf,
  ) {
    super()
    this.recipes = new RecipeMemory(shelf)
  }

  /** The worker broke with all it held. */
  lost(): void {
    this.write({
      ...this.view,
      runs: this.view.runs.map(run => ({ ...run, found: null, taken: [], work: null, trouble: lost })),
    })
  }

  /** Runs kept beside another plan are left with it; those from files stay to be looked at beside this one. */
  leaveOthers(document: string): void {
    if (this.document === document) return
    const before = this.document
    this.document = document
    if (before === null) return
    for (const { id, file } of this.view.runs)
      if (file === null) this.close(id)
      else this.change(id, { kept: null })
  }

  /** True once for each document. */
  firstLook(document: string): boolean {
    const first = !this.lookedInto.has(document)
    this.lookedInto.add(document)
    return first
  }

  close(id: string): void {
    this.cancel(id)
    this.recipes.forget(id)
    this.client.ask({ kind: 'close', run: id })
    const runs = this.view.runs.filter(run => run.id !== id)
    this.write({ runs, shown: this.view.shown === id ? (runs.at(-1)?.id ?? null) : this.view.shown })
  }

  /** Puts a new run first in sight; the one that is longest there makes room where there are too many. */
  private add(run: Omit<Recording, 'id'>): string {
    const id = `run-${this.next}`
    this.next += 1
    const { runs, shown } = this.view
    const extra = runs.length >= MOST_OPEN ? runs.find(each => each.id !== shown) : undefined
    if (extra !== undefined) this.close(extra.id)
    this.write({ runs: [...this.view.runs, { ...run, id }], shown: id })
    return id
  }

  /** Stops what is under way for a run; what was there before stays. */
  cancel(id: string): void {
    this.asking.get(id)?.cancel()
    this.asking.delete(id)
    if (this.find(id)?.work != null) this.change(id, { work: null })
  }

  /** One question of a run at a time: the last one counts. Null when it was not waited for, or when it failed, which is told. */
  private async ask<A>(id: string, kind: NonNullable<Recording['work']>['kind'], asking: Asking<A>): Promise<A | null> {
    this.asking.get(id)?.cancel()
    this.asking.set(id, asking)
    this.change(id, { work: { kind, share: 0 }, trouble: null })
    const end = await asking.done
    if (this.asking.get(id) !== asking) return null
    this.asking.delete(id)
    this.change(id, { work: null })
    if (end.kind === 'fault') this.change(id, { trouble: `It cannot be read: ${end.fault}.` })
    return end.kind === 'answer' ? end.answer : null
  }

  /** Looks at a file. One of a kind that was read before is read at once, in the same way. */
  async open(file: File, axles: readonly AxleId[], driven: string): Promise<void> {
    for (const { id, work } of this.view.runs) if (work?.kind === 'reading') this.cancel(id)
    const id = this.add({
      ...emptyRecording,
      name: file.name.replace(/\.[^.]*$/, '') || file.name,
      driven,
      file,
      source: file.name,
      work: { kind: 'looking', share: 0 },
    })
    await this.recipes.ready
    const looked = await this.look(id, null, null)
    if (looked === null) return
    const recipe = this.recipes.find(looked.detected.fingerprint)
    const { fingerprint, columns, reading } = looked.detected
    if (recipe === null) {
      this.change(id, { fingerprint, channels: guessChannels(columns, reading.time, axles) })
      return
    }
    const again = await this.look(id, null, { ...recipe.reading, encoding: reading.encoding, lineEnd: reading.lineEnd })
    if (again === null) return
    const channels = recipe.channels.filter(
      ({ column, axle }) => column < again.preview.columns.length && axles.includes(axle),
    )
    this.change(id, { fingerprint, channels, recipe: recipe.name })
    await this.readWhole(id)
  }

  private async look(id: string, encoding: Encoding | null, reading: Reading | null): Promise<Looked | null> {
    const file = this.find(id)?.file
    if (file == null) return null
    const looked = await this.ask(id, 'looking', this.client.ask<'look'>({ kind: 'look', file, encoding, reading }))
    if (looked === null) return null
    this.change(id, {
      looked,
      reading: looked.reading,
      longestPause: looked.reading.longestPause,
      columns: looked.preview.columns,
      found: null,
      taken: [],
    })
    return looked
  }

  /** Reads the beginning again, as somebody put it right. Channels of columns that are not there any more are guessed anew. */
  async correct(id: string, reading: Reading, axles: readonly AxleId[]): Promise<void> {
    const before = this.find(id)
    if (before === null) return
    const looked = await this.look(id, null, reading)
    if (looked === null) return
    const { columns } = looked.preview
    const same =
      columns.length === before.columns.length && before.channels.every(({ column }) => column < columns.length)
    const timeColumn = reading.time.kind === 'rate' ? null : reading.time.column
    const channels = same
      ? before.channels.filter(({ column }) => column !== timeColumn)
      : guessChannels(columns, reading.time, axles)
    this.change(id, { channels, kept: null })
  }

  /** As told from the file itself, with another encoding or without the corrections. */
  async tellAgain(id: string, encoding: Encoding | null, axles: readonly AxleId[]): Promise<void> {
    const looked = await this.look(id, encoding, null)
    if (looked === null) return
    const { columns, reading, fingerprint } = looked.detected
    this.change(id, {
      fingerprint,
      channels: guessChannels(columns, reading.time, axles),
      recipe: null,
      kept: null,
    })
  }

  setChannels(id: string, channels: readonly ChannelChoice[]): void {
    this.recipes.forget(id)
    this.change(id, { channels, kept: null, trouble: null })
    this.recipes.remember(this.find(id))
  }

  rename(id: string, name: string): void {
    this.change(id, { name, kept: null })
  }

  drivenWith(id: string, driven: string): void {
    this.change(id, { driven, kept: null })
  }

  /** Reads the file to its end, in place of any other that is being read. */
  async readWhole(id: string): Promise<void> {
    const run = this.find(id)
    if (run === null || run.file === null || run.reading === null || whyNotRead(run) !== null) return
    for (const each of this.view.runs) if (each.id !== id && each.work?.kind === 'reading') this.cancel(each.id)
    const { file, reading, columns } = run
    const taken = wantedColumns(run.channels)
    this.change(id, { found: null, taken: [] })
    const asking = this.client.ask<'read'>({ kind: 'read', run: id, file, reading, columns, taken }, share => {
      if (this.asking.get(id) === asking) this.change(id, { work: { kind: 'reading', share } })
    })
    const read = await this.ask(id, 'reading', asking)
    if (read === null) return
    if (!read.ok) {
      const why =
        read.why === 'too long' ? 'it has more rows than can be held' : 'no row of it can be read in the way chosen'
      this.change(id, { trouble: `“${file.name}” cannot be used: ${why}.` })
      return
    }
    const { ok: _, ...found } = read
    this.change(id, { found, taken })
    this.recipes.remember(this.find(id))
  }

  /** A channel was laid with a calibration: it is how the next file of its kind is read. */
  wasUsed(id: string, at: number, calibration: ChannelChoice['calibration']): void {
    this.recipes.wasUsed(id, at, calibration)
    this.recipes.remember(this.find(id))
  }

  /** Takes up a run that was kept beside the plan. @param asPlanned its file is still what the plan says */
  async restore(
    run: Pick<PlanRun, 'id' | 'name' | 'setup' | 'file'>,
    base64: string,
    asPlanned: boolean,
  ): Promise<boolean> {
    const id = this.add({
      ...emptyRecording,
      name: run.name,
      driven: run.setup,
      file: null,
      source: run.file,
      work: { kind: 'opening', share: 0 },
    })
    const restored = await this.ask(id, 'opening', this.client.ask<'restore'>({ kind: 'restore', run: id, base64 }))
    if (restored === null) return false
    if (!restored.ok) {
      this.change(id, { trouble: `“${run.file}” cannot be used: ${restored.why}.` })
      return false
    }
    this.change(id, { ...asRestored(restored), kept: asPlanned ? run.id : null })
    return true
  }

  /** The file of a run, to be kept; null when it cannot be, which is told. */
  async encode(id: string): Promise<string | null> {
    const run = this.find(id)
    if (run === null || run.found === null) return null
    const { name, source, longestPause, columns, channels, taken } = run
    const places = channels.map(({ column }) => taken.indexOf(column))
    const encoded = await this.ask(
      id,
      'keeping',
      this.client.ask<'keep'>({ kind: 'keep', run: id, name, source, longestPause, columns, channels, places }),
    )
    if (encoded === null) return null
    if (encoded.ok) return encoded.base64
    this.change(id, { trouble: tooLongToKeep(name, encoded) })
    return null
  }
}
