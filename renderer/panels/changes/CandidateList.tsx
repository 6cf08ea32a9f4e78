import { useEffect, useRef } from 'react'
import type { Worked } from '../../../core/changes/evaluate.ts'
import type { Proposals } from '../../../core/changes/propose.ts'
import { candidateName, regionWords } from '../../../core/changes/propose-words.ts'
import { shortlist } from '../../../core/changes/rank.ts'
import { targetName } from '../../../core/changes/targets.ts'
import type { Targets } from '../../../core/plan/schema.ts'
import type { Say } from '../../../core/units/saying.ts'
import { CandidateWords } from './CandidateWords.tsx'

/** Jobs listed; the map holds every candidate. */
const MOST = 12

interface Props {
  readonly proposals: Proposals
  readonly targets: Targets
  readonly say: Say
  /** What candidates were driven over besides landing; null: nothing. */
  readonly course: string | null
  readonly looked: Worked | null
  readonly onLook: (candidate: Worked | null) => void
  readonly onTake: (candidate: Worked) => void
}

/** The best candidate of each job, the least work first; a click or Enter makes it a setup. */
export function CandidateList({ proposals, targets, say, course, looked, onLook, onTake }: Props) {
  const { order, feasible, present, leftOut } = proposals
  const listed = shortlist(order, MOST)
  const rows = looked === null || listed.includes(looked) || !order.includes(looked) ? listed : [looked, ...listed]
  const list = useRef<HTMLOListElement>(null)
  useEffect(() => {
    list.current?.querySelector('.looked')?.scrollIntoView({ block: 'nearest' })
  })
  const region = regionWords(proposals, id => targetName(id, targets[id] ?? 0, say))
  return (
    <section className="candidates" aria-labelledby="candidates-title">
      <h3 id="candidates-title">
        {order.length === 0
          ? 'Nothing to choose from'
          : feasible > 0
            ? `${feasible.toLocaleString('en-US')} of ${order.length.toLocaleString('en-US')} meet every target`
            : `None of ${order.length.toLocaleString('en-US')} meets every target; the nearest first`}
      </h3>
      {order.length === 0 ? (
        <p>No change is open to this corner yet: allow one under “May be changed”, or make one by hand.</p>
      ) : null}
      <ol ref={list}>
        {rows.map(candidate => (
          <li key={order.indexOf(candidate)} className={candidate === looked ? 'looked' : ''}>
            <button
              type="button"
              className="candidate"
              onPointerEnter={() => listed.includes(candidate) && onLook(candidate)}
              onFocus={() => onLook(candidate)}
              onClick={() => onTake(candidate)}
            >
              <svg width="12" height="12" aria-hidden="true">
                <circle
                  cx="6"
                  cy="6"
                  r={candidate.feasible ? 4.5 : 3}
                  className={candidate.feasible ? 'does' : 'falls-short'}
                />
              </svg>
              <b>{candidateName(candidate, say)}</b>
              <span className="does-it">
                {candidate.feasible
                  ? 'meets every target'
                  : `misses ${candidate.targets.filter(({ met }) => !met).length || 'none'}${candidate.dangers.length > 0 ? ', a danger' : ''}`}
              </span>
            </button>
            {candidate === (looked ?? listed[0]) ? (
              <CandidateWords candidate={candidate} present={present} say={say} course={course} />
            ) : null}
          </li>
        ))}
      </ol>
      {region.length + leftOut === 0 ? null : (
        <>
          <h4>Why others do not do</h4>
          <ul className="region">
            {region.map(line => (
              <li key={line}>{line}</li>
            ))}
            {leftOut === 0 ? null : (
              <li>{leftOut.toLocaleString('en-US')} more were left out: the ranges are too wide.</li>
            )}
          </ul>
        </>
      )}
    </section>
  )
}
