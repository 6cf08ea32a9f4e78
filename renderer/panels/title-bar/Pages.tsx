import { useNarrow } from '../../narrow.ts'
import { type PageSpec, pages } from '../../pages/pages.ts'
import { showPage } from '../../state/view.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { Menu, MenuItem } from './Menu.tsx'

/** The pages of the window; where there is little room, the one shown and a menu of the others. */
export function Pages() {
  const store = useStore()
  const narrow = useNarrow()
  const shown = useSelect(state => state.view.page)
  const inSight = narrow ? pages.filter(({ id }) => id === shown) : pages
  const others = pages.filter(page => !inSight.includes(page))
  return (
    <nav className="pages" aria-label="Pages">
      {inSight.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          aria-current={id === shown ? 'page' : undefined}
          onClick={() => showPage(store, id)}
        >
          <b>{name}</b>
        </button>
      ))}
      {others.length === 0 ? null : <MorePages others={others} onChoose={id => showPage(store, id)} />}
    </nav>
  )
}

function MorePages({ others, onChoose }: { others: readonly PageSpec[]; onChoose: (id: string) => void }) {
  return (
    <>
      <button type="button" className="more-pages" popoverTarget="more-pages" aria-haspopup="menu">
        <b>{others.length === 1 ? '1 more page' : `${others.length} more pages`}</b>
      </button>
      <Menu id="more-pages" label="More pages">
        {others.map(({ id, name }) => (
          <MenuItem key={id} onChoose={() => onChoose(id)}>
            {name}
          </MenuItem>
        ))}
      </Menu>
    </>
  )
}
