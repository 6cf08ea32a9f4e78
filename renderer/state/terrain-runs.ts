import type { RideFinding } from '../../core/ride/findings/rule.ts'
import type { Answer, Ask } from '../workers/messages.ts'
import type { CallOff } from '../workers/pool.ts'
import { landingLimit, nextDrop } from './landing-limit.ts'
import { RideCache, type SweptPoint } from './terrain-cache.ts'
import { type DrivenCorner, sameDriven } from './terrain-driven.ts'
import { LIMIT_WITHIN, pointOf, sweptPoints } from './terrain-points.ts'
import { type RideRequest, type Rider, type RunsView, sameRequest } from './terrain-request.ts'
import { coarseFirst, type Sweep } from './terrain-sweep.ts'
import { watched } from './watched.ts'

const NOTHING: RunsView = {
  rides: [],
  settled: true,
  swept: [],
  findings: null,
  work: null,
  stopped: false,
  fault: null,
}

/** Work shorter than this shows no progress, ms. */
const UNSEEN = 300
/** The sweep begins when the hands rest for this long, ms; where the rides are there already, once they are drawn. */
const REST = 250
const DRAWN = 50

export const RANK = { ride: 0, findings: 1, sweep: 2 } as const

/** Each once. */
const distinct = (corners: readonly DrivenCorner[]): DrivenCorner[] =>
  corners.filter((corner, i) => corners.findIndex(each => sameDriven(each, corner)) === i)

/** Rides of the terrain page: what is asked last is worked out first, and what was ridden before is remembered. */
export class TerrainRuns {
  private readonly seen = watched(NOTHING)
  readonly read = this.seen.read
  readonly subscribe = this.seen.subscribe
  private request: RideRequest | null = null
  private readonly underWay = new Set<CallOff>()
  private timers: ReturnType<typeof setTimeout>[] = []
  private done = 0
  private total = 0
  private slow = false

  /** What is known of a question before it is asked. */
  private ahead: { request: RideRequest; view: RunsView } | null = null

  constructor(
    private readonly rider: Rider,
    private readonly cache = new RideCache(),
  ) {}

  /** The same for a page about to ask its first question: what is remembered of it is there at once. */
  readonly readOf = (request: RideRequest | null): RunsView => {
    if (this.request !== null || request === null) return this.read()
    if (this.ahead?.request !== request) this.ahead = { request, view: this.beginning(request, false) }
    return this.ahead.view
  }

  warm(count: number): void {
    this.rider.warm(count)
  }

  /** From now on only this counts. */
  ask(request: RideRequest | null): void {
    const before = this.request
    if (before !== null && request !== null && sameRequest(before, request)) return
    const view = request === null ? NOTHING : this.readOf(request)
    this.callOff()
    this.request = request
    this.ahead = null
    if (request === null) this.seen.write(NOTHING)
    else this.begin(request, before?.subject === request.subject, before === null ? view : undefined)
  }

  /** Ends the work under way; what is done stays. */
  stop(): void {
    if (this.done >= this.total) return
    this.callOff()
    this.seen.write({ ...this.read(), work: null, stopped: true })
  }

  /** Takes up what was stopped, or what failed. */
  resume(): void {
    if (this.request === null) return
    this.callOff()
    this.begin(this.request, true)
  }

  /** What there is to show of a question before anything is worked out for it. */
  private beginning(request: RideRequest, keep: boolean): RunsView {
    const { corners, terrain } = request
    const known = corners.map(corner => this.cache.ride(corner, terrain))
    const settled = known.every(ride => ride !== null)
    const stale = keep && !settled && this.read().rides.length === corners.length
    return {
      rides: stale ? this.read().rides : known,
      settled,
      swept: this.sweptNow(request),
      findings: this.findingsNow(request) ?? (stale ? this.read().findings : null),
      work: null,
      stopped: false,
      fault: null,
    }
  }

  private begin(request: RideRequest, keep: boolean, view = this.beginning(request, keep)): void {
    const { corners, terrain, sweep } = request
    const { settled } = view
    this.done = 0
    this.total = 0
    this.slow = false
    this.seen.write(view)
    const missing = corners.filter(corner => this.cache.ride(corner, terrain) === null)
    for (const corner of distinct(missing)) this.ride(request, corner)
    this.timers = [setTimeout(() => this.beSlow(), UNSEEN)]
    const further = (): void => {
      this.findOut(request)
      if (sweep !== null) this.sweepAll(request, sweep)
    }
    this.timers.push(setTimeout(further, settled ? DRAWN : REST))
  }

