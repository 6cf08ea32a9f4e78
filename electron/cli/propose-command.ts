import type { Command } from 'commander'
import { type Proposals, propose, proposed } from '../../core/changes/propose.ts'
import { type Ranges, usualRanges, widerRanges } from '../../core/changes/ranges.ts'
import { GENERIC_SHELF, tubesOf } from '../../core/changes/shelf.ts'
import type { Plan, Setup } from '../../core/plan/schema.ts'
import type { Printed } from './loads-command.ts'
import { proposeJson } from './propose-json.ts'
import { proposeText } from './propose-text.ts'

interface Options {
  readonly axle?: string
  readonly setup?: string
  readonly json?: true
}

const listOf = (ids: readonly string[]): string => (ids.length === 0 ? 'none' : ids.join(', '))

/** The setup to go from: the one named, or the first, what was found. */
function setupOf(plan: Plan, id: string | undefined): Setup | { readonly problem: string } {
  const setup = id === undefined ? plan.setups[0] : plan.setups.find(each => each.id === id)
  const ids = plan.setups.map(each => each.id)
  return setup ?? { problem: `There is no setup “${id}” in this plan. It has ${listOf(ids)}.\n` }
}

function made(plan: Plan, { axle: id, setup: from, json }: Options): Printed {
  const setup = setupOf(plan, from)
  if ('problem' in setup) return setup
  const ids = setup.axles.map(each => each.id)
  if (id === undefined) return { problem: `For which axle? Give an --axle: this setup has ${listOf(ids)}.\n` }
  const axle = setup.axles.find(each => each.id === id)
  if (axle === undefined) return { problem: `There is no axle “${id}” in this setup. It has ${listOf(ids)}.\n` }
  const sizes = tubesOf(GENERIC_SHELF)
  const look = (ranges: Ranges): Proposals => proposed(propose(axle, plan, ranges))
  const usual = look(usualRanges(axle.corner, sizes))
  const wider = usual.feasible === 0 ? look(widerRanges(axle.corner, sizes)) : usual
  const oil = wider.feasible > usual.feasible
  const found = oil ? wider : usual
  return {
    text: json
      ? `${JSON.stringify(proposeJson(setup, axle, found), null, 2)}\n`
      : proposeText(plan, setup, axle, found, oil),
  }
}

/**
 * Adds `propose PLAN --axle ID` to the command line.
 * @param print opens the plan and prints what the function makes of it
 */
export function addProposeCommand(
  stopgap: Command,
  print: (file: string, make: (plan: Plan) => Printed) => Promise<void>,
): void {
  stopgap
    .command('propose')
    .description('Look for changes that meet the targets of the plan, and show what each would cost.')
    .argument('<plan>', 'A plan file.')
    .option('--axle <id>', 'The axle to change: front or rear.')
    .option('--setup <id>', 'The setup to change, by its id; the first if not given.')
    .option('--json', 'For programs: SI units, every digit.')
    .action((file: string, options: Options) => print(file, plan => made(plan, options)))
}
