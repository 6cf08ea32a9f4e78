import { widthOf } from '../../../renderer/sheets/page/lines.ts'

/** A line of text where it stands on a page, px. */
export interface Placed {
  readonly text: string
  readonly size: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const plain = (markup: string): string =>
  markup
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#x27;/g, "'")
    .replace(/&amp;/g, '&')

const numberOf = (attributes: string, name: string): number | undefined => {
  const found = new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(attributes)?.[1]
  return found === undefined ? undefined : Number(found)
}

/** Every line of text of a sheet's markup, as wide as the sheets' own font makes it. */
export function placedTexts(markup: string): Placed[] {
  const placed: Placed[] = []
  const moved: [number, number][] = [[0, 0]]
  for (const [, end, name, attributes = '', text = ''] of markup.matchAll(
    /<(\/?)(g|text)\b([^>]*)>(?:((?:<tspan[^>]*>[^<]*<\/tspan>|[^<])*)<\/text>)?/g,
  )) {
    const [right, down] = moved.at(-1)!
    if (name === 'g' && end === '/') moved.pop()
    else if (name === 'g') {
      const [, x = '0', y = '0'] = /translate\(([-\d.e]+) ([-\d.e]+)\)/.exec(attributes) ?? []
      if (!attributes.endsWith('/')) moved.push([right + Number(x), down + Number(y)])
    } else {
      const parts = [...text.matchAll(/<tspan([^>]*)>([^<]*)<\/tspan>/g)].map(([, own = '', words = '']) => ({
        size: numberOf(own, 'font-size')!,
        weight: numberOf(own, 'font-weight') === 600 ? (600 as const) : (400 as const),
        space: numberOf(own, 'dx') ?? 0,
        text: plain(words),
      }))
      const spans =
        parts.length > 0
          ? parts
          : [{ size: numberOf(attributes, 'font-size')!, weight: 400 as const, space: 0, text: plain(text) }]
      const width = spans.reduce((sum, each) => sum + each.space + widthOf(each.text, each.size, each.weight), 0)
      const size = Math.max(...spans.map(each => each.size))
      const x = right + numberOf(attributes, 'x')!
      const y = down + numberOf(attributes, 'y')!
      const left = attributes.includes('text-anchor="end"') ? x - width : x
      placed.push({
        text: spans.map(each => each.text).join(''),
        size,
        left,
        right: left + width,
        top: y - 0.8 * size,
        bottom: y + 0.25 * size,
      })
    }
  }
  return placed.filter(({ text }) => text.trim() !== '')
}

/** Lines that stand in one another's way, as pairs of their words. */
export const overlapping = (texts: readonly Placed[]): string[] =>
  texts.flatMap((one, i) =>
    texts
      .slice(i + 1)
      .filter(
        other =>
          Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1 &&
          Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 1.5,
      )
      .map(other => `“${one.text}” and “${other.text}”`),
  )
