import { AxleInRoll } from '../../charts/roll/AxleInRoll.tsx'
import { rollGeometry } from '../../charts/roll/roll-geometry.ts'
import { noRollWords, rollNotes, rollRows, rollSentence } from '../../charts/roll/roll-words.ts'
import { useNarrow } from '../../narrow.ts'
import { loadsShown } from '../../state/ledger.ts'
import { shownAxle } from '../../state/selectors.ts'
import { openDialog } from '../../state/view.ts'
import { useSelectGroup, useStore } from '../../window-context.ts'
import { Dialog } from './Dialog.tsx'

/** The axle shown under its counted loads together, from behind, with both sides in figures. */
export function RollDialog() {
  const store = useStore()
  const { plan, loads, axle, off } = useSelectGroup(state => ({
    plan: state.plan,
    loads: loadsShown(state),
    axle: shownAxle(state).axle.id,
    off: state.view.loadsOff,
  }))
  const narrow = useNarrow()
  const close = () => openDialog(store, null)
  const geometry = rollGeometry(loads, axle)
  const counted = plan.loads.filter(({ id }) => !off.includes(id))
  const names = counted.map(({ name }) => `“${name}”`).join(', ')
  const sentence = geometry === null ? noRollWords(loads, axle) : rollSentence(geometry, plan)
  return (
    <Dialog
      title={axle === 'front' ? 'Front axle in roll' : 'Rear axle in roll'}
      className="roll-dialog"
      onClose={close}
    >
      <p>{counted.length === 0 ? 'No load is counted.' : `Counted, all at once: ${names}.`}</p>
      {geometry === null ? null : (
        <AxleInRoll geometry={geometry} system={plan.units} low={narrow} sentence={sentence ?? ''} />
      )}
      <p className="said">{sentence}</p>
      {geometry === null ? null : (
        <>
          <table>
            <thead>
              <tr>
                <td />
                <th scope="col">Inner</th>
                <th scope="col">Outer</th>
              </tr>
            </thead>
            <tbody>
              {rollRows(geometry, plan.units).map(({ name, inner, outer }) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td>{inner}</td>
                  <td>{outer}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="hint">{rollNotes(geometry, counted).join(' ')}</p>
        </>
      )}
      <footer>
        <button type="button" className="chief" onClick={close}>
          Close
        </button>
      </footer>
    </Dialog>
  )
}
