import { OPEN_SANS } from './font/open-sans.ts'
import { PAPER_SIZES, type Paper } from './page/paper.ts'

/** Ink on white paper, whatever the window looks like. */
const INKS: Readonly<Record<string, string>> = {
  sheet: '#fff',
  ground: '#fff',
  ink: '#14191c',
  ink2: '#465056',
  ink3: '#5b666c',
  rule: '#bfc6c5',
  hair: '#dde1df',
  coil: '#1b5897',
  'coil-t': '#dce7f3',
  'coil-z': '#f0f5fa',
  stop: '#8a4b00',
  'stop-t': '#f6e4c8',
  'stop-z': '#fcf5e9',
  gas: '#5b666c',
  'gas-t': '#e6e9e8',
  alarm: '#ae0c37',
  metal: '#e3e7e6',
  metal2: '#cdd3d2',
}

/** A drawing with its inks written out, for programs that know no custom properties. */
export const inked = (markup: string): string =>
  markup.replace(/var\(--([\w-]+)\)/g, (_, name: string) => {
    const ink = INKS[name]
    if (ink === undefined)
      throw new Error(`The sheets have no ink “${name}”. They have ${Object.keys(INKS).join(', ')}.`)
    return ink
  })

const face = (weight: 400 | 600): string =>
  `@font-face{font-family:"Sheet";font-weight:${weight};src:url(data:font/woff2;base64,${OPEN_SANS[weight]}) format("woff2")}`

/** The fonts, inside. */
export const FACES = `${face(400)}${face(600)}`

/** Style of the sheets on a page of HTML, for one paper: each sheet is a page. */
export const sheetStyle = (paper: Paper): string =>
  `${FACES}.sheet{${Object.entries(INKS)
    .map(([name, ink]) => `--${name}:${ink}`)
    .join(
      ';',
    )};display:block;background:#fff;color-scheme:light;font-variant-numeric:tabular-nums lining-nums;-webkit-print-color-adjust:exact;print-color-adjust:exact;break-after:page;break-inside:avoid}.sheet:last-child{break-after:auto}@page{size:${PAPER_SIZES[paper].width}mm ${PAPER_SIZES[paper].height}mm;margin:0}`
