import { renderToStaticMarkup } from 'react-dom/server'
import { SHEETS, type SheetKind, type SheetRequest } from './request.ts'
import { Sheet, sheetSides } from './Sheet.tsx'
import { PAPER_SIZES, sheetStyle } from './sheet-style.ts'

export type MadeSheet = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problem: string }

type Wrap = (pages: readonly string[]) => string

function made(request: SheetRequest, kinds: readonly SheetKind[], wrap: Wrap): MadeSheet {
  const sides = sheetSides(request)
  if ('problem' in sides) return { ok: false, problem: sides.problem }
  const pages = kinds.map(kind => renderToStaticMarkup(<Sheet kind={kind} request={request} sides={sides} />))
  return { ok: true, text: wrap(pages) }
}

const titleOf = (request: SheetRequest, kinds: readonly SheetKind[]): string =>
  renderToStaticMarkup(
    <title>{`${request.plan.title}, ${kinds.map(kind => SHEETS[kind].toLowerCase()).join(' and ')} - Stopgap`}</title>,
  )

/** Sheets as a page of their own, one printed page each: nothing is fetched, fonts are inside. */
export const sheetHtml = (request: SheetRequest, kinds: readonly SheetKind[]): MadeSheet =>
  made(
    request,
    kinds,
    pages =>
      `<!doctype html>\n<html lang="en"><head><meta charset="utf-8">${titleOf(request, kinds)}<style>${sheetStyle(request.paper)}body{margin:0}</style></head><body>${pages.join('')}</body></html>\n`,
  )

/** Sheets as one drawing, one below the other, with fonts inside; its text is laid out by the browser that shows it. */
export const sheetSvg = (request: SheetRequest, kinds: readonly SheetKind[]): MadeSheet =>
  made(request, kinds, pages => {
    const { width, height } = PAPER_SIZES[request.paper]
    const [wide, high] = [width, height].map(mm => (mm / 25.4) * 96) as [number, number]
    const drawn = pages.map(
      (page, i) =>
        `<foreignObject x="0" y="${i * high}" width="${wide}" height="${high}"><div xmlns="http://www.w3.org/1999/xhtml">${page}</div></foreignObject>`,
    )
    return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height * pages.length}mm" viewBox="0 0 ${wide} ${high * pages.length}">${titleOf(request, kinds)}<style>${sheetStyle(request.paper)}</style>${drawn.join('')}</svg>\n`
  })
