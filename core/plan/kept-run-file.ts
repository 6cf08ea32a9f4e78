import { z } from 'zod'
import type { KeptRun, Sha256 } from '../runs/kept-run.ts'
import { MOST_PLACES, packed, packingOf, unpacked } from '../runs/packed.ts'
import { MOST_ROWS } from '../runs/table-import.ts'
import { planSchema } from './schema.ts'

/**
 * The file of a kept run, version 1. In bytes, one after the other:
 *
 * 1. the line `stopgap-run 1`, and a line with the length of the head in bytes, each ended by a line feed;
 * 2. the head: JSON in ASCII, others escaped, as `headSchema` below has it;
 * 3. the times, then each channel's readings, packed as the head says of each (core/runs/packed.ts says how);
 * 4. SHA-256 (FIPS 180-4) of all before, 32 bytes.
 */

const FIRST_LINE = 'stopgap-run 1\n'
const ANY_VERSION = /^stopgap-run (\d+)\n/
const SEAL = 32
const LONGEST_HEAD = 1_000_000

const number = z.number().min(-1e12).max(1e12)
const name = planSchema.shape.title
const packing = z.discriminatedUnion('as', [
  z.strictObject({ as: z.literal('steps'), places: z.int().min(0).max(MOST_PLACES), bytes: z.int().min(0) }),
  z.strictObject({ as: z.literal('float64'), bytes: z.int().min(0) }),
])

/** What is said of a channel, in a kept run and in a recipe. */
export const channelShape = {
  axle: z.enum(['front', 'rear']),
  side: z.enum(['left', 'right', 'both']),
  measures: z.enum(['shaft', 'wheel']),
  /** m for one of the reading's unit, and m. */
  calibration: z.strictObject({ scale: number, offset: number }),
  rideHeightAt: number.nullable(),
  fullDroopAt: number.nullable(),
  /** Hz */
  lowPass: z.number().min(1e-3).max(1e6).nullable(),
}

const headSchema = z.strictObject({
  name,
  source: z.strictObject({
    name: z.string().max(255),
    digest: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .nullable(),
  }),
  longestPause: z.number().min(1e-9).max(1e9).nullable(),
  rows: z.int().min(1).max(MOST_ROWS),
  time: packing,
  channels: z
    .array(z.strictObject({ name, unit: z.string().max(40).nullable(), ...channelShape, readings: packing }))
    .min(1)
    .max(16),
})

const hex = (bytes: Uint8Array): string => Array.from(bytes, byte => byte.toString(16).padStart(2, '0')).join('')

const ascii = (text: string): Uint8Array => Uint8Array.from(text, letter => letter.charCodeAt(0))
const escaped = (text: string): string =>
  text.replace(/[^ -~]/g, letter => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`)

/** The file of a run, and the SHA-256 of all of it in hexadecimal, by which a plan knows it. */
export async function encodeRun(
  { time, channels, ...run }: KeptRun,
  sha256: Sha256,
): Promise<{ readonly bytes: Uint8Array<ArrayBuffer>; readonly digest: string }> {
  const lists = [time, ...channels.map(({ readings }) => readings)].map(list => {
    const how = packingOf(list)
    const bytes = packed(list, how)
    return { bytes, packing: { ...how, bytes: bytes.length } }
  })
  const head: z.infer<typeof headSchema> = {
    ...run,
    rows: time.length,
    time: lists[0]!.packing,
    channels: channels.map((channel, i) => ({ ...channel, readings: lists[i + 1]!.packing })),
  }
  const text = ascii(escaped(JSON.stringify(head)))
  const parts = [ascii(`${FIRST_LINE}${text.length}\n`), text, ...lists.map(({ bytes }) => bytes)]
  const length = parts.reduce((sum, part) => sum + part.length, 0)
  const bytes = new Uint8Array(length + SEAL)
  let at = 0
  for (const part of parts) {
    bytes.set(part, at)
    at += part.length
  }
  bytes.set(await sha256(bytes.slice(0, length)), length)
  return { bytes, digest: hex(await sha256(bytes)) }
}

export type DecodedRun =
  | { readonly ok: true; readonly run: KeptRun; readonly digest: string }
  /** `why` follows a colon. */
  | { readonly ok: false; readonly why: string }

const refuse = (why: string): DecodedRun => ({ ok: false, why })
const text = (bytes: Uint8Array): string => Array.from(bytes, byte => String.fromCharCode(byte)).join('')

/** Whether bytes begin as a kept run does, of whatever version. */
export const isKeptRun = (bytes: Uint8Array): boolean => ANY_VERSION.test(text(bytes.subarray(0, 24)))

/** The run in a file, or what is wrong with it. Never throws; what the file claims is believed of nothing before its checksum. */
export async function decodeRun(bytes: Uint8Array<ArrayBuffer>, sha256: Sha256): Promise<DecodedRun> {
  const start = text(bytes.subarray(0, FIRST_LINE.length + 10))
  const version = ANY_VERSION.exec(start)?.[1]
  if (version === undefined) return refuse('it is not a run kept by Stopgap')
  if (!start.startsWith(FIRST_LINE))
    return refuse(`it is a kept run of version ${version}, and this Stopgap reads version 1: update Stopgap to open it`)
  const length = bytes.length - SEAL
  const damaged = 'it is damaged: its checksum is not that of its content'
  if (length <= FIRST_LINE.length || hex(await sha256(bytes.slice(0, length))) !== hex(bytes.subarray(length)))
    return refuse(damaged)
  const claimed = /^(\d{1,7})\n/.exec(start.slice(FIRST_LINE.length))
  const from = FIRST_LINE.length + (claimed?.[0].length ?? 0)
  const long = Number(claimed?.[1] ?? Number.NaN)
  if (!(long <= LONGEST_HEAD && from + long <= length)) return refuse('the length of its head is not right')
  const head = headIn(text(bytes.subarray(from, from + long)))
  if (typeof head === 'string') return refuse(head)
  const { rows, time: timePacking, channels, ...run } = head
  const packings = [timePacking, ...channels.map(({ readings }) => readings)]
  const lists: Float64Array[] = []
  let at = from + long
  for (const how of packings) {
    const list = at + how.bytes <= length ? unpacked(bytes.subarray(at, at + how.bytes), how, rows) : null
    if (list === null) return refuse('its numbers are not as many as its head says')
    lists.push(list)
    at += how.bytes
  }
  if (at !== length) return refuse('its numbers are not as many as its head says')
  const [time, ...readings] = lists as [Float64Array, ...Float64Array[]]
  if (!time.every((now, i) => Number.isFinite(now) && (i === 0 || now > time[i - 1]!)))
    return refuse('its times do not rise from row to row')
  if (readings.some(list => list.some(value => Math.abs(value) === Infinity))) return refuse('a reading is no number')
  return {
    ok: true,
    run: { ...run, time, channels: channels.map((channel, i) => ({ ...channel, readings: readings[i]! })) },
    digest: hex(await sha256(bytes)),
  }
}

function headIn(json: string): z.infer<typeof headSchema> | string {
  let value: unknown
  try {
    value = JSON.parse(json)
  } catch (error) {
    return `its head is not JSON (${error instanceof Error ? error.message : String(error)})`
  }
  const checked = headSchema.safeParse(value)
  if (checked.success) return checked.data
  const [issue] = checked.error.issues
  return `its head is not right: ${issue!.path.join('.')}, ${issue!.message}`
}
