import { createRoot } from 'react-dom/client'
import { axleBudget } from '../../../../core/budget/budget.ts'
import { cornerModel } from '../../../../core/corner/corner.ts'
import type { Axle } from '../../../../core/plan/schema.ts'
import { CornerDrawing } from '../../../../renderer/charts/drawing/CornerDrawing.tsx'
import { HowPicture } from '../../../../renderer/charts/measuring/HowPicture.tsx'
import '../../../../renderer/style/tokens.css'
import '../../../../renderer/style/base.css'
import { type CornerName, namedAxle } from '../corners.ts'
import { FIELDS } from './fields.ts'

/** A page of drawings: `?corners=trailing,solid&at=droop,0,bump&theme=dark&width=380&height=700&small=1`, or `?how=1` for the measuring pictures. */
const asked = new URLSearchParams(location.search)
const ask = (name: string, otherwise: string): string => asked.get(name) ?? otherwise
const width = Number(ask('width', '380'))
const height = Number(ask('height', '703'))
const small = asked.has('small')
const system = ask('units', 'inch') === 'metric' ? 'metric' : 'inch'
document.documentElement.dataset.theme = ask('theme', 'light')
if (asked.has('grey')) document.documentElement.style.filter = 'grayscale(1)'
if (asked.has('font')) document.body.style.fontFamily = ask('font', '')
document.body.style.overflow = 'auto'

function positionOf(word: string, model: ReturnType<typeof cornerModel>): number {
  if (word === 'droop') return model.droop
  if (word === 'bump') return model.bump
  if (word === 'touch') return model.engagement ?? 0
  return Number(word)
}

function Plate({ axle, at }: { axle: Axle; at: string }) {
  const model = cornerModel(axle.corner)
  const budget = axleBudget(axle, { units: system }, model)
  const changed: Axle = {
    ...axle,
    corner: {
      ...axle.corner,
      stop: axle.corner.stop === null ? null : { ...axle.corner.stop, gap: axle.corner.stop.gap + 0.019 },
    },
  }
  const otherModel = cornerModel(changed.corner)
  const head = small ? 38 : 44
  const [above, below] = [0.046, 0.02]
  const top = head + 4
  const bottom = height - 26
  const scale = (bottom - top) / (model.bump + above - model.droop + below)
  const axisY = (wheel: number): number => top + (model.bump + above - wheel) * scale
  const wheel = positionOf(at, model)
  const axis = width
  return (
    <svg width={width + 60} height={height} style={{ background: 'var(--sheet)' }}>
      <title>{at}</title>
      <text x={16} y={19} style={{ fill: 'var(--ink)', fontSize: 13, fontWeight: 600 }}>
        Corner
      </text>
      <path d={`M0 ${head}H${width + 60}`} stroke="var(--rule)" />
      <CornerDrawing
        axle={axle}
        model={model}
        budget={budget}
        other={{ name: 'Proposed', budget: axleBudget(changed, { units: system }, otherModel), model: otherModel }}
        wheel={wheel}
        system={system}
        x={0}
        width={width}
        head={head}
        height={height}
        axisY={axisY}
        small={small}
      />
      <path d={`M${axis} ${head}V${height}`} stroke="var(--ink)" strokeWidth={1.5} />
      {[model.bump, 0, model.droop].map(mark => (
        <path key={mark} d={`M${axis} ${axisY(mark)}h60`} stroke="var(--ink)" strokeWidth={1.5} />
      ))}
      <path
        d={`M${axis} ${axisY(wheel)}l-11 -12h${small ? -69 : -83}v24h${small ? 69 : 83}z`}
        style={{ fill: 'var(--ink)' }}
      />
    </svg>
  )
}

function Gallery() {
  if (asked.has('how'))
    return (
      <div style={{ display: 'flex', flexWrap: 'wrap', gap: 10, padding: 10, background: 'var(--sheet)' }}>
        {FIELDS.map(field => (
          <figure key={field} style={{ margin: 0, width: 130 }}>
            <HowPicture field={field} />
            <figcaption style={{ fontSize: 10, overflowWrap: 'anywhere' }}>{field}</figcaption>
          </figure>
        ))}
      </div>
    )
  return (
    <div style={{ display: 'flex', flexWrap: 'wrap', gap: 8 }}>
      {ask('corners', 'trailing')
        .split(',')
        .flatMap(name =>
          ask('at', '0')
            .split(',')
            .map(at => (
              <div key={`${name} ${at}`} style={{ position: 'relative' }}>
                <Plate axle={namedAxle(name as CornerName)} at={at} />
              </div>
            )),
        )}
    </div>
  )
}

createRoot(document.getElementById('root')!).render(<Gallery />)
