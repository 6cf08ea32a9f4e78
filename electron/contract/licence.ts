import { z } from 'zod'

/** The list the build writes beside the window: every package with code in what is shipped, and its licence. */
export const licenceList = z.array(
  z.strictObject({
    name: z.string(),
    version: z.string(),
    /** As its package.json names it. */
    licence: z.string(),
    /** Its own licence file, whole. */
    text: z.string(),
  }),
)

export type Licence = z.infer<typeof licenceList>[number]
