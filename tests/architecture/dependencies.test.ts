import { describe, expect, it } from 'vitest'
import { allImports, filesBelow, type Import, importsOf, type Layer, layerOf, layers, mayUse } from './imports.ts'

const imports = allImports()

const forbidden = (all: readonly Import[]): string[] =>
  all
    .filter(({ from, to, isPackage }) => {
      const [layer, other] = [layerOf(from), layerOf(to)]
      return !isPackage && other !== layer && !(mayUse[layer as Layer] ?? []).includes(other)
    })
    .map(({ from, to }) => `${from} imports ${to}`)

/** Files that run where the first one runs: it, and whatever it imports for more than types. */
function reachable(start: readonly string[], all: readonly Import[]): Set<string> {
  const found = new Set(start)
  for (const file of found)
    for (const { from, to, isPackage, isTypeOnly } of all) if (from === file && !isPackage && !isTypeOnly) found.add(to)
  return found
}

describe('imports, by the path they lead to', () => {
  it('finds imports in every layer that has files', () => {
    const withImports = new Set(imports.map(({ from }) => layerOf(from)))
    expect(
      [...layers].filter(layer => filesBelow(layer).some(file => /\.tsx?$/.test(file)) && !withImports.has(layer)),
    ).toEqual([])
  })

  it('reads every way to write an import', () => {
    const source = `
import { a } from '../units/constants.ts'
import type { B } from '../../electron/contract/contract.ts'
import '../../renderer/window.css'
export * from './gas.ts'
export { type C,
  d } from "zod"
const e = await import('../../tests/run.ts')
new Worker(new URL('./worker.ts', import.meta.url))`
    expect(
      importsOf('core/forces/stop.ts', source).map(({ to, isTypeOnly, isLate }) => [to, isTypeOnly, isLate]),
    ).toEqual([
      ['core/units/constants.ts', false, false],
      ['electron/contract/contract.ts', true, false],
      ['renderer/window.css', false, false],
      ['core/forces/gas.ts', false, false],
      ['zod', false, false],
      ['tests/run.ts', false, true],
      ['core/forces/worker.ts', false, true],
    ])
  })

  it('run only from a layer to those it may use', () => expect(forbidden(imports)).toEqual([]))

  it('are refused when they run the other way, however the path is spelt', () => {
    const source = `import { a } from '../../core/../renderer/state/plan.ts'`
    expect(forbidden(importsOf('core/units/trial.ts', source))).toEqual([
      'core/units/trial.ts imports renderer/state/plan.ts',
    ])
  })

  it('form no circle of layers: each uses only layers named before it', () => {
    const order: readonly string[] = ['seeds', ...layers]
    for (const layer of layers)
      for (const used of mayUse[layer])
        expect(order.indexOf(used), `${layer} uses ${used}`).toBeLessThan(order.indexOf(layer))
  })

  it('keep what checks plans out of the first picture', () => {
    const reached = reachable(
      ['renderer/main.tsx'],
      imports.filter(({ isLate }) => !isLate),
    )
    expect(reached).toContain('renderer/panels/findings/Findings.tsx')
    expect(imports.filter(({ from, to, isTypeOnly }) => to === 'zod' && !isTypeOnly && reached.has(from))).toEqual([])
  })

  it('never bring Electron to a program that runs without it', () => {
    const places = ['electron/start', 'electron/cli', 'electron/browser-host', 'electron/services']
    const reached = reachable(places.flatMap(filesBelow), imports)
    expect(imports.filter(({ from, to }) => to === 'electron' && reached.has(from))).toEqual([])
  })
})
