import type { Setup } from '../../../core/plan/schema.ts'
import type { LaidRun } from '../../../core/runs/lay.ts'
import type { Recording } from '../../state/recording.ts'

const called = ({ name, id }: Setup): string => (name.trim() === '' ? id : name)

/** What has to be known before figures of a run are read: it was driven with something else, has gaps, or a file with faults. */
export function runCautions(
  run: Recording,
  laid: Pick<LaidRun, 'run'> | null,
  shown: Setup,
  setups: readonly Setup[],
): string[] {
  const driven = setups.find(({ id }) => id === run.driven)
  const { gaps = 0, lost = 0 } = laid?.run ?? {}
  const faults = Object.values(run.found?.faults ?? {}).reduce((sum, count) => sum + count, 0)
  return [
    ...(driven === undefined || driven.id === shown.id
      ? []
      : [
          `It was driven with ${called(driven)}. Over ${called(shown)} it shows where these springs and this stop would be met by a wheel that moved the same, which it would not quite.`,
        ]),
    ...(gaps === 0 && faults === 0
      ? []
      : [
          [
            gaps === 0 ? '' : `${gaps} ${gaps === 1 ? 'gap' : 'gaps'}, ${lost.toFixed(1)} s in all, not counted`,
            faults === 0 ? '' : `${faults} ${faults === 1 ? 'row' : 'rows'} not as they should be: see How it is read`,
          ]
            .filter(words => words !== '')
            .join('; ')
            .concat('.'),
        ]),
  ]
}
