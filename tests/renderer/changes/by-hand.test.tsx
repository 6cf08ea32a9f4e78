// @vitest-environment happy-dom
import { act } from 'react'
import { expect, test } from 'vitest'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import { INCH } from '../../../core/units/constants.ts'
import { ByHand } from '../../../renderer/panels/changes/ByHand.tsx'
import { seed } from '../../seeds/seed.ts'
import { press, put, show } from '../a-page.tsx'

const plan = seed('before-and-after.stopgap')
const rear = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!

function byHand() {
  const took: { axle: Axle; words: string }[] = []
  const shown = show(
    <ByHand
      axle={rear}
      shelf={GENERIC_SHELF}
      units="inch"
      targets={{}}
      onTake={(axle, changes) => took.push({ axle, words: changes.join(' + ') })}
    />,
    plan,
  )
  const enter = (text: string): void => {
    const field = shown.find<HTMLInputElement>('.by-hand input.f')
    put(field, text)
    press(field, 'Enter')
  }
  const button = (name: string): HTMLButtonElement => {
    const found = [...shown.page.querySelectorAll('button')].find(each => each.textContent === name)
    if (found === undefined) throw new Error(`There is no button “${name}”.`)
    return found
  }
  return { ...shown, took, enter, button }
}

test('a spacer typed by hand says what it does, and becomes a setup as its rule has it', () => {
  const { took, enter, button, page, close } = byHand()
  enter('1 1/4')
  expect(page.textContent).toContain('What stays: the closed position')
  act(() => button('Make it a setup').click())
  expect(took).toHaveLength(1)
  const { axle, words } = took[0]!
  expect(words).toBe('a 1 1/4 in spacer inside the stop')
  const stop = axle.corner.stop
  if (stop?.kind !== 'hydraulic' || rear.corner.stop?.kind !== 'hydraulic') throw new Error('no hydraulic stop')
  expect(stop.stroke).toBeCloseTo(rear.corner.stop.stroke - 1.25 * INCH, 12)
  expect(stop.gap).toBeCloseTo(rear.corner.stop.gap + 1.25 * INCH, 12)
  close()
})

test('what cannot be built is refused in words, and cannot be made a setup', () => {
  const { enter, page, close } = byHand()
  enter('4')
  expect(page.querySelector('.wrong')?.textContent).toMatch(/leaves nothing of the stroke of 3 1\/2 in/)
  expect(page.textContent).not.toContain('Make it a setup')
  close()
})

test('changes are combined and taken back', () => {
  const { took, enter, button, page, close } = byHand()
  enter('1')
  act(() => button('And another change').click())
  enter('1/2')
  act(() => button('Take it back').click())
  act(() => button('Make it a setup').click())
  expect(took[0]!.words).toBe('a 1/2 in spacer inside the stop')
  expect(page.textContent).not.toContain('Together with')
  close()
})

test('without a tube that goes over the shaft, a spacer is refused for want of it, and by what can be done', () => {
  const shown = show(
    <ByHand
      axle={rear}
      shelf={{ ...GENERIC_SHELF, tubes: GENERIC_SHELF.tubes.filter(({ part }) => part.outerDiameter < 1.3 * INCH) }}
      units="inch"
      targets={{}}
      onTake={() => undefined}
    />,
    plan,
  )
  expect(shown.find('.wrong').textContent).toBe(
    'It cannot be made. No tube on the shelf goes over a shaft of 1.250 in: put one that does on the shelf, or have one turned.',
  )
  shown.close()
})

test('begins with what can be done here: preload where there is no stop, a shim under foam', () => {
  const foam = seed('new-chassis.stopgap').setups[0]!.axles.find(({ id }) => id === 'rear')!
  for (const [axle, first] of [
    [{ ...rear, corner: { ...rear.corner, stop: null } }, 'preload'],
    [foam, 'shim'],
    [rear, 'spacer'],
  ] as const) {
    const shown = show(
      <ByHand axle={axle} shelf={GENERIC_SHELF} units="inch" targets={{}} onTake={() => undefined} />,
      plan,
    )
    expect(shown.find<HTMLSelectElement>('#hand-kind').value).toBe(first)
    shown.close()
  }
})
