/** Bytes taken at a time: a call takes only so many arguments, and every three bytes are four letters. */
const PIECE = 3 * 8192

/** Bytes as base64 (RFC 4648, section 4). */
export function textOf(bytes: Uint8Array): string {
  const parts: string[] = []
  for (let i = 0; i < bytes.length; i += PIECE) parts.push(btoa(String.fromCharCode(...bytes.subarray(i, i + PIECE))))
  return parts.join('')
}

/** Bytes from base64. */
export function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  const letters = atob(text)
  const bytes = new Uint8Array(letters.length)
  for (let i = 0; i < letters.length; i += 1) bytes[i] = letters.charCodeAt(i)
  return bytes
}
