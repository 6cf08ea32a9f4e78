import type { ComponentType } from 'react'
import type { Files } from '../state/files.ts'
import { readyRides } from '../workers/ride-pool.ts'
import { type Later, later } from './later.ts'
import { TravelPage } from './TravelPage.tsx'

export interface PageSpec {
  readonly id: string
  readonly name: string
  /** Fills everything right of the measurements. */
  readonly page: ComponentType | Later
}

/**
 * The pages of the window, in the order of the title bar. A page that is not here does not exist. All but the one the window opens on
 * are fetched later, so that they do not delay its start: nothing else may import them.
 */
export const pages: readonly PageSpec[] = [
  { id: 'travel', name: 'Travel', page: TravelPage },
  { id: 'terrain', name: 'Terrain', page: later(async () => (await import('./TerrainPage.tsx')).TerrainPage) },
  { id: 'changes', name: 'Changes', page: later(async () => (await import('./ChangesPage.tsx')).ChangesPage) },
  { id: 'sheets', name: 'Sheets', page: later(async () => (await import('./SheetsPage.tsx')).SheetsPage) },
  { id: 'logs', name: 'Logs', page: later(async () => (await import('./LogsPage.tsx')).LogsPage) },
  { id: 'sure', name: 'How sure', page: later(async () => (await import('./SurePage.tsx')).SurePage) },
]

/** Fetches every page ahead of its first use; one that fails is asked for again, and told of, when it is shown. */
export async function loadPages(): Promise<void> {
  await Promise.allSettled(pages.map(({ page }) => ('load' in page ? page.load() : null)))
}

/** Has the first ride ready before it is asked for. */
export async function practiseRides(files: Files): Promise<void> {
  readyRides()
  await import('./practise.tsx').then(
    ({ practise }) => practise(files),
    // The page itself is fetched again when it is shown, and tells then what is wrong.
    () => undefined,
  )
}
