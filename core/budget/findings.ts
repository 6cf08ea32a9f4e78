import type { CornerModel } from '../corner/corner-model.ts'
import type { Axle, Plan } from '../plan/schema.ts'
import type { AxleFigures, Finding } from './results.ts'

export function findings(_axle: Axle, _model: CornerModel, _figures: AxleFigures, _system: Plan['units']): Finding[] {
  return []
}
