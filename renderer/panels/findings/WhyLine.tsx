import { unbroken } from './unbroken.ts'
import type { Why } from './use-diagnosis.ts'

/** What put the axle on its stop, by size; what one change of each kind would mend it; what the driver feels. */
export const WhyLine = ({ why: { finding, changes, feel } }: { why: Why }) => (
  <li className="why">
    <svg width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
      <path d="M-5 0H5M1 -4l4 4l-4 4" stroke="var(--ink)" strokeWidth="1.5" fill="none" />
    </svg>
    <span className="sev">Why</span>
    <span>{unbroken(`${finding.message} ${feel.join(' ')}`)}</span>
    <span className="next">{unbroken(changes === '' ? finding.remedy : changes)}</span>
  </li>
)
