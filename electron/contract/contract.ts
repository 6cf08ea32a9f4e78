import { z } from 'zod'
import { recordingPiece } from './recording.ts'
import {
  basis,
  cancelled,
  choose,
  documentSchema,
  failed,
  failedToOpen,
  history,
  key,
  longestPage,
  name,
  opened,
  openedOrFailed,
  recents,
  recipesText,
  runContent,
  runDigest,
  runPath,
  saved,
  sentence,
  settings,
  shelfText,
  text,
  token,
  when,
} from './shapes.ts'

/**
 * Everything the window may ask of the machine, and everything the machine may tell the window: one table each.
 * Types, checks and the wiring of every host derive from these tables.
 * The window holds opaque tokens and names; paths stay on the other side.
 */

const nothing = z.strictObject({})

export const messages = {
  /** What to show first: the file named at the start, else the last plan, else a demo. */
  start: {
    request: nothing,
    reply: z.strictObject({
      document: documentSchema,
      recents,
      demos: z.array(z.strictObject({ token, name })),
      settings,
      about: z.strictObject({
        version: z.string(),
        host: z.enum(['electron', 'browser']),
        /** What it runs on, as far as the host knows. */
        runsOn: z.array(z.strictObject({ name: z.string().max(40), version: z.string().max(80) })).optional(),
      }),
      /** What could not be done on the way here. */
      report: sentence.optional(),
    }),
  },
  /** Ask the person for a file. */
  open: { request: nothing, reply: z.discriminatedUnion('kind', [opened, failedToOpen, cancelled, choose]) },
  /** Open a recent plan, a demo, an entry of `folder`, a rescue. */
  openFile: { request: z.strictObject({ token }), reply: openedOrFailed },
  recents: { request: nothing, reply: z.strictObject({ recents }) },
  /** Folders and plans in a folder; null: where the person was last. */
  folder: {
    request: z.strictObject({ token: token.nullable() }),
    reply: z.discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('folder'),
        token,
        name,
        /** null at the top of a place. */
        parent: token.nullable(),
        entries: z.array(z.strictObject({ token, name, kind: z.enum(['folder', 'plan']), modified: when })),
        /** How many more there are than are listed. */
        unlisted: z.int().min(0),
        /** Home, drives and sticks, always offered beside the list. */
        places: z.array(z.strictObject({ token, name })),
      }),
      failed,
    ]),
  },
  /** Save into the document's own file. `replace` overwrites what somebody else wrote there meanwhile. */
  save: {
    request: z.strictObject({ key, token, text, basis, replace: z.boolean() }),
    reply: z.discriminatedUnion('kind', [
      saved,
      z.strictObject({ kind: z.literal('changed'), savedAt: when, savedText: text.nullable() }),
      failed,
    ]),
  },
  /** `token` is of the file it had until now: runs kept beside that come along. */
  saveAs: {
    request: z.strictObject({ key, token: token.nullable(), name, text }),
    reply: z.discriminatedUnion('kind', [saved, cancelled, choose, failed]),
  },
  saveIn: {
    request: z.strictObject({ key, token: token.nullable(), folder: token, name, text, replace: z.boolean() }),
    reply: z.discriminatedUnion('kind', [saved, z.strictObject({ kind: z.literal('exists'), name }), failed]),
  },
  /** Keep the document as it is now in the application's own folder. Sent after every change; the last one counts. */
  keep: {
    request: z.strictObject({ key, token: token.nullable(), name, text, basis, history: history.optional() }),
    reply: z.discriminatedUnion('kind', [z.strictObject({ kind: z.literal('kept') }), failed]),
  },
  /** Put a recorded run into a file of its own beside the plan's file; none that is there is written over. */
  keepRun: {
    request: z.strictObject({ token, name, base64: runContent }),
    reply: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('kept'), file: runPath, digest: runDigest }),
      failed,
    ]),
  },
  /** Read a run kept beside the plan; `changed` when the file is there but is not what the plan says. */
  openRun: {
    request: z.strictObject({ token, file: runPath, digest: runDigest }),
    reply: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('run'), base64: runContent }),
      z.strictObject({ kind: z.literal('changed'), base64: runContent, digest: runDigest, reason: sentence }),
      z.strictObject({ kind: z.literal('missing'), reason: sentence }),
    ]),
  },
  /** What is on the shelf; null: nobody has put anything on it. */
  shelf: { request: nothing, reply: z.strictObject({ text: shelfText.nullable(), report: sentence.optional() }) },
  /** Keep the shelf as it is now in the application's own folder. The last one counts. */
  keepShelf: {
    request: z.strictObject({ text: shelfText }),
    reply: z.discriminatedUnion('kind', [z.strictObject({ kind: z.literal('kept') }), failed]),
  },
  /** Ask the person for a recording. */
  openRecording: {
    request: nothing,
    reply: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('recording'), token, name, size: z.int().min(0) }),
      cancelled,
      choose,
      failed,
    ]),
  },
  /** A piece of the recording that was chosen, from the byte `at`; nothing is in it at the end. */
  recordingPiece: {
    request: z.strictObject({ token, at: z.int().min(0) }),
    reply: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('piece'), base64: z.base64().max(4 * Math.ceil(recordingPiece / 3)) }),
      failed,
    ]),
  },
  /** How kinds of recorded files were read before. */
  recipes: { request: nothing, reply: z.strictObject({ text: recipesText, report: sentence.optional() }) },
  /** Remember these, in place of those before. */
  keepRecipes: {
    request: z.strictObject({ text: recipesText }),
    reply: z.discriminatedUnion('kind', [z.strictObject({ kind: z.literal('kept') }), failed]),
  },
  /** Drop a kept copy the person does not want. */
  forget: { request: z.strictObject({ key }), reply: nothing },
  /** A whole page as a PDF, fonts and all inside it. A host without a browser it can print with says so. */
  pdf: {
    request: z.strictObject({ html: z.string().min(1).max(longestPage) }),
    reply: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('pdf'), base64: z.base64() }),
      z.strictObject({ kind: z.literal('none'), reason: sentence }),
      failed,
    ]),
  },
  /** Something went wrong in the window: for the log. */
  fault: {
    request: z.strictObject({ about: z.string().max(80), message: z.string().max(4000) }),
    reply: nothing,
  },
  /** Show the log where it lies; a host without a way to says where it is. */
  showLog: { request: nothing, reply: z.strictObject({ shown: z.boolean(), place: sentence }) },
  /** Change some settings; the reply has them all. */
  settings: {
    request: settings.partial().extend({
      /** Size of the window, for the next start. Electron looks itself. */
      window: z.strictObject({ width: z.int().min(1).max(20_000), height: z.int().min(1).max(20_000) }).optional(),
    }),
    reply: settings,
  },
} satisfies Record<string, { request: z.ZodType; reply: z.ZodType }>

/** What the host says unasked. */
export const events = {
  /** A file was opened from outside: a double click, a second start. */
  opened: openedOrFailed,
  /** Chosen in the native menu. */
  menu: z.strictObject({
    command: z.enum([
      'new',
      'open',
      'record',
      'save',
      'saveAs',
      'print',
      'undo',
      'redo',
      'help',
      'guide',
      'log',
      'about',
    ]),
  }),
  /** Another window, of this Stopgap or another one, has opened the plan this window has. */
  shared: z.strictObject({ key }),
  /** Settings changed outside the page. */
  settings,
} satisfies Record<string, z.ZodType>

export type MessageName = keyof typeof messages
export type Request<N extends MessageName> = z.infer<(typeof messages)[N]['request']>
export type Reply<N extends MessageName> = z.infer<(typeof messages)[N]['reply']>
export type Call = <N extends MessageName>(name: N, request: Request<N>) => Promise<Reply<N>>

export type EventName = keyof typeof events
export type EventPayload<N extends EventName> = z.infer<(typeof events)[N]>
/** To every window, or to the one of this name. */
export type Tell = <N extends EventName>(name: N, payload: EventPayload<N>, window?: string) => void

export type MenuCommand = EventPayload<'menu'>['command']
