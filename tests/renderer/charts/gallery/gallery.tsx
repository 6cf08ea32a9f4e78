import { StrictMode, useMemo, useState } from 'react'
import { createRoot } from 'react-dom/client'
import { Plate } from '../../../../renderer/charts/plate/Plate.tsx'
import '../../../../renderer/style/tokens.css'
import '../../../../renderer/style/base.css'
import { cases, compiled } from './cases.ts'

/** One case of the plate, named in the address: `#case=metric&theme=dark&font=DejaVu Sans&grey&wheel=-4`. Development only. */
const options = new URLSearchParams(location.hash.slice(1))
const theme = options.get('theme')
if (theme !== null) document.documentElement.dataset.theme = theme
if (options.has('grey')) document.documentElement.style.filter = 'grayscale(1)'
const font = options.get('font')
if (font !== null) document.body.style.fontFamily = font

const STILL = {
  count: () => {},
  edit: () => {},
  step: () => undefined,
  stepped: () => undefined,
  begin: () => {},
  roll: () => {},
}

function Gallery() {
  const shown = cases[options.get('case') ?? 'sample']
  if (shown === undefined)
    throw new Error(`No case named ${options.get('case')}; there are ${Object.keys(cases).join(', ')}.`)
  const { model, budget, findings, other, demands } = useMemo(() => compiled(shown), [shown])
  const [wheel, setWheel] = useState(Number(options.get('wheel') ?? shown.wheel / 0.0254) * 0.0254)
  const [focused, setFocused] = useState<string | null>(null)
  return (
    <Plate
      axle={shown.axle}
      setupName="As found"
      budget={budget}
      model={model}
      other={other}
      wheel={wheel}
      onWheel={setWheel}
      system={shown.system}
      findings={findings}
      focusedFinding={focused}
      onFocusFinding={setFocused}
      onTakeFinding={setFocused}
      demands={demands}
      onDemands={STILL}
    />
  )
}

const root = document.getElementById('root')
if (font !== null) await document.fonts.load(`13px ${font}`)
if (root !== null)
  createRoot(root).render(
    <StrictMode>
      <Gallery />
    </StrictMode>,
  )
