import { createHash } from 'node:crypto'
import type { Sha256 } from '../../core/runs/kept-run.ts'

export const sha256: Sha256 = bytes => createHash('sha256').update(bytes).digest()
