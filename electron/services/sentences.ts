/** As many sentences as one message of the contract takes. */
const most = 3900

/** Sentences as one text; what has no room is counted. undefined when there is nothing to say. */
export function together(sentences: readonly string[]): string | undefined {
  const [first, ...others] = sentences
  if (first === undefined) return undefined
  let text = first.slice(0, most)
  for (const [n, sentence] of others.entries()) {
    if (text.length + sentence.length >= most) return `${text} And ${others.length - n} more.`
    text = `${text} ${sentence}`
  }
  return text
}
