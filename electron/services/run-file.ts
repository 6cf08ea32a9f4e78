import { open } from 'node:fs/promises'
import { dsvFormat } from 'd3'
import { ENCODING_SAMPLE, type Encoding, encodingOf } from '../../core/runs/encoding.ts'
import type { TableShape, Tokenize } from '../../core/runs/shape.ts'
import { type TableChoice, type TableEnd, TableImport } from '../../core/runs/table-import.ts'

/** Bytes read at a time. */
const PIECE = 1 << 18

const formats = new Map<string, ReturnType<typeof dsvFormat>>()

/** Rows of cells by d3's own reader of delimited text (RFC 4180). */
export const tokenize: Tokenize = (text, delimiter) => {
  const known = formats.get(delimiter) ?? dsvFormat(delimiter)
  formats.set(delimiter, known)
  return known.parseRows(text)
}

export type RunRead = TableEnd & { readonly encoding: Encoding }

/**
 * Reads a recorded run piece by piece; the file is opened for reading only. Throws what the system says when it cannot be read.
 * @param choose what to take from it, once its shape is known; null to stop
 * @param tell how much has been read, 0 to 1
 */
export async function readRun(
  file: string,
  choose: (shape: TableShape) => TableChoice | null,
  tell: (share: number) => void = () => {},
): Promise<RunRead> {
  const handle = await open(file, 'r')
  try {
    const { size } = await handle.stat()
    const sample = new Uint8Array(Math.min(size, ENCODING_SAMPLE))
    let known = 0
    while (known < sample.length) {
      const { bytesRead } = await handle.read(sample, known, sample.length - known, known)
      if (bytesRead === 0) break
      known += bytesRead
    }
    const encoding = encodingOf(sample.subarray(0, known))
    const decoder = new TextDecoder(encoding)
    const table = new TableImport(tokenize, choose)
    const piece = new Uint8Array(PIECE)
    let at = 0
    while (!table.over) {
      const { bytesRead } = await handle.read(piece, 0, PIECE, at)
      if (bytesRead === 0) break
      at += bytesRead
      table.push(decoder.decode(piece.subarray(0, bytesRead), { stream: true }))
      tell(Math.min(1, at / size))
    }
    table.push(decoder.decode())
    return { ...table.end(), encoding }
  } finally {
    await handle.close()
  }
}
