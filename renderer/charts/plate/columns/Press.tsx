import type { KeyboardEvent, ReactNode } from 'react'
import type { Box } from '../../placement/box.ts'
import { STEPPING, type Steps, useSteps } from './use-steps.ts'

interface PressProps extends Steps {
  readonly label: string
  readonly reach: Box
  /** Pressed in or not; left out for what is only pressed. */
  readonly on?: boolean
  readonly onPress: () => void
  readonly children?: ReactNode
}

/** Part of the drawing that is pressed, by pointer or by key. */
export function Press({ label, reach, on, onPress, onStep, onStepped, children }: PressProps) {
  const { x, y, width, height } = reach
  const steps = useSteps({ onStep, onStepped })
  const onKeyDown = (event: KeyboardEvent): void => {
    if (steps.key(event)) return
    if (event.key !== 'Enter' && event.key !== ' ') return
    event.preventDefault()
    onPress()
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button cannot stand inside an svg
    <g
      className={onStep === undefined ? 'plate-press' : 'plate-press steps'}
      role="button"
      aria-pressed={on}
      tabIndex={0}
      aria-label={label}
      aria-keyshortcuts={onStep === undefined ? undefined : Object.keys(STEPPING).join(' ')}
      onClick={() => {
        if (!steps.dragged()) onPress()
      }}
      onKeyDown={onKeyDown}
      {...steps.handlers}
    >
      <rect
        className="focus-ring"
        x={x + 1}
        y={y + 1}
        width={width - 2}
        height={height - 2}
        fill="none"
        strokeWidth="2"
      />
      <rect x={x} y={y} width={width} height={height} fill="transparent" />
      {children}
    </g>
  )
}
