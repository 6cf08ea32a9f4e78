import { type ComponentType, useEffect, useState } from 'react'
import { fail } from '../../state/files.ts'
import { openDialog } from '../../state/view.ts'
import { useFiles } from '../../window-context.ts'

interface Props<P extends object> {
  /** Fetches the dialog's program. */
  readonly fetchDialog: () => Promise<ComponentType<P>>
  readonly given: P
}

/** A dialog whose program is fetched when it is first wanted; one that cannot be fetched is told of, and the window goes on without it. */
export function LateDialog<P extends object>({ fetchDialog, given }: Props<P>) {
  const files = useFiles()
  const [Body, show] = useState<ComponentType<P> | null>(null)
  useEffect(() => {
    let left = false
    fetchDialog().then(
      loaded => left || show(() => loaded),
      (error: unknown) => {
        if (left) return
        openDialog(files.store, null)
        fail(files, 'dialog', error)
      },
    )
    return () => {
      left = true
    }
  }, [fetchDialog, files])
  return Body === null ? null : <Body {...given} />
}
