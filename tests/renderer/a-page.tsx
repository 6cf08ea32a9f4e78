import { act, type ReactNode } from 'react'
import { createRoot } from 'react-dom/client'
import type { Plan } from '../../core/plan/schema.ts'
import { column } from '../../renderer/panels/measurements/late-column.ts'
import { WindowContext } from '../../renderer/window-context.ts'
import { aPlan } from './a-plan.ts'
import { someFiles } from './some-files.ts'

export interface Shown {
  readonly files: ReturnType<typeof someFiles>
  readonly page: HTMLElement
  /** The one element that matches; fails when there is none. */
  find<T extends HTMLElement = HTMLElement>(selector: string): T
  field(path: string): HTMLInputElement
  close(): void
}

/** The column of measurements has its fields from the first drawing on, as in a window past its start. */
export async function fieldsHere(): Promise<void> {
  // A page made up here is never idle.
  window.requestIdleCallback = now => Number(setTimeout(now))
  await column.load()
}

/** Draws part of the window into a page of its own. */
export function show(part: ReactNode, plan: Plan = aPlan()): Shown {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  const files = someFiles(plan)
  const page = document.createElement('div')
  document.body.append(page)
  const root = createRoot(page)
  act(() => root.render(<WindowContext value={files}>{part}</WindowContext>))
  const find = <T extends HTMLElement>(selector: string): T => {
    const found = page.querySelector<T>(selector)
    if (found === null) throw new Error(`Nothing on the page is “${selector}”.`)
    return found
  }
  return {
    files,
    page,
    find,
    field: path => find<HTMLInputElement>(`[data-field="${path}"]`),
    close: () => {
      act(() => root.unmount())
      page.remove()
      files.keeper.stop()
    },
  }
}

const setText = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set

/** Types as a person does, one key at a time, over what was there. */
export function type(input: HTMLInputElement, text: string): void {
  act(() => input.focus())
  for (let i = 1; i <= text.length; i++) put(input, text.slice(0, i))
}

export function put(input: HTMLInputElement, text: string): void {
  act(() => {
    setText?.call(input, text)
    input.dispatchEvent(new Event('input', { bubbles: true }))
  })
}

export const press = (input: HTMLElement, key: string, more: KeyboardEventInit = {}): boolean => {
  let taken = false
  act(() => {
    taken = !input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more }))
  })
  return taken
}

export const leave = (input: HTMLInputElement): void => act(() => input.blur())
