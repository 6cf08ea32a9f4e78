import { expect, test } from 'vitest'
import { changeAxle } from '../../../core/changes/apply.ts'
import { parsePlan } from '../../../core/plan/parse.ts'
import { INCH } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { undo } from '../../../renderer/state/edit.ts'
import { makeSetup } from '../../../renderer/state/made-setup.ts'
import { compareWith, showSetup } from '../../../renderer/state/view.ts'
import { seed } from '../../seeds/seed.ts'
import { someFiles } from '../some-files.ts'

test('a candidate becomes a setup of its own beside the one shown, and is undone as one', () => {
  const plan = seed('before-and-after.stopgap')
  const { store, keeper } = someFiles(plan)
  const rear = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!
  const made = changeAxle(rear, [{ kind: 'pad shim', thickness: INCH / 4 }], sayIn('inch'))
  if (!made.ok) throw new Error(made.reason)
  expect(makeSetup(store, made.axle, ['a 1/4 in shim on the pad'])).toEqual([])
  const { plan: after, view } = store.read()
  const added = after.setups.at(-1)!
  expect(after.setups).toHaveLength(plan.setups.length + 1)
  expect(added.axles.find(({ id }) => id === 'rear')).toEqual(made.axle)
  expect(added.axles.find(({ id }) => id === 'front')).toEqual(plan.setups[0]!.axles.find(({ id }) => id === 'front'))
  expect(view).toMatchObject({ setup: plan.setups[0]!.id, compared: added.id })
  expect(added.madeFrom).toEqual({ setup: plan.setups[0]!.id, changes: ['a 1/4 in shim on the pad'] })
  const read = parsePlan(JSON.parse(JSON.stringify(after)))
  expect(read.ok && read.plan).toEqual(after)
  compareWith(store, null)
  showSetup(store, added.id)
  expect(store.read().view.compared).toBe(plan.setups[0]!.id)
  expect(undo(store)).toContain('a 1/4 in shim on the pad')
  expect(store.read().plan).toEqual(plan)
  expect(store.read().view).toMatchObject({ setup: plan.setups[0]!.id, compared: plan.setups[1]!.id })
  keeper.stop()
})
