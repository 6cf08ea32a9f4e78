/** A file that would be wrong (or right) at this place, and what must be said of it. */
export interface Trial {
  path: string
  source: string
  /** Part of what the tool says; nothing for a file that must pass. */
  says?: RegExp
}

const core = /core imports only itself/
const plan = /core\/plan imports core and zod only/
const contract = /The contract imports core and zod only/
const services = /Services are plain Node/
const shell = /The Electron shell imports/
const preload = /The preload script is sandboxed/
const withoutElectron = /These run where Electron is not/
const renderer = /The window imports core/
const state = /State knows no React/

const at =
  (path: string, says?: RegExp) =>
  (...sources: string[]): Trial[] =>
    sources.map(source => ({ path, source, ...(says && { says }) }))

/** For the linter: imports and names that a layer must not use. */
export const mustNotLint: readonly Trial[] = [
  ...at('core/forces', core)(
    `import { z } from 'zod'\nexport const a = z`,
    `import { scaleLinear } from 'd3'\nexport const a = scaleLinear`,
    `import { readFileSync } from 'node:fs'\nexport const a = readFileSync`,
    `import type { Call } from '../../electron/contract/contract.ts'\nexport type A = Call`,
    `import type { Plan } from '../../renderer/state/plan.ts'\nexport type A = Plan`,
    `import type { App } from 'electron'\nexport type A = App`,
    `export * from '../../tests/run.ts'`,
    `export const a = await import('@playwright/test')`,
  ),
  ...at('core/plan', plan)(
    `import { produce } from 'immer'\nexport const a = produce`,
    `import type { Call } from '../../electron/contract/contract.ts'\nexport type A = Call`,
  ),
  ...at('core/ride', /Do not use the global variable Date/)(
    `export const a = (): number => Date.now()`,
    `export const a = (): unknown => new Date()`,
  ),
  ...at(
    'core/ride',
    /Do not use the global variable globalThis/,
  )(`export const a = (): number => globalThis.Date.now()`),
  ...at('core/ride', /Do not use the global variable performance/)(`export const a = (): number => performance.now()`),
  ...at('core/tolerance', /Do not use 'Math.random'/)(`export const a = (): number => Math.random()`),
  ...at('core/corner', /Don't use console|noConsole/)(`console.log(1)`),
  ...at('electron/contract', contract)(
    `import { readFile } from 'node:fs/promises'\nexport const a = readFile`,
    `import { a } from '../services/documents.ts'\nexport const b = a`,
    `import type { IpcRenderer } from 'electron'\nexport type A = IpcRenderer`,
  ),
  ...at('electron/services', services)(
    `import { dialog } from 'electron'\nexport const a = dialog`,
    `import type { App } from 'electron/main'\nexport type A = App`,
    `import { a } from '../browser-host/serve.ts'\nexport const b = a`,
    `import { a } from '../../renderer/state/plan.ts'\nexport const b = a`,
  ),
  ...at('electron/main', shell)(
    `import { a } from '../browser-host/serve.ts'\nexport const b = a`,
    `import { a } from '../../renderer/state/plan.ts'\nexport const b = a`,
  ),
  ...at('electron/preload', preload)(
    `import { readFile } from 'node:fs/promises'\nexport const a = readFile`,
    `import { a } from '../services/documents.ts'\nexport const b = a`,
    `import { z } from 'zod'\nexport const a = z`,
  ),
  ...['electron/browser-host', 'electron/cli', 'electron/start'].flatMap(folder =>
    at(folder, withoutElectron)(
      `import { app } from 'electron'\nexport const a = app`,
      `import type { App } from 'electron'\nexport type A = App`,
      `import { start } from '../main/main.ts'\nexport const a = start`,
    ),
  ),
  ...at('renderer/panels', renderer)(
    `import { readFile } from 'node:fs/promises'\nexport const a = readFile`,
    `import { readFile } from 'fs'\nexport const a = readFile`,
    `import { ipcRenderer } from 'electron'\nexport const a = ipcRenderer`,
    `import { a } from '../../electron/services/documents.ts'\nexport const b = a`,
    `import { a } from '../../electron/main/window.ts'\nexport const b = a`,
    `import { a } from 'some-package-nobody-listed'\nexport const b = a`,
  ),
  ...at('renderer/state', state)(
    `import { useState } from 'react'\nexport const a = useState`,
    `import { scaleLinear } from 'd3'\nexport const a = scaleLinear`,
  ),
]

/** For the linter: what each layer is there to use. */
export const mustLint: readonly Trial[] = [
  ...at('core/forces')(
    `import { a } from '../units/constants.ts'\nimport { b } from './gas.ts'\nexport const c = a + b`,
  ),
  ...at('core/plan')(`import { z } from 'zod'\nexport const a = z`),
  ...at('electron/contract')(
    `import { z } from 'zod'\nimport type { Plan } from '../../core/plan/schema.ts'\nexport const a = (plan: Plan) => [z, plan]`,
  ),
  ...at('electron/services')(
    `import { readFile } from 'node:fs/promises'\nimport { a } from '../contract/contract.ts'\nexport const b = [a, readFile]`,
  ),
  ...at('electron/main')(
    `import { app } from 'electron'\nimport { a } from '../services/documents.ts'\nexport const b = [a, app]`,
  ),
  ...at('electron/preload')(
    `import { contextBridge } from 'electron'\nimport { a } from '../contract/contract.ts'\nexport const b = [a, contextBridge]`,
  ),
  ...at('electron/start')(
    `import { spawn } from 'node:child_process'\nimport { a } from '../browser-host/serve.ts'\nexport const b = [a, spawn]`,
  ),
  ...at('renderer/panels')(
    `import { scaleLinear } from 'd3'\nimport { useState } from 'react'\nimport { a } from '../../core/units/constants.ts'\nimport { b } from '../../electron/contract/contract.ts'\nexport const c = [a, b, scaleLinear, useState]`,
  ),
  ...at('renderer/state')(`import { produce } from 'immer'\nexport const a = produce`),
]

const unknown = /Cannot find name/

/** For the compiler: what a layer's tsconfig must keep out of sight. */
export const mustNotCompile: readonly Trial[] = [
  ...['core', 'electron/contract'].flatMap(folder =>
    at(folder, unknown)(
      `export const a = process.env`,
      `export const a = window.innerWidth`,
      `export const a = document.title`,
      `export const a = (): void => console.log(1)`,
      `export const a = performance.now()`,
      `export const a = setTimeout(() => {}, 1)`,
      `export const a = Buffer.from('a')`,
      `export const a = require('fs')`,
    ),
  ),
  ...at('electron/services', unknown)(`export const a = window.innerWidth`, `export const a = document.title`),
  ...at('renderer/panels', unknown)(
    `export const a = process.env`,
    `export const a = Buffer.from('a')`,
    `export const a = require('fs')`,
  ),
]

/** For the compiler: what each layer may see. */
export const mustCompile: readonly Trial[] = [
  ...at('core')(`export const a = Math.hypot(3, 4)`),
  ...at('electron/contract')(`export const a = Object.keys({})`),
  ...at('electron/services')(`export const a = process.env`),
  ...at('renderer/panels')(`export const a = window.innerWidth`),
]
