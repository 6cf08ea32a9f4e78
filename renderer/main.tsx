import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { link, started } from './ask.ts'
import { hostOver, replied } from './host.ts'
import { loadPages, practiseRides } from './pages/pages.ts'
import { column } from './panels/measurements/late-column.ts'
import { run } from './shortcuts.ts'
import { withShared } from './state/documents.ts'
import { logFault, told } from './state/fault.ts'
import { fail, leave } from './state/files.ts'
import { firstState } from './state/first-state.ts'
import { startKeeper } from './state/keeper.ts'
import { arrive } from './state/opening.ts'
import { fetchChecks } from './state/plan-checks.ts'
import { rememberPages, withSettings } from './state/settings.ts'
import { createStore } from './state/store.ts'
import './style/index.css'

const root = document.getElementById('page')
if (root === null) throw new Error('The page has no element “page”: index.html must hold one.')

async function start(place: HTMLElement): Promise<void> {
  const host = hostOver(link)
  const given = replied<'start'>(await started)
  // Steps to undo are looked at before they are believed.
  if (given.document.history !== undefined) await fetchChecks()
  const store = createStore(firstState(given))
  const keeper = startKeeper(store, host)
  const files = { store, host, keeper }

  host.on('opened', answer => void leave(files).then(() => arrive(files, answer)))
  host.on('shared', ({ key }) => store.write(withShared(store.read(), key)))
  host.on('menu', ({ command }) => run(files, command))
  host.on('settings', settings => withSettings(files, settings))
  host.onGone(() => store.write({ ...store.read(), hostGone: true }))
  window.addEventListener('error', ({ error }) => fail(files, 'window', error))
  window.addEventListener('unhandledrejection', ({ reason }) => fail(files, 'window', reason))
  rememberPages(files)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void keeper.flush()
  })
  // A long history does not fit into what may outlive the page, so it is on its way before the page begins to go.
  for (const leaving of ['beforeunload', 'pagehide']) window.addEventListener(leaving, () => void keeper.flush())

  createRoot(place).render(<App files={files} />)
  // Fields first, then the other pages. What cannot be fetched is told where it is shown.
  void column
    .load()
    .catch(() => undefined)
    .then(() => requestIdleCallback(() => void loadPages().then(() => practiseRides(files))))
}

start(root).catch((error: unknown) => {
  root.textContent = `Stopgap could not start. ${told(error)} Start it again.`
  logFault({ host: hostOver(link) }, 'start', error)
})
