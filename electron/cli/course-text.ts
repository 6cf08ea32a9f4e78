import type { Course } from '../../core/ride/terrain.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { length } from './tape.ts'

/** What is driven, in one sentence. */
export function courseText(course: Course, system: System): string {
  const say = (value: number, quantity: Quantity): string => formatMeasure(value, quantity, system, { unit: true })
  const name = course.name ?? ''
  const named = (what: string): string => (name.trim() === '' ? what : `${name}: ${what}`)
  switch (course.kind) {
    case 'whoops':
      return named(
        `${course.count} whoops ${length(course.height, system)} high, ${length(course.spacing, system)} apart, at ${say(course.speed, 'speed')}.`,
      )
    case 'landing':
      return named(`a landing, all wheels at once, from ${length(course.drop, system)} up.`)
    case 'ledge':
      return named(
        `a ledge ${length(course.height, system)} high and ${length(course.length, system)} long, at ${say(course.speed, 'speed')}.`,
      )
    case 'rough':
      return named(
        `${say(course.duration, 'time')} of rough road, class ${course.isoClass} of ISO 8608 at its mean, at ${say(course.speed, 'speed')}.`,
      )
    case 'measured': {
      const { distance } = course.profile
      return `The road in ${course.id}, ${length(distance.at(-1)! - distance[0]!, system)} long, at ${say(course.speed, 'speed')}.`
    }
  }
}
