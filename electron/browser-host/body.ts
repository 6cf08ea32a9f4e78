import type { IncomingMessage } from 'node:http'
import { longestPlan } from '../contract/shapes.ts'
import { Refusal } from './refusal.ts'

/** A plan and its history at their longest; escaping in JSON can add to it, which real plans do not come near. */
export const longestBody = 4 * longestPlan

/** The JSON a page posted; refused when it says it is something else, is too long, or does not parse. */
export async function jsonBody(request: IncomingMessage): Promise<unknown> {
  if (!/^application\/json(; ?charset=utf-8)?$/i.test(request.headers['content-type'] ?? '')) {
    throw new Refusal(415, 'Requests to Stopgap are JSON.')
  }
  if (Number(request.headers['content-length'] ?? 0) > longestBody) throw tooLong
  const chunks: Buffer[] = []
  let length = 0
  for await (const chunk of request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>) {
    length += chunk.byteLength
    if (length > longestBody) throw tooLong
    chunks.push(chunk)
  }
  try {
    return JSON.parse(Buffer.concat(chunks).toString('utf8'))
  } catch (error) {
    if (error instanceof SyntaxError) throw new Refusal(400, 'The request is not JSON that can be read.')
    throw error
  }
}

const tooLong = new Refusal(413, `The request is longer than ${longestBody / 1024 / 1024} MB.`)
