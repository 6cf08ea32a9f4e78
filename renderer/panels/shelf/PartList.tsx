import type { Kept, Shelf } from '../../../core/changes/shelf.ts'
import { type KeptOf, type PartKind, springWords, stopWords, tubeWords } from '../../../core/changes/shelf-parts.ts'
import type { Say } from '../../../core/units/saying.ts'
import { type NewPart, ownCopy } from './new-parts.ts'

const TITLES: Readonly<Record<PartKind, string>> = {
  stops: 'Stops',
  springs: 'Main springs',
  tubes: 'Tube for spacers',
}

/** What a part is, in words. */
const words: { readonly [Kind in PartKind]: (part: KeptOf<Kind>['part'], say: Say) => string } = {
  stops: stopWords,
  springs: springWords,
  tubes: tubeWords,
}

interface Props {
  readonly kind: PartKind
  readonly shelf: Shelf
  readonly say: Say
  readonly chosen: string | null
  readonly offers: readonly NewPart[]
  readonly onChoose: (id: string) => void
  readonly onAdd: (part: KeptOf<PartKind>, what: string) => void
}

/** One kind of part: the user’s own, ways to add one, and the generic sizes that stand in while there is none. */
export function PartList({ kind, shelf, say, chosen, offers, onChoose, onAdd }: Props) {
  const list: readonly Kept<unknown>[] = shelf[kind]
  const own = list.filter(({ generic }) => !generic)
  const generic = list.filter(each => each.generic)
  const what = (part: unknown) => (words[kind] as (part: unknown, say: Say) => string)(part, say)
  return (
    <section className="parts" aria-label={TITLES[kind]}>
      <h3>{TITLES[kind]}</h3>
      {own.length === 0 ? (
        <p>
          {generic.length === 0
            ? 'Nothing here.'
            : 'None of your own yet: changes are taken from the generic sizes, which are assumed.'}
        </p>
      ) : (
        <ul className="part-list">
          {own.map(({ id, name, part }) => (
            <li key={id}>
              <button type="button" className="part" aria-pressed={id === chosen} onClick={() => onChoose(id)}>
                <span className="part-name">{name === '' ? 'Without a name' : name}</span>
                {what(part) === name ? null : <span className="part-what">{what(part)}</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
      <p className="part-adds">
        Add:{' '}
        {offers.map(({ words: offer, make }) => (
          <button key={offer} type="button" className="step" onClick={() => onAdd(make(), offer)}>
            {offer}
          </button>
        ))}
      </p>
      {generic.length === 0 ? null : (
        <details className="shelf-choice">
          <summary>
            {generic.length} generic {generic.length === 1 ? 'size' : 'sizes'},{' '}
            {own.length === 0 ? 'used while there is nothing else' : 'not used: you have your own'}
          </summary>
          <ul className="part-list">
            {generic.map(kept => (
              <li key={kept.id} className="generic">
                <span>
                  {what(kept.part)} <i className="as">assumed</i>
                </span>
                <button
                  type="button"
                  className="step"
                  aria-label={`Take ${kept.name} as my own`}
                  onClick={() => onAdd(ownCopy(kept as KeptOf<typeof kind>), kept.name)}
                >
                  Take it as mine
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}
