/** Widest line, in characters: what every terminal shows. */
export const WIDTH = 80

/** A heading over a line of its own length. */
export function underlined(heading: string, line: string): string {
  const set = paragraph(heading)
  return `${set}${line.repeat(Math.max(...set.split('\n').map(({ length }) => length)))}\n`
}

/**
 * Words set in lines no wider than WIDTH; a number stays with what follows it (`1 5/8 in`).
 * @param first what the first line begins with
 * @param hang what every other line begins with, no longer than half a line
 */
export function paragraph(text: string, first = '', hang = first): string {
  const room = WIDTH - hang.length
  const breakable = text
    .trim()
    .replace(/\s+/g, ' ')
    .split(/(?<!\d) /)
  const words = breakable.flatMap(word => word.match(new RegExp(`.{1,${room}}`, 'gu')) ?? [])
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of words) {
    if (line.length + (empty ? 0 : 1) + word.length > WIDTH) {
      lines.push(line)
      line = hang
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].map(each => `${each.trimEnd()}\n`).join('')
}
