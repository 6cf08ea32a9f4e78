import { fieldTable } from '../../../../renderer/fields/field-table.ts'

/** A path of every field a person can enter: the first of every list, its points one coordinate after another. */
export const FIELDS = Object.keys(fieldTable).map((path, i) => path.replace(/\.\*$/, `.${i % 3}`).replace(/\*/g, '0'))
