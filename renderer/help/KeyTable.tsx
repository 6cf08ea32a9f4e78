import { commandNames, keysOf } from '../shortcuts.ts'

const PLACES = [
  ['In a field', 'Arrow up, arrow down', 'One step: 1/16 in, or 1 mm'],
  ['In a field', 'Enter', 'Take what was typed'],
  ['In a field', 'Escape', 'Back to the value before'],
  ['On the wheel position', 'Arrow up, arrow down', '1/16 in, or 1 mm'],
  ['On the wheel position', 'Page up, page down', '1 in, or 25 mm'],
  ['On the wheel position', 'Home, End', 'Full droop, full bump'],
  ['In a menu or a list', 'Arrows, Home, End', 'Walk through it'],
  ['Anywhere', 'Tab', 'The next thing that can be used'],
] as const

/** The keys of the window, as this machine writes them. */
export const KeyTable = () => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
  <section className="help-said" aria-label="Keys" tabIndex={0}>
    <h3>Keys</h3>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Keys</th>
        </tr>
      </thead>
      <tbody>
        {commandNames.map(([command, name]) => (
          <tr key={command}>
            <th scope="row">{name}</th>
            <td>
              <kbd>{keysOf(command)}</kbd>
            </td>
          </tr>
        ))}
        {PLACES.map(([where, keys, what]) => (
          <tr key={where + keys}>
            <th scope="row">
              {where}: {what}
            </th>
            <td>{keys}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </section>
)
