import { useState } from 'react'
import type { UnitSystem } from '../../../core/plan/schema.ts'
import type { MeasuredCourse } from '../../../core/ride/measured-road.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { parseMeasure } from '../../../core/units/parse.ts'
import { ownRoadOf, whyNotDriven } from '../../state/own-road.ts'
import { useStore } from '../../window-context.ts'

/** How fast a road from a file is driven. A wrong entry says what would be right and changes nothing. */
export function RoadSpeed({ road, units }: { readonly road: MeasuredCourse; readonly units: UnitSystem }) {
  const store = useStore()
  const [typed, setTyped] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<string | null>(null)
  const write = (text: string): void => {
    const speed = parseMeasure(text, 'speed', units)
    const why = speed.ok ? whyNotDriven(road.profile, speed.value, units) : speed.problem
    setTrouble(why)
    if (speed.ok && why === null) {
      setTyped(null)
      ownRoadOf(store).write({ ...road, speed: speed.value })
    }
  }
  return (
    <>
      <label className="road-speed">
        at{' '}
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-label="Speed on this road"
          aria-invalid={trouble !== null}
          value={typed ?? formatMeasure(road.speed, 'speed', units, { unit: true })}
          onChange={event => setTyped(event.currentTarget.value)}
          onBlur={() => typed !== null && write(typed)}
          onKeyDown={event => {
            if (event.key === 'Enter' && typed !== null) write(typed)
            if (event.key === 'Escape') {
              setTyped(null)
              setTrouble(null)
            }
          }}
        />
      </label>
      {trouble === null ? null : (
        <p className="road-trouble speed-trouble" role="alert">
          Not changed: {trouble}
        </p>
      )}
    </>
  )
}
