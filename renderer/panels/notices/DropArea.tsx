import { useEffect, useState } from 'react'
import { bringRecording, looksLikeRecording } from '../../state/brought-recording.ts'
import { openDropped } from '../../state/opening.ts'
import { useFiles } from '../../window-context.ts'

const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false

/** A plan dropped anywhere on the window is opened; a table is laid over it as a recorded run. */
export function DropArea() {
  const files = useFiles()
  const [over, setOver] = useState(false)
  useEffect(() => {
    const onOver = (event: DragEvent) => {
      if (!holdsFile(event)) return
      event.preventDefault()
      setOver(true)
    }
    const onLeave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false)
    }
    const onDrop = (event: DragEvent) => {
      setOver(false)
      const file = event.dataTransfer?.files[0]
      // The page under it took the file.
      if (file === undefined || event.defaultPrevented) return
      event.preventDefault()
      if (looksLikeRecording(file)) bringRecording(files.store, file)
      else void openDropped(files, file)
    }
    window.addEventListener('dragover', onOver)
    window.addEventListener('dragleave', onLeave)
    window.addEventListener('drop', onDrop)
    return () => {
      window.removeEventListener('dragover', onOver)
      window.removeEventListener('dragleave', onLeave)
      window.removeEventListener('drop', onDrop)
    }
  }, [files])
  return over ? (
    <div className="drop-area" aria-hidden="true">
      <p>Drop a plan or a recording to open it</p>
    </div>
  ) : null
}
