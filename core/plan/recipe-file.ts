import { z } from 'zod'
import { readingProblems } from '../runs/reading-problems.ts'
import type { Recipe } from '../runs/recipe.ts'
import { readable, readJson, unbearable } from './json-text.ts'
import { channelShape } from './kept-run-file.ts'
import { problemsOf } from './parse.ts'
import type { Problem } from './problem.ts'

/** The recipes file, version 1: how kinds of recorded files were read. SI units. */

const place = z.int().min(0).max(10_000)
const delimiter = z.enum([',', ';', '\t', '|', ' '])
const columns = z.array(z.strictObject({ name: z.string().max(200), unit: z.string().max(40).nullable() })).max(1000)

const readingSchema = z.strictObject({
  encoding: z.enum(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']),
  lineEnd: z.enum(['lf', 'crlf', 'cr']),
  delimiter,
  decimalComma: z.boolean(),
  headerRows: place,
  unitsRow: place.nullable(),
  time: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('numbers'), column: place, unit: z.number() }),
    z.strictObject({
      kind: z.literal('clock'),
      column: place,
      dates: z.enum(['year first', 'day first', 'month first']),
    }),
    z.strictObject({ kind: z.literal('rate'), rowsPerSecond: z.number() }),
  ]),
  backward: z.enum(['left out', 'goes on']),
  longestPause: z.number().nullable(),
})

const recipesSchema = z.strictObject({
  format: z.literal('stopgap-recipes'),
  version: z.literal(1),
  recipes: z
    .array(
      z.strictObject({
        name: z.string().max(200),
        fingerprint: z.strictObject({ columns, delimiter }),
        reading: readingSchema,
        channels: z.array(z.strictObject({ column: place, ...channelShape })).max(16),
      }),
    )
    .max(500),
})

export type ParsedRecipes =
  | { readonly ok: true; readonly recipes: readonly Recipe[] }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** From anything to recipes, or to the list of what is wrong with them, each at its path. Never throws. */
export function parseRecipes(value: unknown): ParsedRecipes {
  const hopeless = unbearable(value)
  if (hopeless !== null) return { ok: false, problems: [hopeless] }
  const checked = recipesSchema.safeParse(value)
  if (!checked.success)
    return { ok: false, problems: readable(checked.error.issues.flatMap(issue => problemsOf(issue, value))) }
  const { recipes } = checked.data
  // A corrected reading may cut the table into more columns than were told at first: only reading the file shows how many.
  const problems = recipes.flatMap(({ reading }, i) =>
    readingProblems(reading, Infinity).map(problem => ({ ...problem, path: `recipes[${i}].reading.${problem.path}` })),
  )
  return problems.length === 0 ? { ok: true, recipes } : { ok: false, problems: readable(problems) }
}

/** As `parseRecipes`, from the text of a file. */
export function readRecipes(text: string): ParsedRecipes {
  const read = readJson(text, 'recipes saved by Stopgap')
  return read.ok ? parseRecipes(read.value) : { ok: false, problems: [read.problem] }
}

/** The text of a recipes file; `readRecipes` of it gives the recipes back. */
export const formatRecipes = (recipes: readonly Recipe[]): string =>
  `${JSON.stringify({ format: 'stopgap-recipes', version: 1, recipes }, null, 2)}\n`
