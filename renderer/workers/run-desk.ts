import { dsvFormat } from 'd3'
import { type AxleLedger, setupLoads } from '../../core/loads/ledger.ts'
import type { AxleModel } from '../../core/loads/setup-model.ts'
import { decodeRun, encodeRun } from '../../core/plan/kept-run-file.ts'
import { ride } from '../../core/ride/ride.ts'
import { byTravel, readingAt } from '../../core/runs/calibration.ts'
import { rideAsRun } from '../../core/runs/compare.ts'
import { demandOfRun } from '../../core/runs/demand.ts'
import { detectReading } from '../../core/runs/detect.ts'
import { ENCODING_SAMPLE, encodingOf } from '../../core/runs/encoding.ts'
import { engagementFinding, engagementWords } from '../../core/runs/engagement-words.ts'
import { runFigures } from '../../core/runs/figures.ts'
import type { Sha256 } from '../../core/runs/kept-run.ts'
import { type LaidRun, layRun, type NotLaid } from '../../core/runs/lay.ts'
import { previewRows } from '../../core/runs/preview.ts'
import { readingProblems } from '../../core/runs/reading-problems.ts'
import { type SeenEngagement, seeEngagement } from '../../core/runs/seen-engagement.ts'
import { strokesAMinute } from '../../core/runs/strokes.ts'
import { TableImport } from '../../core/runs/table-import.ts'
import type { Tokenize } from '../../core/runs/table-text.ts'
import { sayIn } from '../../core/units/saying.ts'
import { longestRun } from '../../electron/contract/recording.ts'
import { bytesOf, textOf } from './base64.ts'
import type {
  Encoded,
  LaidOver,
  LaidWheel,
  Looked,
  Restored,
  RiddenAsRun,
  RunAnswers,
  RunAsk,
  Scaled,
  SeenBeside,
  WasRead,
} from './run-messages.ts'

/** Bytes read at a time. */
const PIECE = 1 << 19
/** Rows shown of a file that was looked at. */
const SHOWN_ROWS = 60

const formats = new Map<string, ReturnType<typeof dsvFormat>>()

/** Rows of cells by d3's own reader of delimited text (RFC 4180). */
const tokenize: Tokenize = (text, delimiter) => {
  const known = formats.get(delimiter) ?? dsvFormat(delimiter)
  formats.set(delimiter, known)
  return known.parseRows(text)
}

const sha256: Sha256 = async bytes => new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))

/** One run as it is held: times, and one list of readings a channel. */
interface Held {
  readonly time: Float64Array
  readonly values: readonly Float64Array[]
  readonly longestPause: number | null
}

/** While a question is worked on: whether anybody still waits, and how far it is. */
export interface Working {
  readonly cancelled: () => boolean
  readonly tell: (share: number) => void
}

export class Cancelled extends Error {}

const ends = (time: Float64Array): { start: number; end: number } => ({ start: time[0]!, end: time.at(-1)! })

/** Answers questions about recorded runs, and holds those that were read. Files are read piece by piece and never written. */
export class RunDesk {
  private readonly held = new Map<string, Held>()
  private seen: { key: string; seen: SeenEngagement } | null = null
  private known: { text: string; axle: AxleModel; ledger: AxleLedger } | null = null

  async answer(ask: RunAsk, working: Working): Promise<RunAnswers[RunAsk['kind']]> {
    switch (ask.kind) {
      case 'look':
        return this.look(ask)
      case 'read':
        return this.read(ask, working)
      case 'lay':
        return this.lay(ask)
      case 'see':
        return this.see(ask)
      case 'scale':
        return this.scale(ask)
      case 'ride':
        return this.ride(ask)
      case 'keep':
        return this.keep(ask)
      case 'restore':
        return this.restore(ask)
      case 'close':
        this.held.delete(ask.run)
        return null
    }
  }

  private async look({ file, encoding, reading }: Extract<RunAsk, { kind: 'look' }>): Promise<Looked> {
    const bytes = new Uint8Array(await file.slice(0, ENCODING_SAMPLE).arrayBuffer())
    const used = reading?.encoding ?? encoding ?? encodingOf(bytes)
    const sample = new TextDecoder(used).decode(bytes)
    const detected = detectReading(sample, used, tokenize)
    const now = reading ?? detected.reading
    const preview = previewRows(sample, now, SHOWN_ROWS, tokenize)
    return { detected, reading: now, preview, problems: readingProblems(now, preview.columns.length), size: file.size }
  }

  private async read(ask: Extract<RunAsk, { kind: 'read' }>, { cancelled, tell }: Working): Promise<WasRead> {
    const { run, file, reading, columns, taken } = ask
    // What was held under this name makes room first.
    this.held.delete(run)
    this.seen = null
    const decoder = new TextDecoder(reading.encoding)
    const table = new TableImport(tokenize, reading, columns, taken)
    for (let at = 0; at < file.size && !table.over; at += PIECE) {
      const bytes = await file.slice(at, at + PIECE).arrayBuffer()
      if (cancelled()) throw new Cancelled()
      table.push(decoder.decode(bytes, { stream: true }))
      tell(Math.min(1, (at + PIECE) / file.size))
    }
    table.push(decoder.decode())
    const read = table.end()
    if (!read.ok) return read
    const { time, values, rows, faults, firstLines, startedAt } = read.table
    this.held.set(run, { time, values, longestPause: reading.longestPause })
    return { ok: true, rows, faults, firstLines, startedAt, ...ends(time) }
  }

