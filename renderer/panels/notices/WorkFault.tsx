import { useEffect } from 'react'
import { logFault } from '../../state/fault.ts'
import { showLog } from '../../state/log.ts'
import { useFiles } from '../../window-context.ts'

interface Props {
  readonly className: string
  /** What could not be done, as a sentence. */
  readonly what: string
  /** As the log has it. */
  readonly about: string
  /** What the worker said: for those who mend it, so it goes to the log and not to the page. */
  readonly fault: string
  readonly onAgain?: () => void
}

/** Work beside the page broke: told in words, logged, with a way to the log and a way to begin again. */
export function WorkFault({ className, what, about, fault, onAgain }: Props) {
  const files = useFiles()
  useEffect(() => logFault(files, about, fault), [files, about, fault])
  return (
    <p className={className} role="alert">
      {what} Something in Stopgap failed that should not have; the plan is as it was.{' '}
      {onAgain === undefined ? null : (
        <button type="button" className="step" onClick={onAgain}>
          Try again
        </button>
      )}{' '}
      <button type="button" className="step" onClick={() => void showLog(files)}>
        Show log
      </button>
    </p>
  )
}
