import { formatPlan } from '../../../core/plan/file-text.ts'
import { dismiss, type Notice } from '../../state/notices.ts'
import { take } from '../../state/remedies.ts'
import { useFiles, useSelect } from '../../window-context.ts'
import { saveCopy } from './save-copy.ts'

/** What went wrong or should be known, in words, with what to do about it. */
export function Notices() {
  const notices = useSelect(state => state.notices)
  const gone = useSelect(state => state.hostGone)
  return (
    <div className="notices" role="status">
      {gone ? <HostGone /> : null}
      {notices.map(notice => (
        <Line key={notice.about} notice={notice} />
      ))}
    </div>
  )
}

function Line({ notice }: { notice: Notice }) {
  const files = useFiles()
  const { about, severity, text, details, steps } = notice
  return (
    <div className={`notice ${severity}`}>
      <div>
        <p className="told">{text}</p>
        {details.length === 0 ? null : (
          <ul>
            {details.map(line => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </div>
      <p className="steps">
        {steps.map(({ label, remedy }) => (
          <button key={label} type="button" className="step" onClick={() => void take(files, about, remedy)}>
            {label}
          </button>
        ))}
        <button type="button" className="step" onClick={() => dismiss(files.store, about)}>
          Close
        </button>
      </p>
    </div>
  )
}

function HostGone() {
  const { store } = useFiles()
  return (
    <div className="notice failure" role="alert">
      <p className="told">
        Stopgap has ended, so nothing can be opened or saved from this window. What you see stays until you close it.
      </p>
      <p className="steps">
        <button
          type="button"
          className="step"
          onClick={() => saveCopy(`${store.read().document.name}.stopgap`, formatPlan(store.read().plan))}
        >
          Download a copy of the plan
        </button>
      </p>
    </div>
  )
}
