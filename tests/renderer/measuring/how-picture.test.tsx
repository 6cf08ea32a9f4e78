import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { HowPicture } from '../../../renderer/charts/measuring/HowPicture.tsx'
import { fieldTable } from '../../../renderer/fields/field-table.ts'

const picture = (field: string): string => renderToStaticMarkup(<HowPicture field={field} />)
const fields = Object.keys(fieldTable).map(field => field.replace(/\*/g, '0'))

/** What no path is known for. */
const fallback = picture('notes')

describe('how a field is measured', () => {
  it.each(fields)('%s has a picture in finite numbers', field => {
    const drawn = picture(field)
    expect(drawn).toContain('<path')
    expect(drawn).not.toMatch(/NaN|Infinity|undefined/)
  })

  it('has pictures of their own for most fields, and families share the rest', () => {
    const own = new Set(fields.map(picture))
    expect(own.size).toBeGreaterThan(0.75 * fields.length)
    const same = (a: string, b: string): boolean => picture(a) === picture(b)
    expect({
      lists: same('corner.springs.springs.0.rate', 'corner.springs.springs[2].rate'),
      stopCurves: same('corner.stop.compression.1.force', 'corner.shock.compression.0.force'),
      ratioAndRows: same('corner.linkage.shock', 'corner.linkage.rows.3.shock'),
      whereItBelongs: same('setups.0.axles.1.corner.stop.gap', 'corner.stop.gap'),
    }).toEqual({ lists: true, stopCurves: true, ratioAndRows: true, whereItBelongs: true })
  })

  it('leaves the picture of last resort to the tire’s radius and to paths nobody knows', () => {
    expect(fields.filter(field => picture(field) === fallback)).toEqual(['corner.tire.radius'])
  })

  it('says which coordinate of which point is asked for', () => {
    const points = [
      'wheel.0',
      'wheel.1',
      'wheel.2',
      'shockLower.0',
      'shockUpper.0',
      'stopPad.0',
      'pivot.0.0',
      'pivot.1.2',
    ]
    expect(new Set(points.map(point => picture(`corner.linkage.${point}`))).size).toBe(points.length)
    expect(picture('corner.linkage.pivot.0.1')).toBe(picture('corner.linkage.pivot.1.1'))
  })
})
