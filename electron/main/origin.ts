/** The scheme under which the window is served inside Electron, and its one address. */
export const windowScheme = 'stopgap'
export const windowAddress = `${windowScheme}://window/`

export const isOurs = (url: string): boolean => url.startsWith(windowAddress)
