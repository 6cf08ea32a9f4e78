import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { chmod, mkdir, rename, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import type { LaunchOptions } from '@playwright/test'

/**
 * The browser that pages are tested and pictured in, ready for playwright's launch().
 * On Linux x64 it comes with the packages (@sparticuz/chromium), with its own font, so that pictures do not depend on the machine.
 * Elsewhere it is the installed browser: Edge on Windows, Chrome on macOS, playwright's own on other Linux machines.
 */
export type Browser = Pick<LaunchOptions, 'executablePath' | 'channel'>

const packaged = process.platform === 'linux' && process.arch === 'x64'
const folder = path.join(import.meta.dirname, '../../.cache', `chromium-${packagedVersion()}`)

/** Where the browser is, or will be once `unpackBrowser` has run. */
export const browser: Browser = packaged
  ? { executablePath: path.join(folder, 'start.sh') }
  : process.platform === 'win32'
    ? { channel: 'msedge' }
    : process.platform === 'darwin'
      ? { channel: 'chrome' }
      : {}

/** Puts the packaged browser in place, once per version; a folder half written is never seen under the final name. */
export async function unpackBrowser(): Promise<Browser> {
  if (!packaged || existsSync(path.join(folder, 'start.sh'))) return browser
  const building = `${folder}.${process.pid}`
  await rm(building, { recursive: true, force: true })
  await mkdir(building, { recursive: true })
  await unpackInto(building)
  await writeFile(path.join(building, 'start.sh'), startScript(building))
  await chmod(path.join(building, 'start.sh'), 0o755)
  await rename(building, folder).catch(async (problem: NodeJS.ErrnoException) => {
    // Another process was quicker; its folder is as good.
    if (problem.code !== 'ENOTEMPTY' && problem.code !== 'EEXIST') throw problem
    await rm(building, { recursive: true, force: true })
  })
  return browser
}

/** The package unpacks into the temporary folder and takes whatever lies there already: give it an empty one of its own. */
async function unpackInto(target: string): Promise<void> {
  const { default: chromium, inflate } = await import('@sparticuz/chromium')
  const usual = process.env.TMPDIR
  process.env.TMPDIR = target
  try {
    await chromium.executablePath()
    await inflate(path.join(packageFolder(), 'bin/al2023.tar.br'))
  } finally {
    if (usual === undefined) delete process.env.TMPDIR
    else process.env.TMPDIR = usual
  }
  // The file that comes with it names folders of another machine.
  await writeFile(
    path.join(target, 'fonts/fonts.conf'),
    '<?xml version="1.0"?>\n<fontconfig><dir prefix="relative">fonts</dir></fontconfig>\n',
  )
}

/** Sets what the browser reads from its environment: its font, and the libraries it brings for machines that lack them. */
function startScript(built: string): string {
  const lacking = execFileSync('ldd', [path.join(built, 'chromium')], { encoding: 'utf8' }).includes('not found')
  const libraries = lacking ? 'export LD_LIBRARY_PATH="$here/al2023/lib:$LD_LIBRARY_PATH"\n' : ''
  return `#!/bin/sh\nhere=\${0%/*}\nexport FONTCONFIG_PATH="$here/fonts"\n${libraries}exec "$here/chromium" "$@"\n`
}

function packageFolder(): string {
  return path.join(path.dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '..')
}

function packagedVersion(): string {
  const { version } = createRequire(import.meta.url)(path.join(packageFolder(), 'package.json')) as { version: string }
  return version
}
