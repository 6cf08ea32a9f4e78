import { later } from '../../pages/later.ts'
import { fetchChecks } from '../../state/plan-checks.ts'

/** A slow first picture does not hold the fields back for ever, ms. */
const PATIENCE = 200

const drawn = (): Promise<unknown> => new Promise(resolve => requestIdleCallback(resolve, { timeout: PATIENCE }))

/** The fields come once what they come to is on screen, together with what checks them. */
export const column = later(async () => {
  await drawn()
  const [{ Column }] = await Promise.all([import('./Column.tsx'), fetchChecks()])
  return Column
})
