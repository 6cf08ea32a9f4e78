import { brotliDecompressSync } from 'node:zlib'

/** Tables of the format in the order its one-byte names count (W3C, WOFF File Format 2.0, section 4.1); those read here have been given theirs. */
const KNOWN = { 0: 'cmap', 1: 'head', 2: 'hhea', 3: 'hmtx', 10: 'glyf', 11: 'loca' } as const

/** What each character of a WOFF2 font moves the pen by, in units of its em, read out of the file. */
export function advancesOf(base64: string): {
  readonly unitsPerEm: number
  readonly advances: ReadonlyMap<string, number>
} {
  const file = Buffer.from(base64, 'base64')
  let at = 48
  const variable = (): number => {
    for (let value = 0; ; ) {
      const byte = file[at++]!
      value = value * 128 + (byte & 127)
      if (byte < 128) return value
    }
  }
  const starts = new Map<string, number>()
  let start = 0
  for (let count = file.readUInt16BE(12); count > 0; count -= 1) {
    const flags = file[at++]!
    const index = flags & 63
    if (index === 63) at += 4
    const name = KNOWN[index as keyof typeof KNOWN] ?? String(index)
    const length = variable()
    // Of the tables, these two are kept in another form unless they say otherwise; the others only if they say so.
    const changed = name === 'glyf' || name === 'loca' ? flags >> 6 !== 3 : flags >> 6 !== 0
    starts.set(name, start)
    start += changed ? variable() : length
  }
  const font = brotliDecompressSync(file.subarray(at))
  const [cmap, head, hhea, hmtx] = ['cmap', 'head', 'hhea', 'hmtx'].map(name => starts.get(name)!) as [
    number,
    number,
    number,
    number,
  ]
  const measured = font.readUInt16BE(hhea + 34)
  const advanceOf = (glyph: number): number => font.readUInt16BE(hmtx + 4 * Math.min(glyph, measured - 1))
  const advances = new Map<string, number>()
  // One list of segments (format 4), as the font's first way to find a glyph.
  const segments = cmap + font.readUInt32BE(cmap + 8)
  if (font.readUInt16BE(segments) !== 4) throw new Error('The font finds its glyphs in another way than it did.')
  const count = font.readUInt16BE(segments + 6)
  for (let i = 0; i < count; i += 2) {
    const last = font.readUInt16BE(segments + 14 + i)
    const shift = font.readUInt16BE(segments + 16 + 2 * count + i)
    const offsetAt = segments + 16 + 3 * count + i
    const offset = font.readUInt16BE(offsetAt)
    const first = font.readUInt16BE(segments + 16 + count + i)
    for (let code = first; code <= last && code < 0xffff; code += 1) {
      const found = offset === 0 ? code : font.readUInt16BE(offsetAt + offset + 2 * (code - first))
      const glyph = offset === 0 || found !== 0 ? (found + shift) & 0xffff : 0
      if (glyph !== 0) advances.set(String.fromCharCode(code), advanceOf(glyph))
    }
  }
  return { unitsPerEm: font.readUInt16BE(head + 18), advances }
}