  private ride(request: RideRequest, corner: DrivenCorner): void {
    const { terrain } = request
    this.job({ kind: 'ride', driven: corner.driven, terrain, trace: true }, RANK.ride, answer => {
      if (answer.kind !== 'ride') return
      const { ridden } = answer
      this.cache.keepRide(corner, terrain, ridden)
      this.cache.keepPoint(corner, terrain, pointOf(request.sweep?.present ?? 0, ridden))
      const rides = request.corners.map(each => this.cache.ride(each, terrain))
      const settled = rides.every(each => each !== null)
      // Before and after change together, so that a ride is never compared with one of another plan, and all of it is drawn once.
      this.patch(settled ? { rides, settled, swept: this.sweptNow(request) } : { swept: this.sweptNow(request) })
    })
  }

  private findOut(request: RideRequest): void {
    const { axle, terrain, units, corners } = request
    const [corner] = corners
    if (corner === undefined || this.findingsNow(request) !== null) return
    this.job({ kind: 'findings', driven: corner.driven, axle, terrain, units }, RANK.findings, answer => {
      if (answer.kind !== 'findings') return
      this.cache.keepFindings(corner, terrain, units, answer.findings)
      this.patch({ findings: answer.findings })
    })
  }

  private findingsNow({ corners, terrain, units }: RideRequest): readonly RideFinding[] | null {
    const [corner] = corners
    return corner === undefined ? null : this.cache.findings(corner, terrain, units)
  }

  private sweepAll(request: RideRequest, sweep: Sweep): void {
    const corners = distinct(request.corners)
    for (const value of coarseFirst(sweep.values))
      for (const corner of corners) this.sweepOne(request, sweep, corner, value)
    if (sweep.by === 'drop') for (const corner of corners) this.narrow(request, sweep, corner)
  }

  private sweepOne(request: RideRequest, sweep: Sweep, corner: DrivenCorner, value: number): void {
    const terrain = sweep.at(value)
    if (this.cache.point(corner, terrain) !== undefined) return
    this.job({ kind: 'ride', driven: corner.driven, terrain, trace: false }, RANK.sweep, answer => {
      if (answer.kind !== 'ride') return
      this.cache.keepPoint(corner, terrain, pointOf(value, answer.ridden))
      this.patch({ swept: this.sweptNow(request) })
      if (sweep.by === 'drop') this.narrow(request, sweep, corner)
    })
  }

  /** Looks closer at where a landing begins to bottom, once the coarse look is done. */
  private narrow(request: RideRequest, sweep: Sweep, corner: DrivenCorner): void {
    if (sweep.values.some(value => this.cache.point(corner, sweep.at(value)) === undefined)) return
    const next = nextDrop(landingLimit(sweptPoints(this.cache, request, corner)), LIMIT_WITHIN)
    if (next !== null) this.sweepOne(request, sweep, corner, next)
  }

  private sweptNow(request: RideRequest): SweptPoint[][] {
    return request.corners.map(corner => sweptPoints(this.cache, request, corner))
  }

  private job(ask: Ask, rank: number, keep: (answer: Answer) => void): void {
    this.total += 1
    const over = (): void => {
      this.underWay.delete(callOff)
      this.done += 1
    }
    const callOff = this.rider.run(ask, rank, {
      done: answer => {
        over()
        keep(answer)
        this.patch({ work: this.progress() })
      },
      failed: fault => {
        over()
        this.callOff()
        this.patch({ work: null, fault })
      },
    })
    this.underWay.add(callOff)
  }

  private progress(): RunsView['work'] {
    return this.slow && this.done < this.total ? { done: this.done, total: this.total } : null
  }

  private beSlow(): void {
    this.slow = true
    this.patch({ work: this.progress() })
  }

  private callOff(): void {
    for (const timer of this.timers) clearTimeout(timer)
    this.timers = []
    for (const callOff of this.underWay) callOff()
    this.underWay.clear()
  }

  private patch(change: Partial<RunsView>): void {
    this.seen.write({ ...this.read(), ...change })
  }
}
