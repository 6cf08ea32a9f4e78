import { z } from 'zod'
import { planSchema } from '../../core/plan/schema.ts'
import { longestRun } from './recording.ts'

/** What messages are made of. Shapes are strict, so a path cannot ride along. */

/** Longest plan text, in characters and in bytes. */
export const longestPlan = 20 * 1024 * 1024

/** Longest text of a shelf, in characters: a thousand parts of each kind are a tenth of it. */
const longestShelf = 8 * 1024 * 1024

/** Longest page to print, in characters: sheets are a hundredth of it. */
export const longestPage = 8 * 1024 * 1024

/** Of a kept run. */
export const runContent = z.base64().max(4 * Math.ceil(longestRun / 3))
/** From the plan's folder, as the plan has it: the host looks there and nowhere else. */
export const runPath = planSchema.shape.runs.unwrap().element.shape.file
/** The file of recipes, as core/plan/recipe-file.ts writes it. */
export const recipesText = z.string().max(4 * 1024 * 1024)
export const runDigest = z.string().regex(/^[0-9a-f]{64}$/, 'the digest the plan has')

/** Stands for a file, a folder or a kept copy during one run. */
export const token = z.string().regex(/^[A-Za-z0-9_-]{22}$/, 'a token given by the host')
/** Names a document's kept copy. The window makes one (crypto.randomUUID()) for a plan it starts itself. */
export const key = z.string().regex(/^[A-Za-z0-9-]{8,64}$/, '8 to 64 letters, digits and -')
export const name = z.string().min(1).max(255)
export const text = z.string().max(longestPlan)
/** Stops, springs and tubes kept across plans, as the text of a shelf file. */
export const shelfText = z.string().max(longestShelf)
/** The undo history in the window's own form; nobody else reads it. */
export const history = z.string().max(2 * longestPlan)
export const when = z.iso.datetime()
/** A sentence to show as it stands. */
export const sentence = z.string().min(1).max(4000)
/** Digest of the file's content when the window last read or saved it: tells whether somebody else changed it since. */
export const basis = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'the basis given with the document')
  .nullable()

export const settings = z.strictObject({
  theme: z.enum(['system', 'light', 'dark']),
  /** The person has been shown around, or did not want to be. */
  lookedAround: z.boolean().optional(),
  /** The page last looked at; one that is not there any more is passed over. */
  page: z.string().min(1).max(40).optional(),
})

export const documentSchema = z.strictObject({
  key,
  /** null: not in a file yet, or its file cannot be written; Save asks where. */
  token: token.nullable(),
  /** File name without its ending, or the plan's title. */
  name,
  /** What to show: the file, or the kept copy when that has changes the file has not. */
  text,
  basis,
  /** What the file holds now; null when there is none. */
  savedText: text.nullable(),
  savedAt: when.nullable(),
  history: history.optional(),
  /** The text is a kept copy with changes that were never saved. */
  recovered: z.boolean(),
})

export const opened = z.strictObject({
  kind: z.literal('document'),
  document: documentSchema,
  /** Something to tell: a kept copy was set aside, the file has gone. */
  report: sentence.optional(),
})
/** `rescue` opens the last good copy of the same plan, where there is one; `remains` what can be read of the damaged file. */
export const failedToOpen = z.strictObject({
  kind: z.literal('failed'),
  reason: sentence,
  rescue: token.optional(),
  remains: token.optional(),
})
export const openedOrFailed = z.discriminatedUnion('kind', [opened, failedToOpen])

export const failed = z.strictObject({ kind: z.literal('failed'), reason: sentence })
export const cancelled = z.strictObject({ kind: z.literal('cancelled') })
/** This host has no file dialog: show the window's own, fed by `folder`, then `openFile` or `saveIn`. */
export const choose = z.strictObject({ kind: z.literal('choose') })
/** From here on the document goes by these. */
export const saved = z.strictObject({
  kind: z.literal('saved'),
  key,
  token,
  name,
  basis,
  savedAt: when,
  /** Something to tell: the file had gone and was written anew. */
  report: sentence.optional(),
})

export const recents = z.array(
  z.strictObject({
    token,
    name,
    /** Name of the folder it is in; null for a plan that is not in a file yet. */
    folder: z.string().max(255).nullable(),
    /** There is a kept copy with changes the file has not. */
    unsaved: z.boolean(),
    /** When it was last opened or changed here. */
    at: when,
  }),
)

export type OpenDocument = z.infer<typeof documentSchema>
export type Opened = z.infer<typeof openedOrFailed>
export type Settings = z.infer<typeof settings>
export type Recents = z.infer<typeof recents>
