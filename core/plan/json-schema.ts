import { z } from 'zod'
import { planSchema } from './schema.ts'

/** The plan file's shape and ranges as JSON Schema (draft 2020-12). What one value says about another is only in `parsePlan`. */
export const planJsonSchema = (): Record<string, unknown> => ({
  ...z.toJSONSchema(planSchema, { target: 'draft-2020-12' }),
  title: 'Stopgap plan, version 1',
})
