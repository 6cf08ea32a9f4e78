import { type KeyboardEvent, useState } from 'react'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { type PartKind, together, withPart } from '../../../core/changes/shelf-parts.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { Say } from '../../../core/units/saying.ts'
import { commandHere } from '../../shortcuts.ts'
import type { KeptShelf, ShelfView } from '../../state/shelf.ts'
import { newParts } from './new-parts.ts'
import { PartEditor } from './PartEditor.tsx'
import { PartList } from './PartList.tsx'
import { ShelfFiles } from './ShelfFiles.tsx'

const KINDS: readonly PartKind[] = ['stops', 'springs', 'tubes']

interface Props {
  readonly kept: KeptShelf
  readonly view: ShelfView
  readonly corner: Corner
  readonly system: System
  readonly say: Say
}

/** Stops, springs and tubes the shop has to hand, for every plan; what is done here is undone here. */
export function ShelfPanel({ kept, view, corner, system, say }: Props) {
  const { shelf, state, undo, redo } = view
  const [chosen, setChosen] = useState<{ kind: PartKind; id: string } | null>(null)
  const [told, setTold] = useState<string | null>(null)
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    const command = commandHere(event)
    if (command !== 'undo' && command !== 'redo') return
    event.preventDefault()
    kept[command]()
  }
  if (state !== 'ready')
    return (
      <div className="shelf-panel">
        {state === 'reading' ? (
          <p>The shelf is being read.</p>
        ) : (
          <p role="alert">
            The shelf could not be read, so nothing is changed on it.{' '}
            <button type="button" className="step" onClick={kept.begin}>
              Try again
            </button>
          </p>
        )}
      </div>
    )
  const offers = newParts(corner, say)
  const bare = KINDS.some(kind => shelf[kind].length === 0)
  const there = chosen !== null && shelf[chosen.kind].some(({ id }) => id === chosen.id)
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys of undo and redo, wherever the keyboard is inside.
    <div className="shelf-panel" onKeyDown={onKeyDown}>
      <div className="shelf-list">
        <p className="shelf-steps">
          <button
            type="button"
            className="plain"
            disabled={undo === null}
            onClick={kept.undo}
            title={undo ?? undefined}
          >
            Undo here
          </button>
          <button
            type="button"
            className="plain"
            disabled={redo === null}
            onClick={kept.redo}
            title={redo ?? undefined}
          >
            Redo here
          </button>
          <ShelfFiles kept={kept} onTold={setTold} />
        </p>
        <p role="status">{told ?? 'Kept by Stopgap for every plan, apart from the plan’s own file.'}</p>
        {bare ? (
          <p>
            <button
              type="button"
              className="step"
              onClick={() => kept.change('generic sizes put on', together(shelf, GENERIC_SHELF))}
            >
              Put the generic sizes on
            </button>
          </p>
        ) : null}
        {KINDS.map(kind => (
          <PartList
            key={kind}
            kind={kind}
            shelf={shelf}
            say={say}
            chosen={chosen?.id ?? null}
            offers={offers.filter(offer => offer.kind === kind)}
            onChoose={id => setChosen({ kind, id })}
            onAdd={(part, what) => {
              const [problem] = kept.change(`${what} added`, withPart(shelf, kind, part as never))
              if (problem === undefined) setChosen({ kind, id: part.id })
              else
                setTold(
                  `It cannot be put on the shelf: ${problem.path} is ${problem.found}; it should be ${problem.wanted}.`,
                )
            }}
          />
        ))}
      </div>
      <div className="shelf-part">
        {chosen !== null && there ? (
          <PartEditor
            key={chosen.id}
            kept={kept}
            kind={chosen.kind}
            id={chosen.id}
            system={system}
            onGone={() => setChosen(null)}
          />
        ) : (
          <p>
            Choose a part of your own to measure and name it, or add one: the car’s own parts are the quickest to begin
            with.
          </p>
        )}
      </div>
    </div>
  )
}
