import { parsePlan } from '../../../core/plan/parse.ts'
import type { AxleId, Plan, UnitSystem } from '../../../core/plan/schema.ts'
import { type StartingAnswers, startingPlan } from '../../../core/plan/starting.ts'
import { parseMeasure } from '../../../core/units/parse.ts'
import type { Quantity } from '../../../core/units/quantity.ts'
import { fieldTable, generic } from '../../fields/field-table.ts'
import { refusalOf } from '../../fields/refusals.ts'
import { normal } from '../../state/place.ts'

/** What a guided start has had typed into it, as text. */
export type Entry =
  | 'cornerMass'
  | 'stroke'
  | 'showing'
  | 'stopStroke'
  | 'gap'
  | 'ratioShock'
  | 'ratioStop'
  | 'rise'
  | 'shockClosed'
  | 'gapClosed'
  | 'tender'
  | 'main'

export interface StartForm {
  readonly title: string
  readonly units: UnitSystem
  readonly axle: AxleId
  readonly suspension: 'independent' | 'solid'
  readonly stop: 'yes' | 'no'
  readonly springs: 'one' | 'two'
  /** How the motion ratios are had: known, or by jacking the wheel up once. */
  readonly ratios: 'jack' | 'known'
  readonly texts: Readonly<Record<Entry, string>>
}

export const quantityOf: Readonly<Record<Entry, Quantity>> = {
  cornerMass: 'mass',
  stroke: 'length',
  showing: 'length',
  stopStroke: 'length',
  gap: 'length',
  ratioShock: 'ratio',
  ratioStop: 'ratio',
  rise: 'length',
  shockClosed: 'length',
  gapClosed: 'length',
  tender: 'rate',
  main: 'rate',
}

/** The entries that count with the choices made, in the order asked. */
export function asked({ stop, springs, ratios }: StartForm): Entry[] {
  const withStop = stop === 'yes'
  return [
    'stroke',
    'showing',
    ...(withStop ? (['stopStroke', 'gap'] as const) : []),
    ...(ratios === 'jack' ? (['rise', 'shockClosed'] as const) : (['ratioShock'] as const)),
    ...(withStop ? [ratios === 'jack' ? ('gapClosed' as const) : ('ratioStop' as const)] : []),
    ...(springs === 'two' ? (['tender'] as const) : []),
    'main',
    'cornerMass',
  ]
}

/** Entries that may be left empty: what they stand for is assumed, so that the car stands at the ride height it was measured at. */
export const OPTIONAL: ReadonlySet<Entry> = new Set(['tender', 'main', 'cornerMass'])

export type Errors = Readonly<Partial<Record<Entry, string>>>

export type Started = { readonly ok: true; readonly plan: Plan } | { readonly ok: false; readonly errors: Errors }

/** Where an answer stands in the plan, to tell which one the plan does not take. */
const answerAt: Readonly<Record<string, Entry>> = {
  'corner.cornerMass': 'cornerMass',
  'corner.shock.stroke': 'stroke',
  'corner.shock.showing': 'showing',
  'corner.stop.stroke': 'stopStroke',
  'corner.stop.gap': 'gap',
  'corner.linkage.shock': 'shockClosed',
  'corner.linkage.stop': 'gapClosed',
}

function answerFor(path: string, form: StartForm): Entry {
  const field = normal(path).replace(/^setups\.0\.axles\.0\./, '')
  const entry = answerAt[field] ?? (field.startsWith('corner.springs') ? 'main' : 'stroke')
  const ofStop = form.stop === 'yes' && entry === 'gapClosed'
  // Without a stop its ratio is that of the shock.
  if (entry === 'shockClosed' || entry === 'gapClosed')
    return form.ratios === 'known' ? (ofStop ? 'ratioStop' : 'ratioShock') : ofStop ? 'gapClosed' : 'shockClosed'
  return entry
}

/** A plan from what was typed, or what is wrong with it, entry by entry. */
export function startFrom(form: StartForm): Started {
  const errors: Partial<Record<Entry, string>> = {}
  const values: Partial<Record<Entry, number>> = {}
  for (const entry of asked(form)) {
    if (OPTIONAL.has(entry) && form.texts[entry].trim() === '') continue
    const read = parseMeasure(form.texts[entry], quantityOf[entry], form.units)
    if (read.ok) values[entry] = read.value
    else errors[entry] = read.problem
  }
  if (form.ratios === 'jack' && values.rise !== undefined && values.rise <= 0)
    errors.rise = 'The wheel has to rise. Enter how far it rose.'
  if (Object.keys(errors).length > 0) return { ok: false, errors }
  const plan = startingPlan(answersOf(form, values as Values))
  const parsed = parsePlan(plan)
  if (parsed.ok) return { ok: true, plan: parsed.plan }
  for (const problem of parsed.problems) {
    const place = normal(problem.path)
    const entry = answerFor(problem.path, form)
    const spec = fieldTable[generic(place.replace(/^setups\.0\.axles\.0\./, ''))]
    const said =
      spec === undefined
        ? { wrong: `There would be ${problem.found}.`, right: `Needed: ${problem.wanted}.` }
        : refusalOf(place, spec, form.texts[entry], [problem], form.units)
    errors[entry] ??= `${said.wrong} ${said.right}`
  }
  return { ok: false, errors }
}

/** Everything asked for has a value but what may be left empty. */
type Values = Readonly<Record<Exclude<Entry, 'tender' | 'main' | 'cornerMass'>, number>> &
  Readonly<Partial<Record<'tender' | 'main' | 'cornerMass', number>>>

function answersOf(form: StartForm, values: Values): StartingAnswers {
  const jacked = form.ratios === 'jack'
  const shock = jacked ? values.shockClosed / values.rise : values.ratioShock
  const stopRatio = jacked ? values.gapClosed / values.rise : values.ratioStop
  const hasStop = form.stop === 'yes'
  return {
    title: form.title.trim(),
    units: form.units,
    axle: form.axle,
    suspension: form.suspension,
    cornerMass: values.cornerMass ?? null,
    shockStroke: values.stroke,
    shaftShowing: values.showing,
    ratio: { shock, stop: hasStop ? stopRatio : shock },
    springRates: (form.springs === 'two' ? [values.tender, values.main] : [values.main]).map(rate => rate ?? null),
    stop: hasStop ? { stroke: values.stopStroke, gap: values.gap } : null,
  }
}
