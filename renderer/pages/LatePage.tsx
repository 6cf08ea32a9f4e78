import { useState } from 'react'
import type { Later } from './later.ts'
import { useLater } from './use-later.ts'

/**
 * Once fetched, a page is drawn at once, with no picture of waiting between; until then its place is held. One that cannot be fetched
 * is told by the guard around it, and is tried anew when it is shown again.
 */
export function LatePage({ page }: { page: Later }) {
  const [fault, setFault] = useState<unknown>(null)
  const Page = useLater(page, setFault)
  if (fault !== null) throw fault
  return Page === null ? <Coming /> : <Page />
}

/** Says that a page is coming only when it takes long enough to be noticed. */
const Coming = () => (
  <main className="page-coming" aria-busy="true">
    <p>Opening the page</p>
  </main>
)
