/** The browser the window is in, where its own description names one; null when it does not. */
export function browserVersion(userAgent: string): { name: string; version: string } | null {
  const version = /\b(?:Chrome|Chromium|HeadlessChrome)\/([\d.]+)/.exec(userAgent)?.[1]
  return version === undefined ? null : { name: 'Chromium', version }
}
