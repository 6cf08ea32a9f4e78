import { type ReactNode, useEffect } from 'react'
import { FirstLook } from './help/FirstLook.tsx'
import { LatePage } from './pages/LatePage.tsx'
import { pages } from './pages/pages.ts'
import { Dialogs } from './panels/dialogs/Dialogs.tsx'
import { Measurements } from './panels/measurements/Measurements.tsx'
import { Announcer } from './panels/notices/Announcer.tsx'
import { DropArea } from './panels/notices/DropArea.tsx'
import { Notices } from './panels/notices/Notices.tsx'
import { PageGuard } from './panels/notices/PageGuard.tsx'
import { shownTitle } from './panels/title-bar/file-line.ts'
import { TitleBar } from './panels/title-bar/TitleBar.tsx'
import { useShortcuts } from './shortcuts.ts'
import { unsaved } from './state/documents.ts'
import { undo } from './state/edit.ts'
import { logFault } from './state/fault.ts'
import type { Files } from './state/files.ts'
import { SureContext, useTrials } from './sure-context.ts'
import { useFiles, useSelect, WindowContext } from './window-context.ts'

/** The window. */
export const App = ({ files }: { files: Files }) => (
  <WindowContext value={files}>
    <Frame files={files} />
  </WindowContext>
)

/** Nothing here hangs on the plan: an edit draws only the parts that show what it changed. */
function Frame({ files }: { files: Files }) {
  useShortcuts(files)
  useTitle()
  useTheme()
  return (
    <Trials>
      <div className="win">
        <TitleBar />
        <FirstLook />
        <Notices />
        <Measurements />
        <ShownPage />
        <Dialogs />
        <Announcer />
        <DropArea />
      </div>
    </Trials>
  )
}

function ShownPage() {
  const files = useFiles()
  const plan = useSelect(state => state.plan)
  const shown = useSelect(state => state.view.page)
  const { page: Page } = pages.find(({ id }) => id === shown) ?? pages[0]!
  return (
    <PageGuard
      key={shown}
      attempt={plan}
      onUndo={() => undo(files.store)}
      onFault={error => logFault(files, 'page', error)}
    >
      {'load' in Page ? <LatePage page={Page} /> : <Page />}
    </PageGuard>
  )
}

function Trials({ children }: { children: ReactNode }) {
  return <SureContext value={useTrials()}>{children}</SureContext>
}

/** The window's own title: what a task bar shows. */
function useTitle(): void {
  const title = useSelect(
    state => `${shownTitle(state.plan.title)} (${unsaved(state) ? 'not saved' : 'saved'}) - Stopgap`,
  )
  useEffect(() => {
    document.title = title
  }, [title])
}

function useTheme(): void {
  const theme = useSelect(state => state.settings.theme)
  useEffect(() => {
    if (theme === 'system') delete document.documentElement.dataset.theme
    else document.documentElement.dataset.theme = theme
  }, [theme])
}
