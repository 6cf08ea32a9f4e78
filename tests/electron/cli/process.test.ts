import { execFile, spawn } from 'node:child_process'
import path from 'node:path'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { budgetText } from '../../../electron/cli/budget-text.ts'
import { seed } from '../../seeds/seed.ts'

const root = path.join(import.meta.dirname, '../../..')
const command = ['--import', 'tsx', 'electron/cli/main.ts']
const stopgap = (args: readonly string[], env: NodeJS.ProcessEnv = {}) =>
  promisify(execFile)(process.execPath, [...command, ...args], { cwd: root, env: { ...process.env, ...env } })

describe('the command line as a program', () => {
  it('takes file names from where npm was called, not from where npm runs it', async () => {
    const { stdout, stderr } = await stopgap(['budget', 'before-and-after.stopgap'], {
      INIT_CWD: path.join(root, 'seeds'),
    })
    expect([stdout, stderr]).toEqual([budgetText(seed('before-and-after.stopgap')), ''])
  })

  it('ends with 2 and an empty output when it cannot', async () => {
    const failed = await stopgap(['budget', 'nowhere.stopgap']).catch((error: unknown) => error)
    expect(failed).toMatchObject({
      code: 2,
      stdout: '',
      stderr: 'nowhere.stopgap could not be read: there is no such file.\n',
    })
  })

  it('is quiet when its reader has seen enough', async () => {
    const child = spawn(process.execPath, [...command, 'schema'], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
    child.stdout.destroy()
    let complaint = ''
    child.stderr.on('data', (chunk: Buffer) => {
      complaint += chunk.toString()
    })
    const code = await new Promise(resolve => child.once('close', resolve))
    expect([code, complaint]).toEqual([0, ''])
  })
})
