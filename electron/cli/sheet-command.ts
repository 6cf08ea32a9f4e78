import { homedir } from 'node:os'
import { extname, resolve } from 'node:path'
import type { Command } from 'commander'
import { GENERIC_SHELF } from '../../core/changes/shelf.ts'
import type { AxleId, Plan } from '../../core/plan/schema.ts'
import type { Paper } from '../../renderer/sheets/page/paper.ts'
import type { SheetKind } from '../../renderer/sheets/request.ts'
import { browserPlaces, installedBrowser } from '../browser-host/browsers.ts'
import { printWithBrowser } from '../browser-host/print.ts'
import { reason, refusal } from '../services/reason.ts'
import { writeAtomically } from '../services/write-atomically.ts'
import type { Printed } from './loads-command.ts'
import { openShelf } from './open-shelf.ts'

interface Options {
  readonly output: string
  readonly sheet?: string
  readonly paper: string
  readonly axle?: string
  readonly before?: string
  readonly after?: string
  readonly shelf?: string
}

const among = <Name extends string>(name: string, names: readonly Name[]): Name | null =>
  names.find(each => each === name) ?? null

const wrong = (problem: string): Printed => ({ problem: `${problem}\n` })

const FORMATS = ['.pdf', '.html', '.svg'] as const

async function made(plan: Plan, options: Options, folder: string): Promise<Printed> {
  const format = among(extname(options.output).toLowerCase(), FORMATS)
  if (format === null)
    return wrong(`${options.output} has to end in .pdf, .html or .svg: the ending says what to make.`)
  const paper = among<Paper>(options.paper.toLowerCase(), ['a4', 'letter'])
  if (paper === null) return wrong(`There is no paper “${options.paper}” here. Give a4 or letter.`)
  const kind = options.sheet === undefined ? undefined : among<SheetKind>(options.sheet, ['customer', 'shop'])
  if (kind === null)
    return wrong(`There is no sheet “${options.sheet}”. Give customer or shop; without it, both are made.`)
  const axle = options.axle === undefined ? undefined : among<AxleId>(options.axle, ['front', 'rear'])
  if (axle === null) return wrong(`There is no axle “${options.axle}”. Give front or rear.`)
  // Only who asks for a sheet waits for what draws it.
  const { usualAxle, usualPair } = await import('../../renderer/sheets/request.ts')
  const { sheetHtml, sheetSvg } = await import('../../renderer/sheets/sheet-file.tsx')
  const usual = usualPair(plan, axle)
  const { before = usual.before, after = usual.after } = options
  const shelf = options.shelf === undefined ? GENERIC_SHELF : await openShelf(options.shelf, folder)
  if ('problem' in shelf) return shelf
  const request = { plan, axle: axle ?? usualAxle(plan, before, after), before, after, paper, shelf, date: null }
  const kinds: readonly SheetKind[] = kind === undefined ? ['customer', 'shop'] : [kind]
  const sheet = (format === '.svg' ? sheetSvg : sheetHtml)(request, kinds)
  if (!sheet.ok) return wrong(sheet.problem)
  const path = resolve(folder, options.output)
  try {
    if (format === '.pdf') {
      const browser = installedBrowser(browserPlaces(process.platform, process.env, homedir()))
      if (browser === null)
        return wrong(
          'A PDF is printed by a browser, and none was found here. Install Chrome, Chromium, Edge or Brave, or name one in STOPGAP_BROWSER; or ask for .html and print that.',
        )
      await writeAtomically(path, await printWithBrowser(browser, sheet.text))
    } else await writeAtomically(path, sheet.text)
  } catch (error) {
    const why = refusal(error) === null && error instanceof Error ? error.message : reason(error)
    return wrong(`${options.output} could not be made: ${why}.`)
  }
  return { text: `${kinds.length === 1 ? `The ${kinds[0]} sheet is` : 'Both sheets are'} in ${options.output}.\n` }
}

/**
 * Adds `sheet PLAN -o FILE` to the command line.
 * @param print opens the plan and prints what the function makes of it
 * @param folder where file names are taken from
 */
export function addSheetCommand(
  stopgap: Command,
  print: (file: string, make: (plan: Plan) => Promise<Printed>) => Promise<void>,
  folder: string,
): void {
  stopgap
    .command('sheet')
    .description('Make the customer sheet and the shop sheet, one page each, before and after.')
    .argument('<plan>', 'A plan file.')
    .requiredOption('-o, --output <file>', 'Where to put them. Its ending says what it becomes: .pdf, .html or .svg.')
    .option('--sheet <name>', 'Only one: customer or shop.')
    .option('--paper <size>', 'a4 or letter.', 'letter')
    .option('--axle <id>', 'front or rear; the one that changes if not given.')
    .option('--before <id>', 'The setup to compare with; the first if not given.')
    .option('--after <id>', 'The setup to show; the next that differs if not given.')
    .option('--shelf <file>', 'Tubes a spacer may be cut from: a shelf exported from the window. Else generic sizes.')
    .action((file: string, options: Options) => print(file, plan => made(plan, options, folder)))
}
