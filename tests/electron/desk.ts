import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Tell } from '../../electron/contract/contract.ts'
import { createServices, type Dialogs, type Services } from '../../electron/services/services.ts'
import { newFolder } from './folder.ts'
import { planText } from './plan.ts'

export interface Desk {
  home: string
  data: string
  demos: string
  /** Puts a plan into the home; the result is its path. */
  put(fileName: string, text?: string): Promise<string>
  /** A run of the program. Another one on the same desk is the next start. */
  run(options?: { file?: string; dialogs?: Dialogs; tell?: Tell; isHere?: (window: string) => boolean }): Services
}

/** A home, an application's own folder and two demo plans, all new. */
export async function newDesk(): Promise<Desk> {
  const root = await newFolder()
  const [home, data, demos] = [join(root, 'home'), join(root, 'data'), join(root, 'seeds')]
  await mkdir(home)
  await mkdir(demos)
  await writeFile(join(demos, 'a.stopgap'), planText('First demo'))
  await writeFile(join(demos, 'b.stopgap'), planText('Second demo'))
  return {
    home,
    data,
    demos,
    put: async (fileName, text = planText('A plan')) => {
      const path = join(home, fileName)
      await writeFile(path, text)
      return path
    },
    run: ({ file, dialogs, tell, isHere } = {}) =>
      createServices({
        host: 'browser',
        version: '0.0.0',
        data,
        home,
        demos,
        file: file ?? null,
        dialogs: dialogs ?? null,
        tell: tell ?? (() => undefined),
        ...(isHere !== undefined && { isHere }),
      }),
  }
}
