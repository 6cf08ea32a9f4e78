import type { Command } from 'commander'
import type { Plan } from '../../core/plan/schema.ts'
import { loadsJson } from './loads-json.ts'
import { loadsText } from './loads-text.ts'

/** What a command prints about a plan; a sentence instead of a text when it cannot. */
export type Printed = { readonly text: string } | { readonly problem: string }

interface Options {
  readonly json?: true
  readonly together?: readonly string[]
}

/** The ids after `--together`, none of them unknown. */
function unknown(plan: Plan, chosen: readonly string[] | undefined): string | null {
  const missing = chosen?.find(id => !plan.loads.some(load => load.id === id))
  if (missing === undefined) return null
  const ids = plan.loads.map(({ id }) => id)
  return `There is no load “${missing}” in this plan. ${ids.length === 0 ? 'It has none.' : `It has ${ids.join(', ')}.`}\n`
}

/**
 * Adds `loads PLAN` to the command line.
 * @param print opens the plan and prints what the function makes of it
 */
export function addLoadsCommand(
  stopgap: Command,
  print: (file: string, make: (plan: Plan) => Printed) => Promise<void>,
): void {
  stopgap
    .command('loads')
    .description(
      'Show what each load takes out of the travel before the stop, what they take together, and what is left.',
    )
    .argument('<plan>', 'A plan file.')
    .option('--json', 'For programs: SI units, every digit.')
    .option(
      '--together <ids>',
      'Loads to take together, by id, with commas between; all if not given.',
      (ids: string) => ids.split(',').map(id => id.trim()),
    )
    .action((file: string, { json, together }: Options) =>
      print(file, plan => {
        const problem = unknown(plan, together)
        if (problem !== null) return { problem }
        return {
          text: json ? `${JSON.stringify(loadsJson(plan, together), null, 2)}\n` : loadsText(plan, together),
        }
      }),
    )
}
