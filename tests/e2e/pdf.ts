import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import path from 'node:path'
import type { Page } from '@playwright/test'

/** A run of letters on a printed page, in points (1/72 in) from its upper left corner. */
export interface Printed {
  readonly text: string
  readonly left: number
  readonly right: number
  /** Of its letters' feet. */
  readonly baseline: number
  readonly size: number
}

/** A printed page, and the picture it makes. Lengths in points. */
export interface PrintedPage {
  readonly width: number
  readonly height: number
  readonly texts: readonly Printed[]
  /** Names of the fonts in use that are not in the file. */
  readonly fontsMissing: readonly string[]
  /** The smallest frame that holds every dot that is not white. */
  readonly ink: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number } | null
  /** Part of the page that is not white. */
  readonly inked: number
  /** Part of the frame around each text that is not white, in the order of `texts`. */
  readonly legible: readonly number[]
  /** PNG, in base64. */
  readonly picture: string
}

const builds = path.join(path.dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json')), 'build')

/** Nowhere: what is asked of it is answered here. */
const place = 'https://pdf.invalid/'

/**
 * Every page of a PDF drawn and read by a reader that had no part in making it (pdf.js), in a page of the test's browser. Nothing is fetched.
 * @param scale dots of the picture per point
 */
export async function drawPdf(page: Page, pdf: Uint8Array, scale = 2): Promise<readonly PrintedPage[]> {
  await page.route(`${place}**`, async route => {
    const name = path.basename(new URL(route.request().url()).pathname)
    if (name === '')
      return route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>A printed page</title>' })
    return route.fulfill({ contentType: 'text/javascript', body: await readFile(path.join(builds, name), 'utf8') })
  })
  await page.goto(place)
  return page.evaluate(
    async ({ base64, scale, place }) => {
      const reader: typeof import('pdfjs-dist') = await import(`${place}pdf.min.mjs`)
      reader.GlobalWorkerOptions.workerSrc = `${place}pdf.worker.min.mjs`
      const data = Uint8Array.from(atob(base64), letter => letter.charCodeAt(0))
      const file = await reader.getDocument({ data, useSystemFonts: false }).promise
      const pages: PrintedPage[] = []
      for (let number = 1; number <= file.numPages; number += 1) {
        const sheet = await file.getPage(number)
        const [left = 0, bottom = 0, right = 0, top = 0] = sheet.view
        const viewport = sheet.getViewport({ scale })
        const canvas = document.createElement('canvas')
        canvas.width = Math.round(viewport.width)
        canvas.height = Math.round(viewport.height)
        const context = canvas.getContext('2d', { willReadFrequently: true })!
        await sheet.render({ canvas, canvasContext: context, viewport }).promise
        const { data: dots, width } = context.getImageData(0, 0, canvas.width, canvas.height)
        const isInk = (x: number, y: number): boolean => {
          const at = 4 * (y * width + x)
          return Math.min(dots[at]!, dots[at + 1]!, dots[at + 2]!) < 250
        }
        const frame = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity }
        let count = 0
        for (let y = 0; y < canvas.height; y += 1)
          for (let x = 0; x < width; x += 1) {
            if (!isInk(x, y)) continue
            count += 1
            frame.left = Math.min(frame.left, x)
            frame.right = Math.max(frame.right, x + 1)
            frame.top = Math.min(frame.top, y)
            frame.bottom = Math.max(frame.bottom, y + 1)
          }
        const { items } = await sheet.getTextContent()
        const texts = items.flatMap((item): Printed[] => {
          if (!('str' in item) || item.str.trim() === '') return []
          const [, , skew = 0, rise = 0, x = 0, y = 0] = item.transform as number[]
          const at = x - left
          return [{ text: item.str, left: at, right: at + item.width, baseline: top - y, size: Math.hypot(skew, rise) }]
        })
        const legible = texts.map(text => {
          let inside = 0
          const [x0, x1] = [text.left, text.right].map(x => Math.round(x * scale)) as [number, number]
          const [y0, y1] = [text.baseline - 0.75 * text.size, text.baseline + 0.25 * text.size].map(y =>
            Math.round(y * scale),
          ) as [number, number]
          for (let y = y0; y < y1; y += 1) for (let x = x0; x < x1; x += 1) if (isInk(x, y)) inside += 1
          return inside / Math.max(1, (x1 - x0) * (y1 - y0))
        })
        const fonts = new Set(items.flatMap(item => ('fontName' in item ? [item.fontName] : [])))
        const fontsMissing = [...fonts].filter(name => {
          const font = sheet.commonObjs.get(name) as { missingFile?: boolean; name?: string }
          return font.missingFile === true
        })
        pages.push({
          width: right - left,
          height: top - bottom,
          texts,
          fontsMissing,
          ink:
            count === 0
              ? null
              : {
                  left: frame.left / scale,
                  right: frame.right / scale,
                  top: frame.top / scale,
                  bottom: frame.bottom / scale,
                },
          inked: count / (canvas.width * canvas.height),
          legible,
          picture: canvas.toDataURL('image/png').split(',')[1]!,
        })
      }
      return pages
    },
    { base64: Buffer.from(pdf).toString('base64'), scale, place },
  )
}
