import { isAbsolute, join, resolve } from 'node:path'

/**
 * Where the application keeps what is its own: kept copies, recent plans, settings.
 * Windows: roaming AppData. macOS: Library/Application Support. Elsewhere: the XDG base directory specification, 0.8.
 * STOPGAP_DATA overrides all of them.
 */
export function dataFolder(platform: NodeJS.Platform, env: NodeJS.ProcessEnv, home: string): string {
  if (env.STOPGAP_DATA) return resolve(env.STOPGAP_DATA)
  if (platform === 'win32') return join(env.APPDATA ?? join(home, 'AppData', 'Roaming'), 'Stopgap')
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Stopgap')
  const given = env.XDG_DATA_HOME
  // The specification: a relative path in the variable is invalid and ignored.
  return join(given !== undefined && isAbsolute(given) ? given : join(home, '.local', 'share'), 'stopgap')
}
