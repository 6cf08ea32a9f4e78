import type { Plan } from '../../core/plan/schema.ts'

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** What to say of a plan that can be used. */
export function checkText(file: string, { setups, loads, terrains }: Plan): string {
  const names = setups.map(setup => `“${setup.name}” (${setup.axles.map(axle => axle.id).join(' and ')})`)
  return `${file} is fine: ${counted(setups.length, 'setup')}, ${counted(loads.length, 'load')}, ${counted(
    terrains.length,
    'terrain',
  )}.\n${names.map(name => `  ${name}\n`).join('')}`
}
