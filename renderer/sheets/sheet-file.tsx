import { renderToStaticMarkup } from 'react-dom/server'
import { printable } from './page/lines.ts'
import { PAPER_SIZES, pageOf } from './page/paper.ts'
import { SHEETS, type SheetKind, type SheetRequest } from './request.ts'
import { Sheet, SheetContent, sheetSides } from './Sheet.tsx'
import { FACES, inked, sheetStyle } from './sheet-style.ts'

export type MadeSheet = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problem: string }

function made(
  request: SheetRequest,
  kinds: readonly SheetKind[],
  Page: typeof Sheet,
  wrap: (pages: readonly string[]) => string,
): MadeSheet {
  const sides = sheetSides(request)
  if ('problem' in sides) return { ok: false, problem: sides.problem }
  const pages = kinds.map(kind => inked(renderToStaticMarkup(<Page kind={kind} request={request} sides={sides} />)))
  return { ok: true, text: wrap(pages) }
}

const titleOf = (request: SheetRequest, kinds: readonly SheetKind[]): string =>
  renderToStaticMarkup(
    <title>
      {printable(`${request.plan.title}, ${kinds.map(kind => SHEETS[kind].toLowerCase()).join(' and ')} - Stopgap`)}
    </title>,
  )

const WIDTHS = / data-widths="[\d. ]*"/g

/** Text shorter than this has room for another font's wider letters, px. */
const SHORT = 60

/** Holds longer text to the width it was measured to, for programs that show it in a font of their own. */
const held = (drawing: string): string =>
  drawing.replace(/<text[^>]*? data-widths="([\d. ]*)".*?<\/text>/g, (text, widths: string) => {
    const all = widths.split(' ')
    let span = 0
    return text.replace(WIDTHS, '').replace(/<tspan/g, start => {
      const width = all[span++]!
      return Number(width) < SHORT ? start : `${start} textLength="${width}" lengthAdjust="spacingAndGlyphs"`
    })
  })

/** Sheets as a page of their own, one printed page each: nothing is fetched, fonts are inside. */
export const sheetHtml = (request: SheetRequest, kinds: readonly SheetKind[]): MadeSheet =>
  made(
    request,
    kinds,
    Sheet,
    pages =>
      `<!doctype html>\n<html lang="en"><head><meta charset="utf-8">${titleOf(request, kinds)}<style>${sheetStyle(request.paper)}body{margin:0}</style></head><body>${pages.join('').replace(WIDTHS, '')}</body></html>\n`,
  )

/** Sheets as one drawing, one below the other, its text as text and its fonts inside: any program that shows SVG shows it. */
export const sheetSvg = (request: SheetRequest, kinds: readonly SheetKind[]): MadeSheet =>
  made(request, kinds, SheetContent, pages => {
    const size = PAPER_SIZES[request.paper]
    const { width, height } = pageOf(request.paper, 0)
    const drawn = pages.map((page, i) => (i === 0 ? page : `<g transform="translate(0 ${i * height})">${page}</g>`))
    return `<svg xmlns="http://www.w3.org/2000/svg" lang="en" width="${size.width}mm" height="${size.height * pages.length}mm" viewBox="0 0 ${width} ${height * pages.length}">${titleOf(request, kinds)}<style>${FACES}</style>${held(drawn.join(''))}</svg>\n`
  })
