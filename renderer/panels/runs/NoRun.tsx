import { RecordingFile } from './RecordingFile.tsx'

/** A plan without a recorded run: what to bring, and what for. */
export const NoRun = ({ onFile }: { readonly onFile: (file: File) => void }) => (
  <div className="no-terrain no-run">
    <h2>No recorded run yet</h2>
    <p>
      Bring what travel sensors recorded, and this page shows where the car really lives in its travel: how much of the
      time it is on its stop, how fast it comes to it, and whether the plan’s ride height and engagement hold.
    </p>
    <p>
      <RecordingFile name="Open a recording" className="chief" onFile={onFile} /> or drop the file here.
    </p>
    <ul className="plain-list">
      <li>
        A table as text: a row for each moment, a column for each sensor, parted by commas, semicolons, tabs or spaces.
      </li>
      <li>A time in the file, or the rows a second it was recorded at.</li>
      <li>Travel of the shock’s shaft or of the wheel, in a length or in volts; one corner is enough.</li>
      <li>
        Let it record for some seconds with the car standing at ride height, and hanging at full droop: zero and sign
        come from there.
      </li>
    </ul>
    <p className="quiet">
      How the file is written is told from it, shown, and can be put right. The file is only read.
    </p>
  </div>
)
