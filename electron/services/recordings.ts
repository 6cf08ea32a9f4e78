import { open, stat } from 'node:fs/promises'
import { basename } from 'node:path'
import type { Reply, Request } from '../contract/contract.ts'
import { recordingPiece } from '../contract/recording.ts'
import { reason } from './reason.ts'
import type { Tokens } from './tokens.ts'

const notRead = (name: string, why: string) =>
  ({ kind: 'failed', reason: `“${name}” could not be opened: ${why}.` }) as const

/** A recording the person chose in a dialog of the host: the window may read it, and nothing else. */
export async function chosenRecording(path: string, tokens: Tokens): Promise<Reply<'openRecording'>> {
  const name = basename(path)
  try {
    const found = await stat(path)
    if (!found.isFile()) return notRead(name, 'it is not a file')
    return { kind: 'recording', token: tokens.give({ kind: 'recording', path }), name, size: found.size }
  } catch (error) {
    return notRead(name, reason(error))
  }
}

/** A piece of it, shorter than the others at its end. */
export async function pieceOf(
  { token, at }: Request<'recordingPiece'>,
  tokens: Tokens,
): Promise<Reply<'recordingPiece'>> {
  const thing = tokens.find(token)
  if (thing?.kind !== 'recording') return notRead('The recording', 'Stopgap does not know it any more; choose it again')
  try {
    const file = await open(thing.path, 'r')
    try {
      const bytes = Buffer.alloc(recordingPiece)
      const { bytesRead } = await file.read(bytes, 0, recordingPiece, at)
      return { kind: 'piece', base64: bytes.subarray(0, bytesRead).toString('base64') }
    } finally {
      await file.close()
    }
  } catch (error) {
    return notRead(basename(thing.path), reason(error))
  }
}
