import { type KeyboardEvent, type ReactNode, type ToggleEvent, useRef } from 'react'

interface MenuProps {
  readonly id: string
  readonly label: string
  readonly children: ReactNode
}

const itemsOf = (menu: HTMLElement): HTMLElement[] => [
  ...menu.querySelectorAll<HTMLElement>('[role^=menuitem]:not(:disabled)'),
]

const focusFirst = (event: ToggleEvent<HTMLElement>): void => {
  if (event.newState === 'open') itemsOf(event.currentTarget)[0]?.focus()
}

/** A menu under a button: arrows walk through it; Escape, a choice or a click elsewhere closes it. */
export function Menu({ id, label, children }: MenuProps) {
  const menu = useRef<HTMLDivElement>(null)
  const onKeyDown = (event: KeyboardEvent) => {
    if (menu.current === null) return
    const items = itemsOf(menu.current)
    const at = items.indexOf(document.activeElement as HTMLElement)
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: items.length - 1 }[event.key]
    if (to === undefined) return
    event.preventDefault()
    items.at(to % items.length)?.focus()
  }
  return (
    <div
      id={id}
      ref={menu}
      popover="auto"
      role="menu"
      tabIndex={-1}
      aria-label={label}
      className="menu"
      onKeyDown={onKeyDown}
      onToggle={focusFirst}
      onClick={event => {
        if ((event.target as Element).closest('[role^=menuitem]') !== null) menu.current?.hidePopover()
      }}
    >
      {children}
    </div>
  )
}

interface ItemProps {
  readonly onChoose: () => void
  /** What else is known of it. */
  readonly aside?: string
  readonly keys?: string
  readonly children: ReactNode
}

export const MenuItem = ({ onChoose, aside, keys, children }: ItemProps) => (
  <button type="button" role="menuitem" tabIndex={-1} onClick={onChoose}>
    <span>{children}</span>
    {aside === undefined ? null : <small>{aside}</small>}
    {keys === undefined ? null : <kbd>{keys}</kbd>}
  </button>
)

interface ChoiceProps {
  readonly onChoose: () => void
  readonly chosen: boolean
  readonly children: ReactNode
}

/** One of several in a menu, of which one holds. */
export const MenuChoice = ({ onChoose, chosen, children }: ChoiceProps) => (
  <button type="button" role="menuitemradio" aria-checked={chosen} tabIndex={-1} onClick={onChoose}>
    <span>{children}</span>
    {chosen ? <small>now</small> : null}
  </button>
)
