import { useEffect, useState } from 'react'

/** Quiet before new figures are read out, ms: typing is not interrupted. */
const PAUSE = 1000

/** Reads out what long work came to, when that has changed and the hands rest; nothing while it is empty. */
export function ResultAnnouncer({ said }: { readonly said: string }) {
  const [shown, setShown] = useState('')
  useEffect(() => {
    if (said === '' || said === shown) return
    const timer = setTimeout(() => setShown(said), PAUSE)
    return () => clearTimeout(timer)
  }, [said, shown])
  return (
    <span className="spoken" aria-live="polite">
      {shown}
    </span>
  )
}
