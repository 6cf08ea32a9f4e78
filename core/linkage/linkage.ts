import type { Linkage } from '../plan/schema.ts'
import { armLinkage } from './arm.ts'
import { axleLinkage } from './axle.ts'
import type { LinkageModel } from './linkage-model.ts'
import { ratioLinkage } from './ratio.ts'
import { tableLinkage } from './table.ts'

/** The linkage of a corner, ready to ask: shock and stop travel with their motion ratios at any wheel position. */
export function linkageModel(linkage: Linkage): LinkageModel {
  switch (linkage.kind) {
    case 'ratio':
      return ratioLinkage(linkage)
    case 'table':
      return tableLinkage(linkage)
    case 'arm':
      return armLinkage(linkage)
    case 'axle':
      return axleLinkage(linkage)
  }
}
