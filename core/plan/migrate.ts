import { type Problem, quoted } from './problem.ts'

/** The version this program writes. */
const CURRENT_VERSION = 1

/**
 * One pure step a version: the entry under N turns a plan of version N into one of version N + 1.
 * Version 1 is the first; to add version 2, write the step 1 → 2 here and raise CURRENT_VERSION.
 */
const STEPS: Readonly<Record<number, (plan: Record<string, unknown>) => Record<string, unknown>>> = {}

export type Migrated = { readonly ok: true; readonly plan: unknown } | { readonly ok: false; readonly problem: Problem }

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Brings a plan of any past version to the current one; refuses what is not a plan, and versions from the future. */
export function migrate(value: unknown): Migrated {
  const refuse = (path: string, found: string, wanted: string): Migrated => ({
    ok: false,
    problem: { path, found, wanted },
  })
  if (!isObject(value)) return refuse('', quoted(value), 'a plan: a JSON object with format, version, setups and so on')
  if (value.format !== 'stopgap-plan') return refuse('format', quoted(value.format), '"stopgap-plan"')
  const version = value.version
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuse('version', quoted(version), `a whole number from 1 to ${CURRENT_VERSION}`)
  if (version > CURRENT_VERSION)
    return refuse(
      'version',
      `${version}, written by a newer Stopgap`,
      `${CURRENT_VERSION} or less: update Stopgap to open this plan`,
    )
  let plan = value
  for (let from = version; from < CURRENT_VERSION; from += 1) plan = STEPS[from]!(plan)
  return { ok: true, plan }
}
