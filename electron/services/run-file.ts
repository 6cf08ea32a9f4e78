import { createHash } from 'node:crypto'
import { type FileHandle, open } from 'node:fs/promises'
import { dsvFormat } from 'd3'
import { ENCODING_SAMPLE, type Encoding, encodingOf } from '../../core/runs/encoding.ts'
import type { Column, Reading } from '../../core/runs/reading.ts'
import { type TableEnd, TableImport } from '../../core/runs/table-import.ts'
import type { Tokenize } from '../../core/runs/table-text.ts'

/** Bytes read at a time. */
const PIECE = 1 << 18

const formats = new Map<string, ReturnType<typeof dsvFormat>>()

/** Rows of cells by d3's own reader of delimited text (RFC 4180). */
export const tokenize: Tokenize = (text, delimiter) => {
  const known = formats.get(delimiter) ?? dsvFormat(delimiter)
  formats.set(delimiter, known)
  return known.parseRows(text)
}

/** How a file is read, and which of its columns are taken. */
export interface ReadAs {
  readonly reading: Reading
  readonly columns: readonly Column[]
  readonly taken: readonly number[]
}

/** With the SHA-256 of the file's content, in hexadecimal, where all of it was read. */
export type RunRead = TableEnd & { readonly digest: string | null }

async function beginning(handle: FileHandle, size: number): Promise<Uint8Array> {
  const sample = new Uint8Array(Math.min(size, ENCODING_SAMPLE))
  let known = 0
  while (known < sample.length) {
    const { bytesRead } = await handle.read(sample, known, sample.length - known, known)
    if (bytesRead === 0) break
    known += bytesRead
  }
  return sample.subarray(0, known)
}

/** The first bytes of a file. Throws what the system says when it cannot be read. */
export async function beginningOf(file: string): Promise<Uint8Array> {
  const handle = await open(file, 'r')
  try {
    return await beginning(handle, (await handle.stat()).size)
  } finally {
    await handle.close()
  }
}

/**
 * Reads a recorded run piece by piece; the file is opened for reading only. Throws what the system says when it cannot be read, and what
 * `choose` throws.
 * @param choose how to read it, from its first letters and how they are written
 * @param tell how much has been read, 0 to 1
 */
export async function readRun(
  file: string,
  choose: (sample: string, encoding: Encoding) => ReadAs,
  tell: (share: number) => void = () => {},
): Promise<RunRead> {
  const handle = await open(file, 'r')
  try {
    const { size } = await handle.stat()
    const sample = await beginning(handle, size)
    const encoding = encodingOf(sample)
    const { reading, columns, taken } = choose(new TextDecoder(encoding).decode(sample), encoding)
    const decoder = new TextDecoder(reading.encoding)
    const table = new TableImport(tokenize, reading, columns, taken)
    const hash = createHash('sha256')
    const piece = new Uint8Array(PIECE)
    let at = 0
    while (!table.over) {
      const { bytesRead } = await handle.read(piece, 0, PIECE, at)
      if (bytesRead === 0) break
      at += bytesRead
      const bytes = piece.subarray(0, bytesRead)
      hash.update(bytes)
      table.push(decoder.decode(bytes, { stream: true }))
      tell(Math.min(1, at / size))
    }
    table.push(decoder.decode())
    return { ...table.end(), digest: table.over ? null : hash.digest('hex') }
  } finally {
    await handle.close()
  }
}
