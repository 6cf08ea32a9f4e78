import { readFile } from 'node:fs/promises'
import { extname, join, normalize, sep } from 'node:path'
import { refusal } from './reason.ts'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
}

/** A file of the built window for a path of its address; null for anything that is not one, wherever the path tries to lead. */
export async function windowFile(
  folder: string,
  urlPath: string,
): Promise<{ type: string; content: Uint8Array<ArrayBuffer> } | null> {
  const name = decoded(urlPath)
  if (name === null || name.includes('\0') || name.includes('\\')) return null
  const path = normalize(join(folder, name === '/' ? 'index.html' : name))
  const type = types[extname(path)]
  if (type === undefined || !path.startsWith(folder + sep)) return null
  try {
    return { type, content: new Uint8Array(await readFile(path)) }
  } catch (error) {
    if (refusal(error) === null) throw error
    return null
  }
}

function decoded(urlPath: string): string | null {
  try {
    return decodeURIComponent(urlPath)
  } catch (error) {
    if (error instanceof URIError) return null
    throw error
  }
}
