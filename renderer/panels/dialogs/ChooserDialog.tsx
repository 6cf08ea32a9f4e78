import { type FormEvent, useCallback, useEffect, useRef, useState } from 'react'
import type { Reply } from '../../../electron/contract/contract.ts'
import { told } from '../../state/fault.ts'
import { openToken } from '../../state/opening.ts'
import { saveIn } from '../../state/saving.ts'
import { openDialog } from '../../state/view.ts'
import { useFiles } from '../../window-context.ts'
import { Dialog } from './Dialog.tsx'

type Folder = Extract<Reply<'folder'>, { kind: 'folder' }>

/** The window's own file chooser, for a host that has none. */
export function ChooserDialog({ purpose }: { purpose: 'open' | 'save' }) {
  const files = useFiles()
  const [folder, setFolder] = useState<Folder | null>(null)
  const [trouble, setTrouble] = useState('')
  const [name, setName] = useState(() => files.store.read().document.name)
  const [exists, setExists] = useState(false)
  const close = useCallback(() => openDialog(files.store, null), [files])

  const show = useCallback(
    async (token: string | null) => {
      setExists(false)
      try {
        const reply = await files.host.call('folder', { token })
        if (reply.kind === 'failed') return setTrouble(reply.reason)
        setTrouble('')
        setFolder(reply)
      } catch (error) {
        setTrouble(told(error))
      }
    },
    [files],
  )
  useEffect(() => void show(null), [show])
  const places = useRef<HTMLDivElement>(null)
  // The keyboard goes with the list, whose entry it was on is gone; a plan to be saved is named first.
  useEffect(() => {
    if (folder === null) return
    const first = places.current?.querySelector<HTMLElement>(folder.entries.length === 0 ? 'button' : '.entries button')
    if (purpose === 'open' || document.activeElement === document.body) first?.focus()
  }, [folder, purpose])

  const pick = (token: string, chosen: string) => {
    if (purpose === 'save') return setName(chosen)
    close()
    void openToken(files, token)
  }

  const submit = async (event: FormEvent) => {
    event.preventDefault()
    if (folder === null) return
    const end = await saveIn(files, { folder: folder.token, name, replace: exists })
    if (end === 'exists') setExists(true)
    else if (end !== 'saved') setTrouble(end.reason)
  }

  return (
    <Dialog title={purpose === 'open' ? 'Open a plan' : 'Save as'} className="chooser" onClose={close}>
      <form onSubmit={event => void submit(event)}>
        <p className="path">
          <b>{folder?.name ?? 'Looking'}</b>
          <button
            type="button"
            className="step"
            disabled={folder === null || folder.parent === null}
            onClick={() => void show(folder?.parent ?? null)}
          >
            Folder above
          </button>
        </p>
        <div className="places" ref={places}>
          <ul aria-label="Places">
            {folder?.places.map(place => (
              <li key={place.token}>
                <button type="button" onClick={() => void show(place.token)}>
                  {place.name}
                </button>
              </li>
            ))}
          </ul>
          <Entries folder={folder} onFolder={token => void show(token)} onPlan={pick} />
        </div>
        {trouble === '' ? null : (
          <p className="trouble" role="alert">
            {trouble}
          </p>
        )}
        {purpose === 'save' ? (
          <div className="choice">
            <label htmlFor="save-name">Name</label>
            <input
              id="save-name"
              className="words"
              value={name}
              maxLength={200}
              onChange={event => {
                setName(event.currentTarget.value)
                setExists(false)
              }}
            />
          </div>
        ) : null}
        {exists ? <p role="alert">There is a plan of that name here. Save again to replace it.</p> : null}
        <footer>
          <button type="button" className="plain" onClick={close}>
            Cancel
          </button>
          {purpose === 'save' ? (
            <button type="submit" className="chief" disabled={folder === null || name.trim() === ''}>
              {exists ? 'Replace it' : 'Save here'}
            </button>
          ) : null}
        </footer>
      </form>
    </Dialog>
  )
}

interface EntriesProps {
  readonly folder: Folder | null
  readonly onFolder: (token: string) => void
  readonly onPlan: (token: string, name: string) => void
}

const day = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium' })

function Entries({ folder, onFolder, onPlan }: EntriesProps) {
  if (folder === null) return <p className="nothing">Reading the folder.</p>
  if (folder.entries.length === 0) return <p className="nothing">No folders and no plans here.</p>
  return (
    <ul className="entries" aria-label={`In ${folder.name}`}>
      {folder.entries.map(({ token, name, kind, modified }) => (
        <li key={token}>
          <button type="button" onClick={() => (kind === 'folder' ? onFolder(token) : onPlan(token, name))}>
            <span>{kind === 'folder' ? `${name}/` : name}</span>
            <small>{kind === 'folder' ? 'folder' : day.format(new Date(modified))}</small>
          </button>
        </li>
      ))}
      {folder.unlisted > 0 ? <li className="nothing">and {folder.unlisted} more</li> : null}
    </ul>
  )
}
