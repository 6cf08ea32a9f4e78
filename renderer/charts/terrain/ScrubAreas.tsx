import type { TravelScene } from './travel-scene.ts'

/** Where time is held: over the trace, and over the whole of it below. */
export function ScrubAreas({ scene: { frame, time } }: { readonly scene: TravelScene }) {
  const across = { x: time.left - 4, width: time.right - time.left + 8, fill: 'transparent' }
  const { top } = frame.overview
  return (
    <>
      <rect data-scrub="trace" {...across} y={frame.head} height={Math.max(0, top - frame.head)} />
      <rect data-scrub="overview" {...across} y={top} height={Math.max(0, frame.height - top)} />
    </>
  )
}
