import type { Reply } from '../../electron/contract/contract.ts'
import { type Host, HostRefused } from '../host.ts'
import { bytesOf } from '../workers/base64.ts'

type Chosen = Extract<Reply<'openRecording'>, { kind: 'recording' }>

/** A recording that was chosen in a dialog of the host, as a file of the window's own. Throws HostRefused, in words, when it cannot be read. */
export async function fileOf(host: Host, { token, name, size }: Chosen): Promise<File> {
  const pieces: Uint8Array<ArrayBuffer>[] = []
  let at = 0
  while (at < size) {
    const reply = await host.call('recordingPiece', { token, at })
    if (reply.kind === 'failed') throw new HostRefused(reply.reason)
    const piece = bytesOf(reply.base64)
    if (piece.byteLength === 0) throw new HostRefused(`“${name}” became shorter while it was read. Open it again.`)
    pieces.push(piece)
    at += piece.byteLength
  }
  return new File(pieces, name)
}
