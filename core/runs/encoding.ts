export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'

/** Bytes of a file's beginning that its encoding is told from. */
export const ENCODING_SAMPLE = 65_536

/** More than this share of zeros at odd or even places is text of two bytes a letter. */
const ZEROS = 0.3

/** Whether bytes are UTF-8 (RFC 3629, section 3); a letter cut off at the end is let pass. */
function isUtf8(bytes: Uint8Array): boolean {
  for (let i = 0; i < bytes.length; ) {
    const lead = bytes[i]!
    const more =
      lead < 0x80 ? 0 : lead >= 0xc2 && lead < 0xe0 ? 1 : lead >= 0xe0 && lead < 0xf0 ? 2 : lead < 0xf5 ? 3 : 4
    if (more === 4 || (lead >= 0x80 && lead < 0xc2)) return false
    for (let k = 1; k <= more && i + k < bytes.length; k += 1) if ((bytes[i + k]! & 0xc0) !== 0x80) return false
    i += more + 1
  }
  return true
}

/**
 * How letters are written in a file, from its first bytes: by its byte order mark (The Unicode Standard, section 23.8), else by zeros, else
 * UTF-8 if it is that. What is left is Windows-1252, which holds Latin-1.
 */
export function encodingOf(bytes: Uint8Array): Encoding {
  const [first, second, third] = bytes
  if (first === 0xef && second === 0xbb && third === 0xbf) return 'utf-8'
  if (first === 0xff && second === 0xfe) return 'utf-16le'
  if (first === 0xfe && second === 0xff) return 'utf-16be'
  const zeros = [0, 0]
  for (const [i, byte] of bytes.entries()) if (byte === 0) zeros[i % 2]! += 1
  if (zeros[1]! > (bytes.length / 2) * ZEROS) return 'utf-16le'
  if (zeros[0]! > (bytes.length / 2) * ZEROS) return 'utf-16be'
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252'
}
