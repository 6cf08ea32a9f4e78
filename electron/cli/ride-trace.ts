import type { SetupRide } from '../../core/ride/plan-ride.ts'
import type { RideTrace } from '../../core/ride/results.ts'

/** Columns of a trace file: what is written over each, and where it comes from. */
const COLUMNS: readonly (readonly [string, keyof RideTrace])[] = [
  ['time (s)', 'time'],
  ['wheel (m)', 'wheel'],
  ['road (m)', 'road'],
  ['chassis (m)', 'chassis'],
  ['suspension force at the wheel (N)', 'suspensionForce'],
  ['force along the stop (N)', 'stopForce'],
  ['tire force (N)', 'tireForce'],
  ['chassis acceleration (m/s^2)', 'chassisAcceleration'],
]

/**
 * Words as a cell of a CSV file (RFC 4180). What a spreadsheet would take for a formula gets an apostrophe before it, as is
 * common practice.
 */
export function csvWords(words: string): string {
  const plain = /^[=+\-@\t\r]/.test(words) ? `'${words}` : words
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain
}

/** A number to nine digits, which no measurement has. */
const csvNumber = (value: number): string => String(Number(value.toPrecision(9)))

/** Every setup and axle that was driven, moment by moment, as CSV: SI units, named in the head. */
export function rideTrace(setups: readonly SetupRide[]): string {
  const lines = [['setup', 'axle', ...COLUMNS.map(([head]) => head)].map(csvWords).join(',')]
  for (const setup of setups)
    for (const { id, outcome } of setup.axles) {
      if (!outcome.ok) continue
      const { trace } = outcome
      const begin = `${csvWords(setup.id)},${csvWords(id)}`
      for (let i = 0; i < trace.time.length; i += 1)
        lines.push(`${begin},${COLUMNS.map(([, name]) => csvNumber(trace[name][i]!)).join(',')}`)
    }
  return `${lines.join('\n')}\n`
}
