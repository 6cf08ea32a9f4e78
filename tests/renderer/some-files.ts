import type { Plan } from '../../core/plan/schema.ts'
import type { MessageName, Reply, Request } from '../../electron/contract/contract.ts'
import type { Host } from '../../renderer/host.ts'
import { newDocument, viewOf } from '../../renderer/state/documents.ts'
import type { Files } from '../../renderer/state/files.ts'
import { emptyHistory } from '../../renderer/state/history.ts'
import { startKeeper } from '../../renderer/state/keeper.ts'
import { fetchChecks } from '../../renderer/state/plan-checks.ts'
import type { State } from '../../renderer/state/state.ts'
import { createStore, type Store } from '../../renderer/state/store.ts'
import { aPlan } from './a-plan.ts'

// The window is past its start: what checks plans is here.
await fetchChecks()

export type Answers = { [N in MessageName]?: (request: Request<N>) => Reply<N> | Promise<Reply<N>> }

export interface FakeHost extends Host {
  /** What was asked, in order. */
  readonly asked: { name: MessageName; request: unknown }[]
  /** Answers from now on. */
  answer(answers: Answers): void
  readonly dropped: { answer: Awaited<ReturnType<Host['drop']>> }
}

function fakeHost(answers: Answers = {}): FakeHost {
  let known: Answers = { keep: () => ({ kind: 'kept' }), forget: () => ({}), ...answers }
  const asked: FakeHost['asked'] = []
  const dropped: FakeHost['dropped'] = { answer: { kind: 'failed', reason: 'Nothing was dropped.' } }
  return {
    asked,
    dropped,
    answer: more => {
      known = { ...known, ...more }
    },
    call: async (name, request) => {
      asked.push({ name, request })
      const handle = known[name] as ((request: unknown) => unknown) | undefined
      if (handle === undefined) throw new Error(`This host does not answer “${name}”.`)
      return (await handle(request)) as never
    },
    on: () => () => undefined,
    drop: async () => dropped.answer,
    onGone: () => () => undefined,
  }
}

export const stateOf = (plan: Plan): State => ({
  plan,
  history: emptyHistory,
  view: viewOf(plan),
  document: { ...newDocument(plan), savedPlan: plan },
  settings: { theme: 'system' },
  recents: [],
  demos: [],
  about: { version: '0', host: 'browser' },
  notices: [],
  hostGone: false,
})

export const aStore = (plan: Plan = aPlan()): Store => createStore(stateOf(plan))

export function someFiles(plan: Plan = aPlan(), answers: Answers = {}) {
  const store = aStore(plan)
  const host = fakeHost(answers)
  return { store, host, keeper: startKeeper(store, host) } satisfies Files
}
