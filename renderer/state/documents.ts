import { acceptedPlan } from '../../core/plan/file-text.ts'
import type { Plan } from '../../core/plan/schema.ts'
import type { OpenDocument, Opened } from '../../electron/contract/shapes.ts'
import { changeBetween, isNoChange } from './change.ts'
import { emptyHistory, type History } from './history.ts'
import { readHistory } from './kept-history.ts'
import { type Notice, type NoticeStep, withNotice, withoutNotice } from './notices.ts'
import { isPlan } from './plan-checks.ts'
import type { DocumentState, State, View } from './state.ts'

/** Whether the plan differs from what its file holds; true without a file. */
export const unsaved = ({ plan, document }: Pick<State, 'plan' | 'document'>): boolean =>
  document.savedPlan === null || (plan !== document.savedPlan && !isNoChange(changeBetween(document.savedPlan, plan)))

export function viewOf(plan: Plan): View {
  const [first, second] = plan.setups
  return {
    page: 'travel',
    setup: first!.id,
    axle: first!.axles.at(-1)!.id,
    compared: second?.id ?? null,
    terrain: null,
    wholeCar: false,
    wheel: 0,
    field: null,
    finding: null,
    folds: {},
    refused: {},
    loadsOff: [],
    dialog: null,
    guide: false,
  }
}

/** @param own what the document's own text was read as */
const savedPlanOf = ({ text, savedText }: OpenDocument, own: Plan): Plan | null => {
  if (savedText === null) return null
  return savedText === text ? own : acceptedPlan(savedText)
}

const documentOf = (given: OpenDocument, own: Plan): DocumentState => ({
  key: given.key,
  token: given.token,
  name: given.name,
  basis: given.basis,
  savedPlan: savedPlanOf(given, own),
  savedAt: given.savedAt,
  saving: false,
  recovered: given.recovered,
})

export interface Ready {
  readonly plan: Plan
  readonly history: History
  readonly document: DocumentState
  readonly historyLost: boolean
}

/** A document, made ready to show. Whoever gives it has accepted its text as a plan; a history is checked here, and waited for. */
export function ready(given: OpenDocument): Ready {
  const own = acceptedPlan(given.text)
  const document = documentOf(given, own)
  // A plan that is as its file has it is the file's own object, so that comparing them costs nothing.
  const same = document.savedPlan !== null && !unsaved({ plan: own, document })
  const plan = same ? document.savedPlan! : own
  const history = given.history === undefined ? emptyHistory : readHistory(given.history, plan, isPlan)
  return { plan, document, history: history ?? emptyHistory, historyLost: history === null }
}

/** Without what was said about the document before. */
const cleared = (state: State): State =>
  ['open', 'report', 'history', 'recovered', 'save', 'shared'].reduce(
    (next, about) => withoutNotice(next, about),
    state,
  )

const tell = (text: string): Notice => ({ about: 'report', severity: 'news', text, details: [], steps: [] })

function broughtBack({ name, savedPlan }: DocumentState): Notice {
  const inFile = savedPlan !== null
  return {
    about: 'recovered',
    severity: 'news',
    text: inFile
      ? `“${name}” has changes from last time that are not in its file.`
      : `“${name}” is as you left it. It is not in a file yet.`,
    details: [],
    steps: [
      { label: 'Save', remedy: { kind: 'save' } },
      ...(inFile ? [{ label: 'Drop them, back to the file', remedy: { kind: 'backToFile' } } as const] : []),
    ],
  }
}

/** The state once a document is shown. */
export function withDocument(
  state: State,
  given: OpenDocument,
  report: string | undefined,
  made: Ready = ready(given),
): State {
  const { plan, history, document } = made
  let next = cleared({ ...state, plan, history, document, view: viewOf(plan) })
  if (made.historyLost)
    next = withNotice(next, {
      ...tell('The plan is complete, but the steps to undo could not be brought back.'),
      about: 'history',
    })
  if (document.recovered) next = withNotice(next, broughtBack(document))
  return report === undefined ? next : withNotice(next, tell(report))
}

/** The state once the host has answered a request to open something. */
export function withOpened(state: State, answer: Opened & { readonly instead?: Opened }): State {
  if (answer.kind === 'document') return withDocument(state, answer.document, answer.report)
  const { rescue, remains, instead } = answer
  const isThere = remains !== undefined || instead !== undefined
  return withNotice(state, {
    about: 'open',
    severity: 'failure',
    text: answer.reason,
    details: isThere ? ['The file is left as it is.'] : [],
    steps: [
      ...(rescue === undefined ? [] : [openStep('Open the last good copy', rescue)]),
      ...(remains === undefined ? [] : [openStep(readable, remains)]),
      ...(instead === undefined ? [] : [{ label: readable, remedy: { kind: 'show', opened: instead } } as const]),
      { label: 'Open another plan', remedy: { kind: 'open' } },
    ],
  })
}

const readable = 'Open what can be read of it'
const openStep = (label: string, token: string): NoticeStep => ({ label, remedy: { kind: 'openFile', token } })

/** Another window has come to the plan this one has. Nothing is told where this one shows another plan meanwhile. */
export function withShared(state: State, key: string): State {
  if (state.document.key !== key) return state
  return withNotice(state, {
    about: 'shared',
    severity: 'news',
    text: `“${state.document.name}” has been opened in another window too. What is changed there is kept apart from what you change here, and whoever saves second is asked before anything is replaced. Close one of the two, or go on here under another name.`,
    details: [],
    steps: [{ label: 'Save as', remedy: { kind: 'saveAs' } }],
  })
}

/** A plan that is not in a file yet. */
export const newDocument = (plan: Plan): DocumentState => ({
  key: crypto.randomUUID(),
  token: null,
  name: plan.title === '' ? 'New plan' : plan.title,
  basis: null,
  savedPlan: null,
  savedAt: null,
  saving: false,
  recovered: false,
})
