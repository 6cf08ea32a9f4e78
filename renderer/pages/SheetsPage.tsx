import { useEffect, useMemo, useState } from 'react'
import { AsBuilt } from '../panels/sheets/AsBuilt.tsx'
import { SheetFiles } from '../panels/sheets/SheetFiles.tsx'
import type { Paper } from '../sheets/page/paper.ts'
import { PAPERS, SHEETS, type SheetKind, type SheetRequest, usualPair } from '../sheets/request.ts'
import { Sheet, sheetSides } from '../sheets/Sheet.tsx'
import { sheetStyle } from '../sheets/sheet-style.ts'
import { useShelf } from '../shelf-kept.ts'
import { shownAxle } from '../state/selectors.ts'
import { useSelectGroup } from '../window-context.ts'

/** How large the preview is. */
const SIZES: Readonly<Record<'fit' | 'real', string>> = { fit: 'To fit', real: 'As printed' }

const today = (): string => new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })

/** The page's own rules are there while it is: they set the paper the window prints on. */
function useSheetStyle(paper: Paper): void {
  useEffect(() => {
    const style = new CSSStyleSheet()
    style.replaceSync(sheetStyle(paper))
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, style]
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter(each => each !== style)
    }
  }, [paper])
}

/** The sheets that leave the shop, as they will be printed. */
export function SheetsPage() {
  const { plan, axle } = useSelectGroup(state => ({ plan: state.plan, axle: shownAxle(state).axle.id }))
  const [kind, setKind] = useState<SheetKind>('customer')
  const [paper, setPaper] = useState<Paper>(plan.units === 'inch' ? 'letter' : 'a4')
  const [size, setSize] = useState<keyof typeof SIZES>('fit')
  const [chosen, choose] = useState<{ before?: string; after?: string }>({})
  useSheetStyle(paper)
  const usual = useMemo(() => usualPair(plan, axle), [plan, axle])
  const there = (id: string | undefined): id is string => plan.setups.some(setup => setup.id === id)
  const before = there(chosen.before) ? chosen.before : usual.before
  const after = there(chosen.after) ? chosen.after : usual.after
  const { shelf } = useShelf().shelfView
  const request = useMemo<SheetRequest>(
    () => ({ plan, axle, before, after, paper, shelf, date: today() }),
    [plan, axle, before, after, paper, shelf],
  )
  const sides = useMemo(() => sheetSides(request), [request])
  const setups = plan.setups.map(({ id, name }) => ({ id, name: name.trim() === '' ? id : name }))
  return (
    <main className="sheets" aria-label="Sheets">
      <header className="sheets-head">
        <h2>Sheets</h2>
        <Choice label="Sheet" value={kind} options={SHEETS} onChoose={setKind} />
        <Choice label="Paper" value={paper} options={PAPERS} onChoose={setPaper} />
        <Choice
          label="Before"
          value={before}
          options={Object.fromEntries(setups.map(({ id, name }) => [id, name]))}
          onChoose={id => choose(was => ({ ...was, before: id }))}
        />
        <Choice
          label="After"
          value={after}
          options={Object.fromEntries(setups.map(({ id, name }) => [id, name]))}
          onChoose={id => choose(was => ({ ...was, after: id }))}
        />
        <Choice label="Size" value={size} options={SIZES} onChoose={setSize} />
        <SheetFiles request={request} kind={kind} />
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a page longer than its place is scrolled with the keys */}
      <section className={`sheets-preview ${size}`} aria-label="Preview" tabIndex={0}>
        {'problem' in sides ? <p>{sides.problem}</p> : <Sheet kind={kind} request={request} sides={sides} />}
      </section>
      {'problem' in sides ? null : <AsBuilt key={`${after}-${axle}`} plan={plan} sides={sides} />}
    </main>
  )
}

interface ChoiceProps<Name extends string> {
  readonly label: string
  readonly value: Name
  readonly options: Readonly<Record<Name, string>>
  onChoose(name: Name): void
}

const Choice = <Name extends string>({ label, value, options, onChoose }: ChoiceProps<Name>) => (
  <label>
    <span>{label}</span>
    <select aria-label={label} value={value} onChange={event => onChoose(event.currentTarget.value as Name)}>
      {(Object.entries(options) as [Name, string][]).map(([name, text]) => (
        <option key={name} value={name}>
          {text}
        </option>
      ))}
    </select>
  </label>
)
