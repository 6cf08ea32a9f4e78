import { memo } from 'react'

/** What a filled area is made of; the pattern tells it without colour. */
export type PatternName = 'springs' | 'stop' | 'gas' | 'band'

export const patternFill = (prefix: string, name: PatternName): string => `url(#${prefix}-${name})`

/**
 * Pattern definitions of one drawing: springs open 45 degree lines, stop dense crosshatch, gas dots, fast-gas band fine 135 degree lines.
 * `prefix` keeps two drawings on one page apart.
 */
export const ChartPatterns = memo(function ChartPatterns({ prefix }: { readonly prefix: string }) {
  return (
    <defs>
      <pattern
        id={`${prefix}-springs`}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="7" height="7" fill="var(--coil-t)" />
        <path d="M0 0V7" stroke="var(--coil)" strokeWidth="1.5" />
      </pattern>
      <pattern id={`${prefix}-stop`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <rect width="5" height="5" fill="var(--stop-t)" />
        <path d="M0 0V5M0 0H5" stroke="var(--stop)" strokeWidth="1.5" />
      </pattern>
      <pattern id={`${prefix}-band`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V5" stroke="var(--stop)" strokeWidth="0.8" />
      </pattern>
      <pattern id={`${prefix}-gas`} width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--gas-t)" />
        <circle cx="1.25" cy="1.25" r="0.9" fill="var(--gas)" />
        <circle cx="3.75" cy="3.75" r="0.9" fill="var(--gas)" />
      </pattern>
    </defs>
  )
})
