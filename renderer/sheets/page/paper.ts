export type Paper = 'a4' | 'letter'

/** Page sizes, mm: ISO 216, and 8 1/2 by 11 in. */
export const PAPER_SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
}

/** A page and what is left white at its edges, px of 1/96 in. */
export interface Page {
  readonly width: number
  readonly height: number
  readonly left: number
  readonly top: number
  readonly bottom: number
}

const px = (mm: number): number => (mm / 25.4) * 96

/** No printer needs more than this at the bottom, and few more at the sides. */
export const pageOf = (paper: Paper, edge: number): Page => ({
  width: px(PAPER_SIZES[paper].width),
  height: px(PAPER_SIZES[paper].height),
  left: px(edge),
  top: px(edge - 2),
  bottom: px(8),
})
