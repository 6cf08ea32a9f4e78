import type { Worked } from '../../../core/changes/evaluate.ts'
import { candidateCosts, candidateReasons, candidateWork, landingWords } from '../../../core/changes/propose-words.ts'
import type { Say } from '../../../core/units/saying.ts'
import { Sentences } from './Sentences.tsx'

interface Props {
  readonly candidate: Worked
  readonly present: Worked
  readonly say: Say
  readonly course: string | null
}

/** What a candidate meets and misses, what it asks for and what it costs, in sentences. */
export function CandidateWords({ candidate, present, say, course }: Props) {
  const { ride, figures } = candidate
  const lines = [
    ...candidateReasons(candidate, say),
    `Landing height: ${landingWords(figures.landing, say)}.`,
    ...candidateWork(candidate).map(work => `Work: ${work}`),
    ...candidateCosts(candidate, present.figures, say).map(cost => `Against what is there: ${cost}`),
    ...(ride === null
      ? []
      : [
          `Over ${course ?? 'the course'}: on the stop ${say(ride.onStop, 'share')} of the time, ${ride.bottoms === 0 ? 'metal never meets' : `metal meets ${ride.bottoms === 1 ? 'once' : `${ride.bottoms} times`}`}.`,
        ]),
  ]
  return <Sentences lines={lines} />
}
