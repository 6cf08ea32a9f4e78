import { memo, useCallback, useDeferredValue, useMemo } from 'react'
import type { DemandActions } from '../charts/plate/demand-controls.ts'
import { Plate } from '../charts/plate/Plate.tsx'
import { lineBands } from '../charts/sure/bands.ts'
import { Findings } from '../panels/findings/Findings.tsx'
import { goToFinding } from '../panels/findings/go-to-finding.ts'
import { useFindings } from '../panels/findings/use-findings.ts'
import { goToLoad } from '../panels/measurements/go-to-load.ts'
import { offerLoads } from '../state/demands.ts'
import { demandsShown } from '../state/ledger.ts'
import { comparedSetup, resultsShown, shownAxle, shownSetup, shownWheel } from '../state/selectors.ts'
import type { State } from '../state/state.ts'
import { countLoad, focusFinding, moveWheel, openDialog } from '../state/view.ts'
import { useSureView } from '../sure-context.ts'
import { useSelect, useSelectGroup, useSelectLate, useStore } from '../window-context.ts'

const other = (state: State) => {
  const compared = comparedSetup(state)
  return compared === null ? null : { name: compared.setup.name, ...compared.results }
}

const sameOther = (a: ReturnType<typeof other>, b: ReturnType<typeof other>): boolean =>
  a === b || (a !== null && b !== null && a.name === b.name && a.budget === b.budget && a.model === b.model)

const StillPlate = memo(Plate)

/** Drawing, budget, shafts and forces on the one axis, and what there is to say about them. */
export function TravelPage() {
  const store = useStore()
  const shown = useSelectGroup(state => ({
    axle: shownAxle(state).axle,
    setupName: shownSetup(state).setup.name,
    ...resultsShown(state),
    system: state.plan.units,
    focusedFinding: state.view.finding,
  }))
  const compared = useSelect(other, sameOther)
  // Typing never waits for the plate: it is drawn once the keystroke is on screen. The wheel is not put off.
  const drawn = useDeferredValue(shown)
  const findings = useDeferredValue(useFindings())
  const demands = useDeferredValue(useSelectLate(demandsShown))
  const drawnOther = useDeferredValue(compared)
  const wheel = useSelect(shownWheel)
  const { sureness } = useSureView()
  const bands = useMemo(() => (sureness === null ? null : lineBands(sureness)), [sureness])
  const onWheel = useCallback((to: number) => moveWheel(store, to), [store])
  const onDemands = useMemo(
    (): DemandActions => ({
      count: (id, counted) => countLoad(store, id, counted),
      edit: id => goToLoad(store, id),
      begin: () => offerLoads(store),
      roll: () => openDialog(store, { kind: 'roll' }),
    }),
    [store],
  )
  const onFocusFinding = useCallback((id: string | null) => focusFinding(store, id), [store])
  return (
    <>
      <main className="plate" aria-label="Travel">
        <StillPlate
          {...drawn}
          other={drawnOther}
          findings={findings}
          demands={demands}
          onDemands={onDemands}
          wheel={wheel}
          onWheel={onWheel}
          onFocusFinding={onFocusFinding}
          onTakeFinding={goToFinding}
          bands={bands}
        />
      </main>
      <Findings />
    </>
  )
}
