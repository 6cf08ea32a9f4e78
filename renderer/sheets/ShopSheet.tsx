import type { SheetProps } from './CustomerSheet.tsx'
import { Foot, fitting, Lines, Mark } from './Lines.tsx'
import { type ShopRow, shopFacts } from './shop-facts.ts'

/** Rows of the table there is room for. */
const ROOM = 11

/** What changes is never what is left out for want of room. */
function shown(rows: readonly ShopRow[]): { readonly rows: readonly ShopRow[]; readonly left: number } {
  if (rows.length <= ROOM) return { rows, left: 0 }
  const kept = new Set([...rows.filter(row => row.changed), ...rows.filter(row => !row.changed)].slice(0, ROOM - 1))
  return { rows: rows.filter(row => kept.has(row)), left: rows.length - kept.size }
}

/** What the shop works from and writes on, on one page. */
export function ShopSheet({ plan, before, after, date }: SheetProps) {
  const facts = shopFacts(plan, before, after)
  const { rows, left } = shown(facts.rows)
  return (
    <>
      <header>
        <h1>{facts.title}</h1>
        <p>
          <span>For the shop</span>
          <span>{date ?? 'Date:'}</span>
        </p>
      </header>
      <p className="rules">
        <Mark severity="caution" />
        <span>{facts.rules}</span>
      </p>
      <table className="work">
        <thead>
          <tr>
            <th>Each side</th>
            <th>
              <span>{before.setup.name}</span>
            </th>
            <th>
              <span>{after.setup.name}</span>
            </th>
            <th>Hold</th>
            <th>Left, as built</th>
            <th>Right, as built</th>
            <th>By</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(row => (
            <tr key={row.name} className={row.changed ? 'changed' : undefined}>
              <td>
                <span>{row.name}</span>
              </td>
              <td>{row.before}</td>
              <td>{row.after}</td>
              <td>{row.tolerance}</td>
              <td className="blank" />
              <td className="blank" />
              <td className="blank" />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="key">
        Bold is changed.{left > 0 ? ` ${left} more rows are in the plan.` : ''} {facts.results.join(' ')}
      </p>
      <div className="two">
        <div>
          <Lines head="Cut list" lines={fitting(facts.cut, 8, 'the plan')} />
          <Lines head="Charge" lines={fitting(facts.charge, 4, 'the plan')} />
        </div>
        <Lines head="Order of work" lines={fitting(facts.order, 11, 'the plan')} ordered />
      </div>
      <div className="care">
        <h2>Cautions</h2>
        <ul className="columns">
          {facts.cautions.map(({ text, source }) => (
            <li key={text}>
              <span>
                {text}
                {source === null ? null : <i> After {source}.</i>}
              </span>
            </li>
          ))}
        </ul>
      </div>
      <Foot names={['Work done by', 'Checked by', 'Date']} left="Shop sheet" right="Lengths as a tape reads them" />
    </>
  )
}
