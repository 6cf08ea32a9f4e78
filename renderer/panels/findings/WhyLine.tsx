import { memo, useMemo } from 'react'
import { changesHead, changeWords, type Diagnosis, TAPE_AGAIN } from '../../../core/loads/diagnosis.ts'
import { ON_STOP, PARKED } from '../../../core/tolerance/regimes.ts'
import { chanceText } from '../../../core/tolerance/saying.ts'
import { type Say, sayIn } from '../../../core/units/saying.ts'
import { useSureView } from '../../sure-context.ts'
import { useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import { FewFirst } from './FewFirst.tsx'
import { unbroken } from './unbroken.ts'
import type { Explained } from './use-diagnosis.ts'

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** What one change of each kind would have to be, and which kinds cannot do it alone. */
const Changes = memo(function Changes({ why, say }: { why: Diagnosis; say: Say }) {
  const { changes, causes, now } = why
  const store = useStore()
  const enough = changes.filter(({ to }) => to !== null)
  const short = changes.filter(({ to }) => to === null).map(({ name }) => name)
  const [worst] = causes
  if (enough.length === 0)
    return (
      <>
        <h3>What would mend it</h3>
        <p>{unbroken(worst?.remedy ?? '')}</p>
      </>
    )
  return (
    <>
      <h3>{unbroken(changesHead(why, say))}</h3>
      <FewFirst
        what="changes"
        items={enough.map(change => (
          <li key={change.kind}>
            <button type="button" className="step" onClick={() => goToField(store, change.field)}>
              {capital(change.name)}
            </button>{' '}
            {unbroken(changeWords(change, now.rest, say))}
          </li>
        ))}
      />
      <p>
        {short.length === 0 ? '' : `Not enough alone: ${short.join(', ')}. `}
        {TAPE_AGAIN}
      </p>
    </>
  )
})

/** One cause with its size; a load's own sentence begins with both and goes on from there. */
const Cause = memo(function Cause({ cause, say }: { cause: Diagnosis['causes'][number]; say: Say }) {
  const { label, size, message } = cause
  const named = `${label.replace(/^“(.*)”$/, '$1')}: ${say(size, 'length')} `
  const goesOn = message.startsWith(named)
  return (
    <li>
      <b>{unbroken(`${capital(label)} ${say(size, 'length')}${goesOn ? '' : '.'}`)}</b>{' '}
      {unbroken(goesOn ? message.slice(named.length) : message)}
    </li>
  )
})

/** How sure that is: the share of the trials in which it rests on its stop; where loads take it there, of those in which they do. */
function HowSure({ on }: { on: boolean }) {
  const { sureness, ledger } = useSureView()
  const rests = sureness?.regimes
    .find(({ id }) => id === 'at rest')
    ?.chances.filter(({ name }) => name === ON_STOP || name === PARKED)
    .reduce((sum, { chance }) => sum + chance, 0)
  const words = [
    rests === undefined || (!on && rests === 0) ? [] : [`Chance that it rests on its stop ${chanceText(rests)}.`],
    on || ledger === null || ledger.reachStop === null
      ? []
      : [`Chance that the loads take it there ${chanceText(ledger.reachStop)}.`],
  ].flat()
  return words.length === 0 ? null : <p className="chance">{unbroken(words.join(' '))}</p>
}

/** What put the axle on its stop, by size; what one change of each kind would mend it; what the driver feels. */
export function WhyLine({ why, units, late }: Explained) {
  const say = useMemo(() => sayIn(units), [units])
  const { now, causes } = why
  const on = now.engagement !== null && now.rest >= now.engagement
  return (
    <li className={late ? 'why late' : 'why'} aria-busy={late}>
      <svg width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
        <path d="M-5 0H5M1 -4l4 4l-4 4" stroke="var(--ink)" strokeWidth="1.5" fill="none" />
      </svg>
      <span className="sev">Why</span>
      <div>
        <h3>What puts it {on ? 'on' : 'near'} its stop</h3>
        <FewFirst ordered what="causes" items={causes.map(cause => <Cause key={cause.id} cause={cause} say={say} />)} />
        <HowSure on={on} />
      </div>
      <div className="next">
        <Changes why={why} say={say} />
        {why.feel.length === 0 ? null : (
          <>
            <h3>How it drives</h3>
            <p>{unbroken(why.feel.join(' '))}</p>
          </>
        )}
      </div>
    </li>
  )
}
