import type { Plan } from '../../core/plan/schema.ts'
import { setupName } from './names.ts'
import { paragraph } from './paragraph.ts'

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** What to say of a plan that can be used. */
export function checkText(file: string, { setups, loads, terrains }: Plan): string {
  const has = [counted(setups.length, 'setup'), counted(loads.length, 'load'), counted(terrains.length, 'terrain')]
  const named = setups.map(setup =>
    paragraph(`“${setupName(setup)}” (${setup.axles.map(axle => axle.id).join(' and ')})`, '  ', '    '),
  )
  return `${file} is fine: ${has.join(', ')}.\n${named.join('')}`
}
