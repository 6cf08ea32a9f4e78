import { useEffect, useState } from 'react'
import type { Licence } from '../../electron/contract/licence.ts'
import { Dialog } from '../panels/dialogs/Dialog.tsx'
import { showLog } from '../state/log.ts'
import { openDialog } from '../state/view.ts'
import { useFiles, useSelect } from '../window-context.ts'
import { shippedLicences } from './licences.ts'
import { browserVersion } from './runs-in.ts'

/** What this is, what it runs on, and under which licences its parts are given. */
export function AboutDialog() {
  const files = useFiles()
  const { version, host, runsOn = [] } = useSelect(state => state.about)
  const close = () => openDialog(files.store, null)
  const browser = runsOn.some(({ name }) => name === 'Chromium') ? null : browserVersion(navigator.userAgent)
  return (
    <Dialog title="About Stopgap" className="about" onClose={close}>
      <p>Works out what an off-road car’s wheel travel is spent on: coilover, bump stop, and what ends it.</p>
      <dl>
        <dt>Stopgap</dt>
        <dd>{version}</dd>
        <dt>Window</dt>
        <dd>{host === 'electron' ? 'of its own' : 'in an installed browser'}</dd>
        {[...runsOn, ...(browser === null ? [] : [browser])].map(each => (
          <Part key={each.name} {...each} />
        ))}
      </dl>
      <h3>Licences of what it is made of</h3>
      <Licences />
      <footer>
        <button
          type="button"
          className="plain"
          onClick={() => {
            close()
            void showLog(files)
          }}
        >
          Show log
        </button>
        <button type="button" className="chief" onClick={close}>
          Close
        </button>
      </footer>
    </Dialog>
  )
}

const Part = ({ name, version }: { readonly name: string; readonly version: string }) => (
  <>
    <dt>{name}</dt>
    <dd>{version}</dd>
  </>
)

function Licences() {
  const [read, setRead] = useState<readonly Licence[] | 'coming' | 'missing'>('coming')
  useEffect(() => {
    let left = false
    shippedLicences().then(
      licences => left || setRead(licences),
      () => left || setRead('missing'),
    )
    return () => {
      left = true
    }
  }, [])
  if (read === 'coming') return <p role="status">Reading them</p>
  if (read === 'missing')
    return <p role="alert">They cannot be read: licences.json is missing from this installation.</p>
  return (
    <div className="licences">
      {read.map(({ name, version, licence, text }) => (
        <details key={name}>
          <summary>
            {name} {version}, {licence}
          </summary>
          <pre>{text}</pre>
        </details>
      ))}
    </div>
  )
}
