/** Of electron/packaging/builder.yml, what whoever gives packages out has to put their own into. */
const own = ['appId', 'homepage', 'maintainer'] as const

/** Stands in the sources, and claims no domain of anybody's. */
const nobodys = 'stopgap.desktop'

/** What is still nobody's in the text of a packaging configuration, a sentence each; none when it may be released. */
export function notYetOwn(config: string): string[] {
  return own.flatMap(name => {
    const found = new RegExp(`^\\s*${name}:\\s*(\\S.*?)\\s*$`, 'm').exec(config)?.[1]
    if (found === undefined) return [`${name} is not there; right would be your own.`]
    const isNobodys = found === nobodys || /\.invalid\b/.test(found)
    return isNobodys ? [`${name} is “${found}”, which is nobody’s; right would be your own.`] : []
  })
}
