import { keysOf, run } from '../../shortcuts.ts'
import { unsaved } from '../../state/documents.ts'
import { openToken, refreshRecents } from '../../state/opening.ts'
import { remember } from '../../state/settings.ts'
import { useFiles, useSelect } from '../../window-context.ts'
import { fileParts, shownTitle } from './file-line.ts'
import { Menu, MenuChoice, MenuItem } from './Menu.tsx'

const COMMANDS = [
  ['new', 'New plan'],
  ['open', 'Open'],
  ['record', 'Open a recording'],
  ['save', 'Save'],
  ['saveAs', 'Save as'],
] as const

const THEMES = [
  ['system', 'As the system'],
  ['light', 'Light'],
  ['dark', 'Dark'],
] as const

/** The plan's name, its file, and what can be done with files. */
export function PlanMenu() {
  const files = useFiles()
  const title = useSelect(({ plan }) => shownTitle(plan.title))
  const line = useSelect(state => fileParts(state.document, unsaved(state), new Date()).join('\n'))
  const [file, saved] = line.split('\n')
  return (
    <div className="plan">
      <h1>
        <button
          type="button"
          popoverTarget="plan-menu"
          aria-haspopup="menu"
          aria-label={`Plan ${title}, ${line.replace('\n', ', ')}: files`}
          title={title}
          onClick={() => void refreshRecents(files)}
        >
          <b>{title}</b>
          <span className="in-file">
            <span>{file}</span>
            {saved === undefined ? null : <span>, {saved}</span>}
          </span>
        </button>
      </h1>
      <Menu id="plan-menu" label="Files">
        {COMMANDS.map(([command, name]) => (
          <MenuItem key={command} keys={keysOf(command)} onChoose={() => run(files, command)}>
            {name}
          </MenuItem>
        ))}
        <Recents />
        <Demos />
        <Themes />
        <Help />
      </Menu>
    </div>
  )
}

function Recents() {
  const files = useFiles()
  const recents = useSelect(state => state.recents)
  if (recents.length === 0) return null
  return (
    <fieldset>
      <legend>Recent</legend>
      {recents.slice(0, 8).map(({ token, name, folder, unsaved: open }) => (
        <MenuItem
          key={token}
          aside={[folder ?? 'not in a file', open ? 'not saved' : null].filter(Boolean).join(', ')}
          onChoose={() => void openToken(files, token)}
        >
          {name}
        </MenuItem>
      ))}
    </fieldset>
  )
}

function Demos() {
  const files = useFiles()
  const demos = useSelect(state => state.demos)
  if (demos.length === 0) return null
  return (
    <fieldset>
      <legend>Demo plans</legend>
      {demos.map(({ token, name }) => (
        <MenuItem key={token} onChoose={() => void openToken(files, token)}>
          {name}
        </MenuItem>
      ))}
    </fieldset>
  )
}

function Themes() {
  const files = useFiles()
  const theme = useSelect(state => state.settings.theme)
  return (
    <fieldset>
      <legend>Look</legend>
      {THEMES.map(([value, name]) => (
        <MenuChoice key={value} chosen={theme === value} onChoose={() => void remember(files, { theme: value })}>
          {name}
        </MenuChoice>
      ))}
    </fieldset>
  )
}

function Help() {
  const files = useFiles()
  return (
    <fieldset>
      <legend>Help</legend>
      <MenuItem keys={keysOf('help')} onChoose={() => run(files, 'help')}>
        Help with the words
      </MenuItem>
      <MenuItem onChoose={() => run(files, 'guide')}>A first look</MenuItem>
      <MenuItem onChoose={() => run(files, 'log')}>Show log</MenuItem>
      <MenuItem onChoose={() => run(files, 'about')}>About Stopgap</MenuItem>
    </fieldset>
  )
}
