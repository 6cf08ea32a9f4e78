export interface Rect {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

const AWAY = 14

/**
 * Where a note stands beside the part it is about, px: right of it, under it, above it, else in its lower right corner; never outside the window.
 */
export function notePlace(part: Rect, note: Size, window: Size): { left: number; top: number } {
  const inside = (left: number, top: number) => ({
    left: Math.max(AWAY, Math.min(left, window.width - note.width - AWAY)),
    top: Math.max(AWAY, Math.min(top, window.height - note.height - AWAY)),
  })
  if (part.right + note.width + 2 * AWAY <= window.width) return inside(part.right + AWAY, part.top + AWAY)
  const across = part.left + (part.right - part.left) / 3
  if (part.bottom + note.height + 2 * AWAY <= window.height) return inside(across, part.bottom + AWAY)
  if (part.top - note.height - 2 * AWAY >= 0) return inside(across, part.top - note.height - AWAY)
  return inside(part.right - note.width - AWAY, part.bottom - note.height - AWAY)
}
