import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import { Dialog } from '../panels/dialogs/Dialog.tsx'
import { openDialog } from '../state/view.ts'
import { useStore } from '../window-context.ts'
import { KeyTable } from './KeyTable.tsx'
import { matching } from './search.ts'
import { type Term, termGroups } from './terms.tsx'

/** The word help opens on where none is asked for. */
const FIRST = 'wheel-travel'
/** Stands among the words, and lists the keys of the window. */
const KEYS = 'keys'

const terms: readonly Term[] = termGroups.flatMap(group => group.terms)

/** Every word of the window explained, with a picture: found by name, read beside the list. */
export function HelpDialog({ term }: { readonly term: string | null }) {
  const store = useStore()
  const [chosen, choose] = useState(term ?? FIRST)
  const [sought, seek] = useState('')
  const close = () => openDialog(store, null)
  const shown = terms.find(({ id }) => id === chosen) ?? terms[0]!
  return (
    <Dialog title="Help with the words" className="help" onClose={close}>
      <div className="help-parts">
        <div className="help-words">
          <input
            className="words"
            aria-label="Find a word"
            placeholder="Find a word"
            value={sought}
            onChange={event => seek(event.currentTarget.value)}
          />
          <WordList sought={sought} chosen={chosen} onChoose={choose} />
        </div>
        {chosen === KEYS ? <KeyTable /> : <Explained term={shown} />}
      </div>
      <footer>
        <button type="button" className="chief" onClick={close}>
          Close
        </button>
      </footer>
    </Dialog>
  )
}

interface ListProps {
  readonly sought: string
  readonly chosen: string
  readonly onChoose: (id: string) => void
}

/** Arrows walk through the words; the keyboard begins at the one shown. */
function WordList({ sought, chosen, onChoose }: ListProps) {
  const list = useRef<HTMLElement>(null)
  useEffect(() => {
    const first = list.current?.querySelector<HTMLElement>('[aria-current]')
    first?.focus()
    first?.scrollIntoView({ block: 'nearest' })
  }, [])
  const onKeyDown = (event: KeyboardEvent) => {
    const words = [...(list.current?.querySelectorAll<HTMLElement>('button') ?? [])]
    const at = words.indexOf(document.activeElement as HTMLElement)
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: words.length - 1 }[event.key]
    if (to === undefined || at < 0) return
    event.preventDefault()
    words.at(to % words.length)?.focus()
  }
  const found = termGroups
    .map(group => ({ ...group, terms: matching(group.terms, sought) }))
    .filter(group => group.terms.length > 0)
  const word = (id: string, name: string) => (
    <button key={id} type="button" aria-current={id === chosen ? 'true' : undefined} onClick={() => onChoose(id)}>
      {name}
    </button>
  )
  return (
    <nav ref={list} aria-label="Words" onKeyDown={onKeyDown}>
      {found.length === 0 ? (
        <p role="status" className="help-none">
          No word here fits that.
        </p>
      ) : null}
      {found.map(group => (
        <section key={group.name}>
          <h3>{group.name}</h3>
          {group.terms.map(({ id, name }) => word(id, name))}
        </section>
      ))}
      <section>
        <h3>The window</h3>
        {word(KEYS, 'Keys')}
      </section>
    </nav>
  )
}

function Explained({ term }: { readonly term: Term }) {
  const heading = useId()
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
    <section className="help-said" aria-labelledby={heading} aria-live="polite" tabIndex={0}>
      <h3 id={heading}>{term.name}</h3>
      <div className="help-picture">{term.picture}</div>
      {term.says.map(sentence => (
        <p key={sentence}>{sentence}</p>
      ))}
      {term.caution === undefined ? null : (
        <p className="help-caution">
          <b>Take care.</b> {term.caution}
        </p>
      )}
    </section>
  )
}
