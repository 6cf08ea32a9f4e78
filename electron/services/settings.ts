import { z } from 'zod'
import type { LatestWriter } from './latest-writer.ts'
import { readStored } from './stored.ts'

const schema = z.strictObject({
  format: z.literal('stopgap-settings'),
  version: z.literal(1),
  theme: z.enum(['system', 'light', 'dark']),
  lookedAround: z.boolean().optional(),
  page: z.string().optional(),
  /** Screen pixels; x and y are missing where the host cannot know them. */
  window: z.strictObject({
    width: z.int(),
    height: z.int(),
    x: z.int().optional(),
    y: z.int().optional(),
    maximized: z.boolean().optional(),
  }),
  /** Folder last saved to or opened from in the window's own chooser. */
  folder: z.string().nullable(),
})

export type StoredSettings = Omit<z.infer<typeof schema>, 'format' | 'version'>

const atFirst: StoredSettings = { theme: 'system', window: { width: 1440, height: 900 }, folder: null }

export function storedSettings(file: string, writer: LatestWriter, report: (sentence: string) => void) {
  let known: StoredSettings | null = null

  async function read(): Promise<StoredSettings> {
    known ??= await stored()
    return known
  }

  async function stored(): Promise<StoredSettings> {
    const found = await readStored(file, schema, 'The file of settings')
    if (found.kind === 'lost') report(found.report)
    if (found.kind !== 'value') return atFirst
    const { format: _format, version: _version, ...settings } = found.value
    return settings
  }

  /** The change holds for this run even when it cannot be written; the promise then rejects. */
  async function change(part: Partial<StoredSettings>): Promise<void> {
    const old = await read()
    known = {
      theme: part.theme ?? old.theme,
      lookedAround: part.lookedAround ?? old.lookedAround,
      page: part.page ?? old.page,
      window: { ...old.window, ...part.window },
      folder: part.folder === undefined ? old.folder : part.folder,
    }
    await writer.write(file, JSON.stringify({ format: 'stopgap-settings', version: 1, ...known }))
  }

  return { read, change }
}

export type SettingsStore = ReturnType<typeof storedSettings>
