import { readFile } from 'node:fs/promises'

interface Entry {
  size?: number
  offset?: string
  files?: Record<string, Entry>
}

/** The files in an asar archive, by path. Its head is a pickle: lengths in 16 bytes, then JSON; contents follow. */
export async function readArchive(path: string): Promise<Map<string, string>> {
  const bytes = await readFile(path)
  const begin = 8 + bytes.readUInt32LE(4)
  const head = JSON.parse(bytes.subarray(16, 16 + bytes.readUInt32LE(12)).toString()) as Entry
  const found = new Map<string, string>()
  const walk = (entry: Entry, at: string): void => {
    for (const [name, inner] of Object.entries(entry.files ?? {})) {
      if (inner.files !== undefined) walk(inner, `${at}${name}/`)
      else {
        const from = begin + Number(inner.offset)
        found.set(`${at}${name}`, bytes.subarray(from, from + (inner.size ?? 0)).toString())
      }
    }
  }
  walk(head, '')
  return found
}
