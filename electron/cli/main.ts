#!/usr/bin/env node
import { realpathSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { CommanderError } from 'commander'
import type { Io } from './io.ts'
import { printable } from './printable.ts'
import { program } from './program.ts'

/** Exit code of everything that could not be done as asked: a wrong command line, a file that cannot be read, a plan that is not right. */
const REFUSED = 2

/**
 * The command line, as a function: nothing is written but through `io`, nothing ends the process.
 * @param args what stands behind the program's name
 * @returns the exit code
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  try {
    return await program(io, args)
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : REFUSED
    throw error
  }
}

const isEntry = (): boolean => {
  const started = process.argv[1]
  return started !== undefined && pathToFileURL(realpathSync(started)).href === import.meta.url
}

if (isEntry()) {
  // A reader that has seen enough (`| head`) closes the pipe; that is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
  process.exitCode = await run(process.argv.slice(2), {
    out: text => process.stdout.write(printable(text)),
    err: text => process.stderr.write(printable(text)),
    ...(process.stderr.isTTY && { progress: (line: string) => process.stderr.write(`\r\x1b[K${printable(line)}`) }),
    folder: process.env.INIT_CWD ?? process.cwd(),
  })
}
