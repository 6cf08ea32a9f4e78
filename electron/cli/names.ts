import type { Plan, Setup } from '../../core/plan/schema.ts'

export const AXLE_NAMES = { front: 'Front axle', rear: 'Rear axle' } as const

/** What a setup is called; its id where nobody named it. */
export const setupName = ({ name, id }: Setup): string => (name.trim() === '' ? id : name)

/** What a plan is called. */
export const planTitle = ({ title }: Plan): string => (title.trim() === '' ? 'Untitled plan' : title)
