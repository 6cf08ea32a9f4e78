import { run } from '../../../electron/cli/main.ts'

/** What came of a command line: exit code, and what stands on either output. */
export interface Ran {
  readonly code: number
  readonly out: string
  readonly err: string
}

/** Runs a command line in this process, as from `folder`. */
export async function ran(folder: string, ...args: readonly string[]): Promise<Ran> {
  let out = ''
  let err = ''
  const code = await run(args, {
    out: text => {
      out += text
    },
    err: text => {
      err += text
    },
    folder,
  })
  return { code, out, err }
}
