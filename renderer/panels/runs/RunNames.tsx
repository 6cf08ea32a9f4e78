import { useState } from 'react'
import type { Recording } from '../../state/recording.ts'
import type { Recordings } from '../../state/recordings.ts'
import { useSelect } from '../../window-context.ts'

/** What a run is called, and the setup that was driven. */
export function RunNames({ recordings, run }: { readonly recordings: Recordings; readonly run: Recording }) {
  const setups = useSelect(state => state.plan.setups)
  const [typed, setTyped] = useState<string | null>(null)
  const take = (): void => {
    const name = typed?.trim() ?? ''
    if (name !== '' && name !== run.name) recordings.rename(run.id, name)
    setTyped(null)
  }
  return (
    <p className="run-names">
      <label>
        This run is called{' '}
        <input
          type="text"
          autoComplete="off"
          maxLength={80}
          aria-label="Name of the run"
          value={typed ?? run.name}
          onChange={event => setTyped(event.currentTarget.value)}
          onBlur={take}
          onKeyDown={event => {
            if (event.key === 'Enter') take()
            if (event.key === 'Escape') setTyped(null)
          }}
        />
      </label>{' '}
      <label>
        and was driven with{' '}
        <select
          aria-label="Driven with"
          value={run.driven}
          onChange={event => recordings.drivenWith(run.id, event.currentTarget.value)}
        >
          {setups.some(({ id }) => id === run.driven) ? null : (
            <option value={run.driven}>a setup since removed</option>
          )}
          {setups.map(({ id, name }) => (
            <option key={id} value={id}>
              {name === '' ? id : name}
            </option>
          ))}
        </select>
      </label>
    </p>
  )
}
