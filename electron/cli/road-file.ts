import { resolve } from 'node:path'
import type { RoadProfile } from '../../core/ride/measured-road.ts'
import { readRoad } from '../../core/ride/road-text.ts'
import { readText } from '../services/plan-file.ts'

export type RoadRead =
  | { readonly ok: true; readonly profile: RoadProfile }
  | { readonly ok: false; readonly complaint: string }

/**
 * The road in a file, or what to tell the person instead.
 * @param file as the person named it; @param folder where the name is taken from
 */
export async function openRoad(file: string, folder: string): Promise<RoadRead> {
  const read = await readText(resolve(folder, file))
  if (read.kind !== 'text') {
    const why = read.kind === 'missing' ? 'there is no such file' : read.why
    return { ok: false, complaint: `${file} could not be read: ${why}.\n` }
  }
  const parsed = readRoad(read.text)
  return parsed.ok ? parsed : { ok: false, complaint: `${file} cannot be used as a road: ${parsed.why}.\n` }
}
