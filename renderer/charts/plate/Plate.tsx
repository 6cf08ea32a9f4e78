import { useEffect, useMemo, useRef } from 'react'
import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import type { System } from '../../../core/units/quantity.ts'
import { CornerDrawing } from '../drawing/CornerDrawing.tsx'
import { Picture, Unspoken } from '../marks/Group.tsx'
import { ChartPatterns } from '../patterns/ChartPatterns.tsx'
import { BandMarks } from '../sure/BandMarks.tsx'
import type { LineBand } from '../sure/bands.ts'
import { ChartText } from '../text/ChartText.tsx'
import { canvasMeasure } from '../text/measure-text.ts'
import { DemandControls } from './columns/DemandControls.tsx'
import { ForceAreas } from './columns/ForceAreas.tsx'
import { ShaftFills, ShaftGrounds, ShaftOutlines } from './columns/ShaftBars.tsx'
import { BudgetColumn, CrossLines, DemandColumn, PlateRules, ZoneTints } from './columns/StaticLayer.tsx'
import { WeightMark, WheelMarks } from './columns/WheelMarks.tsx'
import type { DemandActions } from './demand-controls.ts'
import type { DemandsView } from './demands.ts'
import { demandCount } from './demands-geometry.ts'
import type { PlateExtent } from './extent.ts'
import { FindingMark } from './FindingMarks.tsx'
import { placeLabels } from './labels/place-labels.ts'
import './plate.css'
import { type OtherSetup, sceneWithoutDemands, withDemands } from './scene.ts'
import { forcesSentence, shaftsSentence } from './sentences.ts'
import { type Room, useRoom } from './use-room.ts'
import { useWheelDrag } from './use-wheel-drag.ts'
import { WheelHandle } from './WheelHandle.tsx'

export interface PlateProps {
  readonly axle: Axle
  readonly setupName: string
  readonly budget: AxleBudget
  readonly model: CornerModel
  readonly other: OtherSetup | null
  /** Wheel position shown, m from ride height. */
  readonly wheel: number
  readonly onWheel: (wheel: number) => void
  readonly system: System
  readonly findings: AxleBudget['findings']
  readonly focusedFinding: string | null
  readonly onFocusFinding: (id: string | null) => void
  readonly onTakeFinding: (id: string) => void
  readonly demands: DemandsView | null
  readonly onDemands: DemandActions
  /** Where the lines may well be; null while that is not known. */
  readonly bands?: readonly LineBand[] | null
}

/** Drawing, budget, shafts, forces and demands on one wheel travel axis, as large as its parent. */
export function Plate(props: PlateProps) {
  const { host, room } = useRoom()
  return (
    <div className="travel-plate" ref={host}>
      {room === null ? null : <PlateDrawing {...props} {...room} />}
    </div>
  )
}

const PATTERNS = 'plate'

function PlateDrawing(props: PlateProps & Room) {
  const { axle, setupName, budget, model, other, system, findings, focusedFinding, onFocusFinding, demands } = props
  const { size, family, onWheel } = props
  const measure = useMemo(() => canvasMeasure(family), [family])
  // What has no demands in it is not drawn again when a load is counted or edited.
  const count = demandCount(demands)
  const of = `${setupName} ${axle.id}`
  const before = useRef<{ of: string; extent: PlateExtent } | null>(null)
  const still = useMemo(
    () =>
      sceneWithoutDemands(
        { budget, model, other, system },
        count,
        size.width,
        size.height,
        measure,
        before.current?.of === of ? before.current.extent : null,
      ),
    [budget, model, other, system, count, size, measure, of],
  )
  const scene = useMemo(() => withDemands(still, demands), [still, demands])
  const lastSize = useRef(size)
  const resized = lastSize.current !== size
  useEffect(() => {
    lastSize.current = size
    before.current = { of, extent: still.extent }
  })
  const { frame, axis, travel } = scene
  const { droop, bump } = travel
  const wheel = Math.min(Math.max(props.wheel, droop), bump)
  const { handle, labels, leaders, marks, offer } = useMemo(
    () => placeLabels(scene, findings, wheel),
    [scene, findings, wheel],
  )
  const drag = useWheelDrag({ axis, wheel, droop, bump, system, onWheel })
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be drawn in
    <svg
      className={resized ? 'still' : undefined}
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="group"
      aria-label={`Travel of ${setupName}, ${axle.id}: drawing, budget, shafts, forces${demands === null ? '' : ', demands'} on one wheel travel axis`}
      {...drag}
    >
      <ChartPatterns prefix={PATTERNS} />
      <ZoneTints scene={still} />
      <CornerDrawing
        axle={axle}
        model={model}
        budget={budget}
        other={other}
        wheel={wheel}
        system={system}
        x={frame.corner.x}
        width={frame.corner.width}
        head={frame.head}
        height={frame.height}
        axisY={axis.y}
        small={frame.small}
      />
      <PlateRules scene={still} />
      <BudgetColumn scene={still} patterns={PATTERNS} />
      <DemandColumn scene={scene} />
      <Picture label={shaftsSentence(still, wheel)}>
        <ShaftGrounds scene={still} />
        <ShaftFills scene={still} patterns={PATTERNS} y={axis.y(wheel)} />
        <ShaftOutlines scene={still} />
      </Picture>
      <Picture label={forcesSentence(still, wheel)}>
        <ForceAreas scene={still} patterns={PATTERNS} />
      </Picture>
      <CrossLines scene={still} />
      {props.bands == null ? null : <BandMarks scene={still} demands={scene.demands} bands={props.bands} />}
      <WheelMarks scene={still} wheel={wheel} />
      <WeightMark scene={still} />
      <Unspoken>
        {leaders.map(({ id, from, to }) => (
          <path key={id} d={`M${from.join(' ')}L${to.join(' ')}`} stroke="var(--ink3)" strokeWidth="0.8" fill="none" />
        ))}
        {labels.map(label => (
          <ChartText key={label.id} label={label} />
        ))}
      </Unspoken>
      <rect
        className="wheel-track"
        data-wheel-handle="track"
        x={frame.budget.x - 6}
        y={frame.head}
        width={scene.budget.rulerRight - frame.budget.x + 8}
        height={frame.height - frame.head}
        fill="transparent"
      />
      <DemandControls scene={scene} offer={offer} actions={props.onDemands} />
      {marks.map(place => (
        <FindingMark
          key={place.finding.id}
          place={place}
          focused={focusedFinding === place.finding.id}
          onFocusFinding={onFocusFinding}
          onTakeFinding={props.onTakeFinding}
        />
      ))}
      <WheelHandle
        handle={handle}
        x={frame.budget.x}
        wheel={wheel}
        droop={droop}
        bump={bump}
        system={system}
        onWheel={onWheel}
      />
    </svg>
  )
}
