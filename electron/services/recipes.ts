import { z } from 'zod'
import { formatRecipes, parseRecipes, readRecipes } from '../../core/plan/recipe-file.ts'
import type { Reply, Request } from '../contract/contract.ts'
import type { LatestWriter } from './latest-writer.ts'
import { reason } from './reason.ts'
import { readStored } from './stored.ts'

const schema = z.custom<unknown>(value => parseRecipes(value).ok)

/** How kinds of recorded files are read, remembered from one run to the next. */
export function storedRecipes(file: string, writer: LatestWriter, report: (sentence: string) => void) {
  async function read(): Promise<string> {
    const found = await readStored(file, schema, 'The list of recipes for recorded files')
    if (found.kind === 'lost') report(found.report)
    const parsed = parseRecipes(found.kind === 'value' ? found.value : null)
    return formatRecipes(parsed.ok ? parsed.recipes : [])
  }

  async function keep({ text }: Request<'keepRecipes'>): Promise<Reply<'keepRecipes'>> {
    const failed = (why: string): Reply<'keepRecipes'> => ({
      kind: 'failed',
      reason: `How this kind of file is read could not be remembered: ${why}.`,
    })
    const checked = readRecipes(text)
    if (!checked.ok) {
      const [first] = checked.problems
      return failed(
        first === undefined ? 'it is not a recipe' : `${first.path} is ${first.found}; it should be ${first.wanted}`,
      )
    }
    try {
      await writer.write(file, formatRecipes(checked.recipes))
      return { kind: 'kept' }
    } catch (error) {
      return failed(reason(error))
    }
  }

  return { read, keep }
}

export type RecipeStore = ReturnType<typeof storedRecipes>
