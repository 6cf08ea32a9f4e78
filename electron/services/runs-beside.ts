import { readFile, realpath, stat } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { KEPT_ENDING } from '../../core/runs/kept-run.ts'
import type { Reply, Request } from '../contract/contract.ts'
import { planName } from '../contract/plan-text.ts'
import { longestRun } from '../contract/recording.ts'
import { oddSign } from './file-name.ts'
import { isInside } from './folders.ts'
import { digest } from './plan-file.ts'
import { reason, refusal } from './reason.ts'
import type { Shelves } from './shelves.ts'
import { writeAtomically } from './write-atomically.ts'

/** Bytes of the plan's name, and of the run's, that go into the file's: with both it stays within what systems take. */
const mostBytes = 90
/** Runs of one name beside one plan. */
const mostAlike = 1000

const tooLarge = `it is larger than ${longestRun / 1024 / 1024} MB`

const planFileOf = (token: string, shelves: Shelves): string | null => {
  const thing = shelves.tokens.find(token)
  return thing?.kind === 'file' ? thing.path : null
}

/** As every system can have it in a file's name. */
const plain = (name: string): string => {
  const clean = name.replace(new RegExp(oddSign, 'g'), ' ').replaceAll('.', ' ').replace(/\s+/g, ' ').trim()
  return Buffer.from(clean)
    .subarray(0, mostBytes)
    .toString()
    .replace(/\ufffd+$/, '')
    .trim()
}

const notKept = (name: string, why: string): { kind: 'failed'; reason: string } => ({
  kind: 'failed',
  reason: `The run “${name}” could not be kept beside the plan: ${why}.`,
})

/** Writes a run beside its plan, under a name that is free. A file that holds the same already is taken as it is. */
export async function keepBeside(planFile: string, name: string, content: Uint8Array): Promise<Reply<'keepRun'>> {
  if (content.byteLength > longestRun) return notKept(name, tooLarge)
  const folder = dirname(planFile)
  const is = digest(content)
  const called = [plain(planName(basename(planFile))), plain(name)].filter(part => part !== '').join(', ') || 'run'
  try {
    for (let n = 1; n <= mostAlike; n += 1) {
      const file = `${called}${n === 1 ? '' : ` ${n}`}${KEPT_ENDING}`
      const there = await contentOf(join(folder, file))
      if (there === null) await writeAtomically(join(folder, file), content)
      if (there === null || digest(there) === is) return { kind: 'kept', file, digest: is }
    }
  } catch (error) {
    return notKept(name, refusal(error) === 'ENOENT' ? 'its folder has been moved, renamed or deleted' : reason(error))
  }
  return notKept(name, `there are ${mostAlike} runs of that name; give it another`)
}

/** As `keepBeside`, for a plan's file the window knows by its token. */
export async function keepRun(
  { token, name, base64 }: Request<'keepRun'>,
  shelves: Shelves,
): Promise<Reply<'keepRun'>> {
  const planFile = planFileOf(token, shelves)
  if (planFile === null) return notKept(name, 'Stopgap does not know the plan’s file any more; save the plan first')
  return keepBeside(planFile, name, Buffer.from(base64, 'base64'))
}

/** What is in a file; null when nothing is there. Throws what the system says. */
export async function contentOf(path: string): Promise<Uint8Array | null> {
  try {
    return await readFile(path)
  } catch (error) {
    if (refusal(error) === 'ENOENT') return null
    throw error
  }
}

export type RunBeside =
  | { readonly kind: 'run'; readonly content: Buffer }
  | { readonly kind: 'changed'; readonly content: Buffer; readonly digest: string; readonly reason: string }
  | Missing

/** `why` follows a colon, `reason` is the whole sentence. */
interface Missing {
  readonly kind: 'missing'
  readonly why: string
  readonly reason: string
}

/** Reads a run from beside its plan, and says whether it is what the plan says it is. @param known as the plan has it */
export async function openBeside(
  planFile: string,
  known: { readonly file: string; readonly digest: string },
): Promise<RunBeside> {
  const folder = dirname(planFile)
  const { file } = known
  try {
    const path = await realpath(join(folder, ...file.split('/')))
    if (!isInside(await realpath(folder), path)) return notOpened(file, 'it is not in the plan’s folder')
    const found = await stat(path)
    if (!found.isFile()) return notOpened(file, 'it is not a file')
    if (found.size > longestRun) return notOpened(file, tooLarge)
    const content = await readFile(path)
    if (content.byteLength > longestRun) return notOpened(file, tooLarge)
    const is = digest(content)
    if (is === known.digest) return { kind: 'run', content }
    const reason = `The run in “${file}” has changed since it was kept: it is not the one the plan means.`
    return { kind: 'changed', content, digest: is, reason }
  } catch (error) {
    return notOpened(file, reason(error))
  }
}

const notOpened = (file: string, why: string): Missing => ({
  kind: 'missing',
  why,
  reason: `The run in “${file}” could not be opened: ${why}.`,
})

/** As `openBeside`, for a plan's file the window knows by its token. */
export async function openRun(request: Request<'openRun'>, shelves: Shelves): Promise<Reply<'openRun'>> {
  const planFile = planFileOf(request.token, shelves)
  const opened =
    planFile === null
      ? notOpened(request.file, 'Stopgap does not know the plan’s file any more; open the plan again')
      : await openBeside(planFile, request)
  if (opened.kind === 'missing') return { kind: 'missing', reason: opened.reason }
  const { content, ...rest } = opened
  return { ...rest, base64: content.toString('base64') }
}
