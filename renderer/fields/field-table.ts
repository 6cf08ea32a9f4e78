import { axleFields } from './axle-fields.ts'
import { cornerFields } from './corner-fields.ts'
import type { FieldSpec } from './field-spec.ts'
import { linkageFields } from './linkage-fields.ts'
import { planFields } from './plan-fields.ts'
import { shockFields } from './shock-fields.ts'
import { springFields } from './spring-fields.ts'
import { stopFields } from './stop-fields.ts'

/** Every number of the plan a person can enter, by its path with `*` for a place in a list. */
export const fieldTable: Readonly<Record<string, FieldSpec>> = {
  ...stopFields,
  ...shockFields,
  ...springFields,
  ...cornerFields,
  ...linkageFields,
  ...axleFields,
  ...planFields,
}

/** Path with its places in lists taken out: `corner.springs.springs.0.rate` is `corner.springs.springs.*.rate`. */
export const generic = (field: string): string => field.replace(/\[(\d+)\]/g, '.$1').replace(/\.\d+(?=\.|$)/g, '.*')

export const specOf = (field: string): FieldSpec | null => fieldTable[generic(field)] ?? null
