/** Widest line, in characters: what every terminal shows. */
export const WIDTH = 80

const width = (text: string): number => [...text].length

/**
 * Words set in lines no wider than WIDTH; a number stays with what follows it (`1 5/8 in`), a word too long for a line is broken.
 * Line ends and other control characters in the text count as spaces: names come from files, and a terminal would obey them.
 * @param first what the first line begins with
 * @param hang what every other line begins with, no shorter than `first` and no longer than half a line
 */
export function paragraph(text: string, first = '', hang = first): string {
  const plain = text.replace(/[\s\p{C}]+/gu, ' ').trim()
  const longest = new RegExp(`.{1,${WIDTH - hang.length}}`, 'gu')
  const words = plain.split(/(?<!\d) /).flatMap(word => word.match(longest) ?? [])
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of words) {
    if (!empty && width(line) + 1 + width(word) > WIDTH) {
      lines.push(line)
      line = hang
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].map(each => `${each.trimEnd()}\n`).join('')
}

/** A heading over a line of its own length. */
export function underlined(heading: string, mark: string): string {
  const set = paragraph(heading)
  return `${set}${mark.repeat(Math.max(...set.split('\n').map(width)))}\n`
}
