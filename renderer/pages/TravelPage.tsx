import { memo, useCallback, useMemo } from 'react'
import type { DemandActions } from '../charts/plate/demand-controls.ts'
import { Plate } from '../charts/plate/Plate.tsx'
import { lineBands } from '../charts/sure/bands.ts'
import { useDrawingTimed, useLooked } from '../looked.ts'
import { Findings } from '../panels/findings/Findings.tsx'
import { goToFinding } from '../panels/findings/go-to-finding.ts'
import { useFindings } from '../panels/findings/use-findings.ts'
import { goToLoad } from '../panels/measurements/go-to-load.ts'
import { stepLoad } from '../panels/measurements/step-load.ts'
import { offerLoads } from '../state/demands.ts'
import { closeGesture } from '../state/edit.ts'
import { demandsShown } from '../state/ledger.ts'
import { comparedSetup, resultsShown, shownAxle, shownSetup, shownWheel } from '../state/selectors.ts'
import { countLoad, focusFinding, moveWheel, openDialog } from '../state/view.ts'
import { useSureView } from '../sure-context.ts'
import { useSelect, useStore } from '../window-context.ts'

const StillPlate = memo(Plate)

/** Drawing, budget, shafts and forces on the one axis, and what there is to say about them. */
export function TravelPage() {
  const store = useStore()
  const looked = useLooked()
  useDrawingTimed(looked)
  const drawn = useMemo(
    () => ({
      axle: shownAxle(looked).axle,
      setupName: shownSetup(looked).setup.name,
      ...resultsShown(looked),
      system: looked.plan.units,
      demands: demandsShown(looked),
    }),
    [looked],
  )
  const compared = comparedSetup(looked)
  const [name, budget, model] = [compared?.setup.name, compared?.results.budget, compared?.results.model]
  const other = useMemo(
    () => (name === undefined || budget === undefined || model === undefined ? null : { name, budget, model }),
    [name, budget, model],
  )
  const findings = useFindings()
  const focusedFinding = useSelect(state => state.view.finding)
  const wheel = useSelect(shownWheel)
  const { sureness, ledger } = useSureView()
  const bands = useMemo(() => (sureness === null ? null : lineBands(sureness, ledger)), [sureness, ledger])
  const onWheel = useCallback((to: number) => moveWheel(store, to), [store])
  const onDemands = useMemo(
    (): DemandActions => ({
      count: (id, counted) => countLoad(store, id, counted),
      edit: id => goToLoad(store, id),
      step: (id, direction, big, gesture) => stepLoad(store, id, direction, big, gesture),
      stepped: () => closeGesture(store),
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
          other={other}
          findings={findings}
          focusedFinding={focusedFinding}
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
