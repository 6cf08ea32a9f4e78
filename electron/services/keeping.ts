import type { Reply, Request } from '../contract/contract.ts'
import { whyNotPlan } from '../contract/plan-text.ts'
import { keyOf } from './documents.ts'
import { reason } from './reason.ts'
import type { Shelves } from './shelves.ts'

/** Keeps the plan of one window after each change, apart from what any other window has of the same plan. */
export function keeperFor(window: string, shelves: Shelves) {
  let last = ''
  return async (request: Request<'keep'>): Promise<Reply<'keep'>> => {
    const failed = (why: string): Reply<'keep'> => ({
      kind: 'failed',
      reason: `The latest changes to “${request.name}” could not be kept: ${why}. Save the plan.`,
    })
    const wrong = whyNotPlan(request.text)
    if (wrong !== null) return failed(wrong)
    const thing = request.token === null ? null : shelves.tokens.find(request.token)
    const path = thing?.kind === 'file' ? thing.path : null
    const key = path === null ? request.key : keyOf(path)
    const { name, text, basis, history } = request
    const at = new Date().toISOString()
    const place = await shelves.claims.placeFor(key, window)
    try {
      await shelves.kept.keep({ key: place.key, name, path, basis, text, history, at })
    } catch (error) {
      return failed(reason(error))
    }
    if (key !== last) await shelves.attempt(shelves.recents.touch({ key, path, name, at }))
    last = key
    return { kind: 'kept' }
  }
}
