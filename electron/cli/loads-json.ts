import { type Diagnosis, diagnose } from '../../core/loads/diagnosis.ts'
import { loadFindings } from '../../core/loads/findings.ts'
import { type AxleLedger, planLoads, type SetupLoads } from '../../core/loads/ledger.ts'
import type { Solved } from '../../core/loads/solve.ts'
import type { Plan } from '../../core/plan/schema.ts'

/** What one load does. Without a place for the wheels there is an `outcome` and no axles; the findings say why. */
const solvedJson = (solved: Solved, cornering: boolean) =>
  solved.outcome === 'settles'
    ? {
        ...(cornering ? { roll: solved.roll } : {}),
        axles: solved.axles.map(({ id, wheel, used }) => ({ id, wheel, used })),
      }
    : { outcome: solved.outcome, axles: [] }

const ledgerJson = ({ id, from, engagement, bump, zone, rows, together, difference, balance }: AxleLedger) => ({
  id,
  static: from,
  engagement,
  bump,
  zone,
  rows: rows.map(row => ({ id: row.id, to: row.to, takes: row.takes, assumed: row.assumed })),
  together: { loads: together.chosen, leftOut: together.leftOut, to: together.to, takes: together.takes, difference },
  balance,
})

/**
 * Why an axle rests on or near its stop, and what one change of each kind would do: `to` is null where that kind alone cannot, `along` what
 * moves with it, `after` how it stands then, its share counted from where it rests.
 */
const diagnosisJson = ({ axle, share, now, causes, changes, feel }: Diagnosis) => ({
  axle,
  share,
  now,
  causes: causes.map(({ id, size, message }) => ({ id, size, message })),
  changes: changes.map(({ kind, field, now: value, to, along, after, dangers }) => ({
    ...{ kind, field, now: value, to, along, after, dangers },
  })),
  feel,
})

const setupJson = (plan: Plan, setup: SetupLoads) => ({
  id: setup.id,
  loads: setup.loads.map(({ id, kind, solved }) => ({ id, ...solvedJson(solved, kind === 'cornering') })),
  ledger: setup.ledger.map(ledgerJson),
  findings: loadFindings(plan, setup).map(({ id, severity, axle, load, message, values }) => ({
    id,
    severity,
    axle,
    load,
    message,
    values,
  })),
  diagnosis: setup.ledger.flatMap(({ id }) => {
    const found = diagnose(plan, setup, id)
    return found === null ? [] : [diagnosisJson(found)]
  }),
})

/**
 * The loads of a plan for programs: SI units, wheel positions in m from ride height.
 * @param chosen ids of the loads taken together; all when not given
 */
export const loadsJson = (plan: Plan, chosen?: readonly string[]) => ({
  setups: planLoads(plan, chosen).map(setup => setupJson(plan, setup)),
})
