import { ledgerSurenessSteps } from '../../core/tolerance/ledger-sureness.ts'
import { setupSurenessSteps, type TrialProgress } from '../../core/tolerance/steps.ts'
import type { SureAsk, SureCall, SureReply, SureWord } from '../state/sure.ts'

/** Steps between two words on how far it is. */
const EVERY = 4
/** Hands that were told of are taken to move for this long, ms. */
const REST = 500

export const faultOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault))

/** Lets whatever was posted meanwhile be heard, after so many ms. */
export type Pause = (ms: number) => Promise<unknown>

/**
 * Goes through trials a block at a time, and hears what it is told between two: another call takes the place of the one before, and while hands
 * move it rests, so that whoever types has the machine.
 */
export class TrialDesk {
  /** The call worked on. */
  private latest = 0
  private restsUntil = 0

  constructor(
    private readonly say: (reply: SureReply) => void,
    private readonly pause: Pause,
    private readonly now: () => number,
  ) {}

  take(call: SureCall): void {
    if (call.kind === 'hands') {
      this.restsUntil = this.now() + REST
      return
    }
    this.latest = call.id
    this.restsUntil = 0
    if (call.ask !== null) void this.trials(call.ask, call.id)
  }

  private tell(id: number, word: SureWord): void {
    if (id === this.latest) this.say({ id, word })
  }

  /** Goes through all steps, telling how far it is; null when another call came in between. */
  private async through<T>(steps: Generator<TrialProgress, T>, id: number): Promise<T | null> {
    for (let n = 1; this.latest === id; n += 1) {
      const { done, value } = steps.next()
      if (done) return value
      await this.pause(0)
      while (this.latest === id && this.now() < this.restsUntil) await this.pause(this.restsUntil - this.now())
      if (n % EVERY === 0) this.tell(id, { kind: 'progress', share: value.done / value.of })
    }
    return null
  }

  /** The trials of one axle, then of its ledger. */
  private async trials({ plan, axle, chosen }: SureAsk, id: number): Promise<void> {
    try {
      const setup = plan.setups[0]!
      const found = await this.through(setupSurenessSteps(plan, setup, { axle }), id)
      if (found === null) return
      this.tell(id, { kind: 'done', sureness: found.axles[0]! })
      if (plan.loads.length === 0) return
      const ledger = await this.through(ledgerSurenessSteps(plan, setup, chosen, { axle }), id)
      if (ledger !== null) this.tell(id, { kind: 'ledger', ledger: ledger[0]! })
    } catch (fault) {
      this.tell(id, { kind: 'fault', fault: faultOf(fault) })
    }
  }
}
