import { describe, expect, it } from 'vitest'
import { bringRoad, OWN_ROAD, whyNotDriven } from '../../../renderer/state/own-road.ts'
import { shownTerrain, terrainKey } from '../../../renderer/state/terrain.ts'
import { sweepOf } from '../../../renderer/state/terrain-sweep.ts'
import { terrains } from '../terrain/rode.ts'

const file = (text: string | Uint8Array<ArrayBuffer>, name = 'creek.csv') => new File([text], name)
const GOOD = 'distance (m),height (m)\n0,0\n20,0.2\n50,0\n'

async function brought(text = GOOD) {
  const road = await bringRoad(file(text), null)
  if (!road.ok) throw new Error(road.why)
  return road.road
}

describe('a road from a file', () => {
  it('is driven at a usual speed, or at that of the road it takes the place of', async () => {
    const road = await brought()
    expect(road).toMatchObject({ id: OWN_ROAD, name: 'creek.csv', kind: 'measured' })
    expect(road.profile).toEqual({ distance: [0, 20, 50], height: [0, 0.2, 0] })
    expect(await bringRoad(file(GOOD), { ...road, speed: 3 })).toMatchObject({ ok: true, road: { speed: 3 } })
  })

  it('that is miles long is driven fast enough to be followed to its end', async () => {
    const road = await brought('distance (m),height (m)\n0,0\n50000,3\n')
    expect(whyNotDriven(road.profile, road.speed)).toBeNull()
  })

  it.each([
    [file('<html>'), 'line 1 has “<html>”'],
    [file(''), 'line 1 has “”'],
    [file(new Uint8Array([0xff, 0xfe, 0x00])), 'it is not text'],
    [file(new Uint8Array(8_000_001)), 'it is larger than 8 MB'],
    [file(`distance (m),height (m)\n${Array.from({ length: 200_001 }, (_, i) => `${i / 10},0`).join('\n')}`), 'places'],
  ])('is refused in words: %#', async (given, why) => {
    expect(await bringRoad(given, null)).toMatchObject({ ok: false, why: expect.stringContaining(why) })
  })

  it('is not driven at a speed that is none, or so slowly that it takes all day', async () => {
    const { profile } = await brought()
    expect([-1, 0, Number.NaN, 201].map(speed => whyNotDriven(profile, speed) !== null)).toEqual([
      true,
      true,
      true,
      true,
    ])
    expect(whyNotDriven(profile, 0.05)).toContain('it would take 1003 s')
    expect(whyNotDriven(profile, 50 / 597)).toBeNull()
    expect(whyNotDriven(profile, 50 / 597.5)).not.toBeNull()
  })

  it('is shown where it is chosen, or where the plan has nothing else', async () => {
    const road = await brought()
    const state = (chosen: string | null, ...given: (typeof terrains)[keyof typeof terrains][]) =>
      shownTerrain({ plan: { terrains: given }, view: { terrain: chosen } } as never, road)
    expect(state(OWN_ROAD, terrains.ledge)).toEqual({ terrain: road, index: null })
    expect(state(null, terrains.ledge)).toEqual({ terrain: terrains.ledge, index: 0 })
    expect(state(null)).toEqual({ terrain: road, index: null })
  })

  it('is told from another of the same name by what is in it, and from itself at another speed', async () => {
    const [road, other] = [await brought(), await brought()]
    expect(terrainKey(road)).not.toBe(terrainKey(other))
    expect(terrainKey({ ...road, name: 'b' })).toBe(terrainKey(road))
    expect(terrainKey({ ...road, speed: 1 })).not.toBe(terrainKey(road))
  })

  it('is swept along its speed', async () => {
    const sweep = sweepOf(await brought(), 0.4)
    expect(sweep?.by).toBe('speed')
    expect(sweep?.at(5)).toMatchObject({ kind: 'measured', speed: 5 })
  })
})
