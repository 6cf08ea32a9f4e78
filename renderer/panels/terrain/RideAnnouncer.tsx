import { useEffect, useState } from 'react'

/** Quiet before new figures are read out, ms: typing is not interrupted. */
const PAUSE = 1000

/** Reads the figures of a ride out when they have changed and the hands rest. */
export function RideAnnouncer({ said }: { readonly said: string }) {
  const [shown, setShown] = useState('')
  useEffect(() => {
    if (said === '' || said === shown) return
    const timer = setTimeout(() => setShown(said), PAUSE)
    return () => clearTimeout(timer)
  }, [said, shown])
  return (
    <p className="spoken" aria-live="polite">
      {shown}
    </p>
  )
}
