import { LateDialog } from '../panels/dialogs/LateDialog.tsx'
import { useSelect } from '../window-context.ts'

const fetchGuide = async () => (await import('./Guide.tsx')).Guide

/** The look around: the first time, until it is put away, and whenever it is asked for. */
export function FirstLook() {
  const wanted = useSelect(({ view, settings }) => view.guide || settings.lookedAround !== true)
  const busy = useSelect(({ view }) => view.dialog !== null)
  return wanted && !busy ? <LateDialog fetchDialog={fetchGuide} given={{}} /> : null
}
