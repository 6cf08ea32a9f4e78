import type { ComponentType } from 'react'
import { SurePage } from './SurePage.tsx'
import { TerrainPage } from './TerrainPage.tsx'
import { TravelPage } from './TravelPage.tsx'

export interface PageSpec {
  readonly id: string
  readonly name: string
  /** Fills everything right of the measurements. */
  readonly Page: ComponentType
}

/** The pages of the window, in the order of the title bar. A page that is not here does not exist. */
export const pages: readonly PageSpec[] = [
  { id: 'travel', name: 'Travel', Page: TravelPage },
  { id: 'terrain', name: 'Terrain', Page: TerrainPage },
  { id: 'sure', name: 'How sure', Page: SurePage },
]
