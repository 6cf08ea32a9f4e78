import { resolve } from 'node:path'
import { Command } from 'commander'
import { planJsonSchema } from '../../core/plan/json-schema.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { budgetJson } from './budget-json.ts'
import { budgetText } from './budget-text.ts'
import { checkRunsText } from './check-runs.ts'
import { checkText } from './check-text.ts'
import type { Io } from './io.ts'
import { addLoadsCommand, type Printed } from './loads-command.ts'
import { addLogCommand } from './log-command.ts'
import { openPlan } from './open-plan.ts'
import { paragraph } from './paragraph.ts'
import { addProposeCommand } from './propose-command.ts'
import { addRideCommand } from './ride-command.ts'
import { addSheetCommand } from './sheet-command.ts'
import { sureBudgetJson } from './sure-json.ts'
import { sureText } from './sure-text.ts'

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`

const about = paragraph(
  "Stopgap works out what an off-road car's wheel travel is spent on: the coilover alone, then coilover and bump stop together, and what ends it.",
).trimEnd()

const after = `\n${paragraph(
  'A plan is a file that ends in .stopgap, saved from the Stopgap window or written by hand. Exit code 0: done. 2: not done, and why is on the error output.',
).trimEnd()}`

/** Commander's own words for a wrong command line, as sentences. */
function sentences(text: string): string {
  const said = text.replace(/^error: /, '').trim()
  const ended = said.replace(/\.?(?:\n\((Did you mean .*\?)\))?$/s, (_, guess: string | undefined) =>
    guess === undefined ? '.' : `. ${guess}`,
  )
  return `${ended.charAt(0).toUpperCase()}${ended.slice(1)}\n`
}

/**
 * Reads the command line and does what it says. Commander throws for help and for a wrong command line.
 * @returns the exit code
 */
export async function program(io: Io, args: readonly string[]): Promise<number> {
  let code = 0
  /** What a command prints about a plan; a plan that cannot be used is explained, and nothing printed. */
  const print = async (file: string, text: (plan: Plan) => string | Printed | Promise<Printed>): Promise<void> => {
    const opened = await openPlan(file, io.folder)
    const made = opened.ok ? await text(opened.plan) : { problem: opened.complaint }
    if (typeof made === 'string') io.out(made)
    else if ('text' in made) io.out(made.text)
    else {
      io.err(made.problem)
      code = 2
    }
  }
  const stopgap = new Command('stopgap')
    .description(about)
    .addHelpText('after', after)
    .helpOption('-h, --help', 'Show this help.')
    .helpCommand('help [command]', 'Show help, of one command if it is named.')
    .showHelpAfterError('Run “stopgap --help” to see what there is.')
    .configureOutput({
      writeOut: io.out,
      writeErr: io.err,
      outputError: (text, write) => write(sentences(text)),
      getOutHelpWidth: () => 80,
      getErrHelpWidth: () => 80,
    })
    .exitOverride()
  // Commands take over these settings when they are made.
  stopgap
    .command('check')
    .description('Say whether a plan can be used, and if not, every value that is wrong.')
    .argument('<plan>', 'A plan file.')
    .action((file: string) =>
      print(file, async plan => {
        const runs = await checkRunsText(resolve(io.folder, file), plan)
        return { text: `${checkText(file, plan)}${runs}` }
      }),
    )
  stopgap
    .command('budget')
    .description('Show what the wheel travel of each setup and axle is spent on, and what is wrong.')
    .argument('<plan>', 'A plan file.')
    .option('--sure', 'Show how sure it is: what it may be with every measurement within its tolerance.')
    .option('--json', 'For programs: SI units, every digit.')
    .action((file: string, { json: asJson, sure }: { json?: true; sure?: true }) =>
      print(file, plan => {
        if (!sure) return asJson ? json(budgetJson(plan)) : budgetText(plan)
        const tell = (line: string) => io.progress?.(line)
        const text = asJson ? json(sureBudgetJson(plan, tell)) : sureText(plan, tell)
        tell('')
        return text
      }),
    )
  addLoadsCommand(stopgap, print)
  addRideCommand(stopgap, print, io.folder)
  addProposeCommand(stopgap, print, io)
  addSheetCommand(stopgap, print, io.folder)
  addLogCommand(stopgap, print, io)
  stopgap
    .command('schema')
    .description('Print the JSON Schema of the plan file, for editors and programs.')
    .action(() => io.out(json(planJsonSchema())))
  await stopgap.parseAsync(args, { from: 'user' })
  return code
}
