import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react'
import { largerDrawn } from '../charts/plate/pointer-in.ts'
import { remember } from '../state/settings.ts'
import { showGuide } from '../state/view.ts'
import { useFiles } from '../window-context.ts'
import { guideSteps } from './guide-steps.ts'
import { notePlace } from './note-place.ts'

/** A first look around the window, a note at a time. It holds nothing up, and once put away it does not come back by itself. */
export function Guide() {
  const files = useFiles()
  const [at, go] = useState(0)
  const [heading, text] = [useId(), useId()]
  const note = useRef<HTMLDivElement>(null)
  const ring = useRef<HTMLDivElement>(null)
  const step = guideSteps[at]!
  const last = at === guideSteps.length - 1

  useLayoutEffect(() => {
    const part = document.querySelector(step.part)
    const place = () => put(note.current, ring.current, part)
    part?.scrollIntoView({ block: 'nearest' })
    place()
    window.addEventListener('resize', place)
    window.addEventListener('scroll', place)
    return () => {
      window.removeEventListener('resize', place)
      window.removeEventListener('scroll', place)
    }
  }, [step])

  // The keyboard begins at the note, and goes back to where it was.
  useEffect(() => {
    const before = document.activeElement
    note.current?.focus()
    return () => {
      if (before instanceof HTMLElement) before.focus()
    }
  }, [])

  const end = () => {
    showGuide(files.store, false)
    void remember(files, { lookedAround: true })
  }
  return (
    <>
      <div ref={ring} className="guide-ring" aria-hidden="true" />
      <div
        ref={note}
        className="guide"
        role="dialog"
        aria-labelledby={heading}
        aria-describedby={text}
        tabIndex={-1}
        onKeyDown={event => {
          if (event.key === 'Escape') end()
        }}
      >
        <h2 id={heading}>{step.name}</h2>
        <p id={text} aria-live="polite">
          {step.says}
        </p>
        <footer>
          <span>
            {at + 1} of {guideSteps.length}
          </span>
          {last ? null : (
            <button type="button" className="plain" onClick={end}>
              Skip the rest
            </button>
          )}
          {at === 0 ? null : (
            <button type="button" className="plain" onClick={() => go(at - 1)}>
              Back
            </button>
          )}
          <button type="button" className="chief" onClick={() => (last ? end() : go(at + 1))}>
            {last ? 'Done' : 'Next'}
          </button>
        </footer>
      </div>
    </>
  )
}

function put(note: HTMLElement | null, ring: HTMLElement | null, part: Element | null): void {
  if (note === null || ring === null) return
  const size = { width: note.offsetWidth, height: note.offsetHeight }
  // The note and its ring are placed in the px they are drawn with, the part is measured in those of the window.
  const larger = largerDrawn(note)
  const room = { width: window.innerWidth / larger, height: window.innerHeight / larger }
  const middle = { left: room.width / 2, right: room.width / 2, top: room.height / 3, bottom: room.height / 3 }
  const seen = part?.getBoundingClientRect()
  const rect =
    seen === undefined
      ? middle
      : {
          left: seen.left / larger,
          right: seen.right / larger,
          top: seen.top / larger,
          bottom: seen.bottom / larger,
        }
  const { left, top } = notePlace(rect, size, room)
  Object.assign(note.style, { left: `${left}px`, top: `${top}px` })
  ring.hidden = part === null
  Object.assign(ring.style, {
    left: `${rect.left}px`,
    top: `${rect.top}px`,
    width: `${rect.right - rect.left}px`,
    height: `${rect.bottom - rect.top}px`,
  })
}