  private of(run: string): Held {
    const held = this.held.get(run)
    if (held === undefined) throw new Error('the run is not held any more; open it again')
    return held
  }

  /** Settings of the axle are worked out once for many layings. */
  private axleOf({ plan, setup, axle }: LaidOver): { axle: AxleModel; ledger: AxleLedger } {
    const { runs: _, title: __, notes: ___, ...rest } = plan
    const text = `${setup} ${axle} ${JSON.stringify(rest)}`
    if (this.known?.text === text) return this.known
    const of = plan.setups.find(({ id }) => id === setup)
    if (of === undefined) throw new Error(`the plan has no setup “${setup}”`)
    const loads = setupLoads(plan, of)
    const model = loads.model.axles.find(each => each.axle.id === axle)
    const ledger = loads.ledger.find(({ id }) => id === axle)
    if (model === undefined || ledger === undefined) throw new Error(`the setup has no ${axle} axle`)
    this.known = { text, axle: model, ledger }
    return this.known
  }

  private laid({ run, place, channel, over }: Extract<RunAsk, { kind: 'lay' | 'see' }>): LaidRun | NotLaid {
    const { time, values, longestPause } = this.of(run)
    const { axle, ledger } = this.axleOf(over)
    return layRun(axle, ledger, { time, readings: values[place]!, longestPause }, channel, sayIn(over.plan.units))
  }

  private lay(ask: Extract<RunAsk, { kind: 'lay' }>): LaidWheel | NotLaid {
    const laid = this.laid(ask)
    if (!laid.ok) return laid
    const { model, rest } = this.axleOf(ask.over).axle
    const { asRecorded: _, ...plain } = laid
    return { ...plain, demand: demandOfRun(model, rest, laid.run), strokes: strokesAMinute(model, laid.run) }
  }

  /** What was seen last is known as long as the wheel is where it was, whatever else of the plan changes. */
  private see(ask: Extract<RunAsk, { kind: 'see' }>): SeenBeside | null {
    const { model } = this.axleOf(ask.over).axle
    const { lowPass: _, ...channel } = ask.channel
    const { corner, droop, bump } = model
    const key = JSON.stringify([ask.run, ask.place, channel, corner.linkage, droop, bump])
    if (this.seen?.key !== key) {
      const laid = this.laid({ ...ask, channel: { ...channel, lowPass: null } })
      if (!laid.ok) return null
      this.seen = { key, seen: seeEngagement(model, laid.asRecorded) }
    }
    const { seen } = this.seen
    const say = sayIn(ask.over.plan.units)
    return {
      words: engagementWords(seen, model.engagement, say),
      finding: engagementFinding(seen, model.engagement, say),
    }
  }

  private scale(ask: Extract<RunAsk, { kind: 'scale' }>): Scaled {
    const { time, values } = this.of(ask.run)
    const at = (moment: number) => readingAt(time, values[ask.place]!, moment)
    const [ride, droop] = [at(ask.rideHeightAt), at(ask.fullDroopAt)]
    if (ride === null) return { ok: false, why: 'nothing at ride height' }
    if (droop === null) return { ok: false, why: 'nothing at full droop' }
    const { model } = this.axleOf(ask.over).axle
    const travel = ask.measures === 'wheel' ? model.droop : model.linkage.at(model.droop).shock
    const calibration = byTravel(ride, droop, travel)
    return calibration === null ? { ok: false, why: 'no difference' } : { ok: true, calibration }
  }

  private ride({ terrain, over }: Extract<RunAsk, { kind: 'ride' }>): RiddenAsRun {
    const { axle, ledger } = this.axleOf(over)
    const outcome = ride(axle.model, terrain)
    if (!outcome.ok) return { ok: false, why: outcome.reason }
    const places = ledger.rows.flatMap(({ id, label, to }) => (to === null ? [] : [{ id, label, wheel: to }]))
    return { ok: true, figures: runFigures(axle.model, rideAsRun(outcome), places) }
  }

  private async keep(ask: Extract<RunAsk, { kind: 'keep' }>): Promise<Encoded> {
    const { time, values } = this.of(ask.run)
    const { bytes } = await encodeRun(
      {
        name: ask.name,
        source: { name: ask.source, digest: null },
        longestPause: ask.longestPause,
        time,
        channels: ask.channels.map(({ column, ...channel }, i) => ({
          ...channel,
          name: ask.columns[column]!.name,
          unit: ask.columns[column]!.unit,
          readings: values[ask.places[i]!]!,
        })),
      },
      sha256,
    )
    return bytes.byteLength > longestRun
      ? { ok: false, size: bytes.byteLength, most: longestRun }
      : { ok: true, base64: textOf(bytes) }
  }

  private async restore({ run, base64 }: Extract<RunAsk, { kind: 'restore' }>): Promise<Restored> {
    const read = await decodeRun(bytesOf(base64), sha256)
    if (!read.ok) return read
    const { time, channels, ...rest } = read.run
    this.seen = null
    this.held.set(run, { time, values: channels.map(({ readings }) => readings), longestPause: rest.longestPause })
    return {
      ok: true,
      run: { ...rest, channels: channels.map(({ readings: _, ...channel }) => channel) },
      rows: time.length,
      ...ends(time),
    }
  }
}
