import type { Opened } from '../../electron/contract/shapes.ts'
import type { State } from './state.ts'
import type { Store } from './store.ts'

/** What a notice lets the person do about it. */
export type Remedy =
  | { readonly kind: 'openFile'; readonly token: string }
  | { readonly kind: 'show'; readonly opened: Opened }
  | { readonly kind: 'open' | 'save' | 'saveAs' | 'backToFile' | 'log' }

export interface NoticeStep {
  readonly label: string
  readonly remedy: Remedy
}

/** Something to tell the person, above the findings, until they put it away. */
export interface Notice {
  /** Notices about the same thing replace each other. */
  readonly about: string
  readonly severity: 'failure' | 'news'
  readonly text: string
  /** One line each, under the text. */
  readonly details: readonly string[]
  readonly steps: readonly NoticeStep[]
}

export const withNotice = (state: State, notice: Notice): State => ({
  ...state,
  notices: [...state.notices.filter(({ about }) => about !== notice.about), notice],
})

export const withoutNotice = (state: State, about: string): State =>
  state.notices.some(notice => notice.about === about)
    ? { ...state, notices: state.notices.filter(notice => notice.about !== about) }
    : state

export const notify = (store: Store, notice: Partial<Notice> & Pick<Notice, 'about' | 'text'>): void =>
  store.write(withNotice(store.read(), { severity: 'failure', details: [], steps: [], ...notice }))

export const dismiss = (store: Store, about: string): void => store.write(withoutNotice(store.read(), about))
