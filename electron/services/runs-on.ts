const known = [
  ['Electron', process.versions.electron],
  ['Chromium', process.versions.chrome],
  ['Node', process.versions.node],
] as const

/** What this program runs on, as far as it knows: outside Electron the window's own browser is not its to tell. */
export const runsOn = known.flatMap(([name, version]) => (version === undefined ? [] : [{ name, version }]))
