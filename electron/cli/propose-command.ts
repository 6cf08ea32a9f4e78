import type { Command } from 'commander'
import { type Progress, type Proposals, propose } from '../../core/changes/propose.ts'
import { type Ranges, rangesOf } from '../../core/changes/ranges.ts'
import { GENERIC_SHELF, type Shelf } from '../../core/changes/shelf.ts'
import { firstChosen, widerRanges } from '../../core/changes/usual-ranges.ts'
import type { Axle, Plan, Setup } from '../../core/plan/schema.ts'
import type { Io } from './io.ts'
import type { Printed } from './loads-command.ts'
import { openShelf } from './open-shelf.ts'
import { proposeJson } from './propose-json.ts'
import { type Looked, proposeText } from './propose-text.ts'

interface Options {
  readonly axle?: string
  readonly setup?: string
  readonly shelf?: string
  readonly json?: true
}

const listOf = (ids: readonly string[]): string => (ids.length === 0 ? 'none' : ids.join(', '))

/** The setup to go from: the one named, or the first, what was found. */
function setupOf(plan: Plan, id: string | undefined): Setup | { readonly problem: string } {
  const setup = id === undefined ? plan.setups[0] : plan.setups.find(each => each.id === id)
  const ids = plan.setups.map(each => each.id)
  return setup ?? { problem: `There is no setup “${id}” in this plan. It has ${listOf(ids)}.\n` }
}

interface Look {
  readonly found: Proposals
  readonly what: Looked
}

/**
 * What is looked at: the ranges kept in the plan, where somebody chose them; else what is usual, with the parts of the user’s own shelf, and
 * oil taken out as well where nothing without does.
 */
function look(plan: Plan, axle: Axle, shelf: Shelf, run: (ranges: Ranges) => Proposals): Look {
  const { corner } = axle
  const chosen = plan.ranges?.[axle.id]
  if (chosen !== undefined) return { found: run(rangesOf(corner, chosen, shelf)), what: { chosen: true, oil: false } }
  const usual = run(rangesOf(corner, firstChosen(corner, shelf, plan.units), shelf))
  if (usual.feasible > 0) return { found: usual, what: { chosen: false, oil: false } }
  const wider = run(widerRanges(corner, shelf, plan.units))
  const oil = wider.feasible > 0
  return { found: oil ? wider : usual, what: { chosen: false, oil } }
}

function made(plan: Plan, { axle: id, setup: from, json }: Options, shelf: Shelf, tell: Io['progress']): Printed {
  const setup = setupOf(plan, from)
  if ('problem' in setup) return setup
  const ids = setup.axles.map(each => each.id)
  if (id === undefined) return { problem: `For which axle? Give an --axle: this setup has ${listOf(ids)}.\n` }
  const axle = setup.axles.find(each => each.id === id)
  if (axle === undefined) return { problem: `There is no axle “${id}” in this setup. It has ${listOf(ids)}.\n` }
  const { found, what } = look(plan, axle, shelf, ranges => run(propose(axle, plan, ranges), tell))
  return {
    text: json
      ? `${JSON.stringify(proposeJson(setup, axle, found), null, 2)}\n`
      : proposeText(plan, setup, axle, found, what),
  }
}

/** Candidates between two words on how far they have come. */
const TOLD_EVERY = 50

function run(steps: Generator<Progress, Proposals>, tell: Io['progress']): Proposals {
  for (;;) {
    const step = steps.next()
    if (step.done) {
      tell?.('')
      return step.value
    }
    const { done, of } = step.value
    if (done % TOLD_EVERY === 0) tell?.(`Combination ${done.toLocaleString('en-US')} of ${of.toLocaleString('en-US')}`)
  }
}

/**
 * Adds `propose PLAN --axle ID` to the command line.
 * @param print opens the plan and prints what the function makes of it
 * @param io where a shelf's name is taken from, and where to tell how far it has come
 */
export function addProposeCommand(
  stopgap: Command,
  print: (file: string, make: (plan: Plan) => Printed | Promise<Printed>) => Promise<void>,
  { folder, progress }: Pick<Io, 'folder' | 'progress'>,
): void {
  stopgap
    .command('propose')
    .description('Look for changes that meet the targets of the plan, and show what each would cost.')
    .argument('<plan>', 'A plan file.')
    .option('--axle <id>', 'The axle to change: front or rear.')
    .option('--setup <id>', 'The setup to change, by its id; the first if not given.')
    .option(
      '--shelf <file>',
      'Stops, springs and tubes to take from: a shelf exported from the window. Else generic sizes.',
    )
    .option('--json', 'For programs: SI units, every digit.')
    .action((file: string, options: Options) =>
      print(file, async plan => {
        const shelf = options.shelf === undefined ? GENERIC_SHELF : await openShelf(options.shelf, folder)
        return 'problem' in shelf ? shelf : made(plan, options, shelf, progress)
      }),
    )
}
