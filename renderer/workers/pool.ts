import type { Question, Reply } from './messages.ts'

/** As much of a Worker as the pool uses. */
export interface Hand {
  postMessage(question: unknown): void
  terminate(): void
  onmessage: ((event: MessageEvent) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** What becomes of a job: its answer, or why there is none. A job that was called off tells nobody. */
export interface Hearer<R> {
  done(answer: R): void
  failed(fault: string): void
}

/** Calls a job off, whether it waits or runs; nothing is heard of it from then on. */
export type CallOff = () => void

interface Job<A, R> {
  readonly id: number
  readonly ask: A
  readonly rank: number
  readonly hear: Hearer<R>
  off: boolean
}

interface Place<A, R> {
  readonly hand: Hand
  job: Job<A, R> | null
}

/** A job called off may still end by itself for this long, ms; a new worker costs about as much. */
const GRACE = 120

/**
 * Workers that share out jobs among them: the lowest rank first, then the oldest. Answers to jobs that were called off are dropped, and
 * a worker that does not come back from one is ended and replaced, so that what is asked last is never kept waiting.
 */
export class WorkerPool<A, R> {
  private readonly places: Place<A, R>[] = []
  private readonly waiting: Job<A, R>[] = []
  private next = 1

  constructor(
    private readonly hire: () => Hand,
    private readonly most: number,
  ) {}

  /** Has some workers started before there is anything to do. */
  warm(count: number): void {
    while (this.places.length < Math.min(count, this.most)) this.open()
  }

  run(ask: A, rank: number, hear: Hearer<R>): CallOff {
    const job: Job<A, R> = { id: this.next++, ask, rank, hear, off: false }
    const before = this.waiting.findIndex(other => other.rank > rank)
    this.waiting.splice(before < 0 ? this.waiting.length : before, 0, job)
    this.share()
    return () => this.callOff(job)
  }

  private callOff(job: Job<A, R>): void {
    if (job.off) return
    job.off = true
    const at = this.waiting.indexOf(job)
    if (at >= 0) {
      this.waiting.splice(at, 1)
      return
    }
    if (this.places.some(place => place.job === job)) setTimeout(() => this.giveUpOn(job), GRACE)
  }

  private giveUpOn(job: Job<A, R>): void {
    const place = this.places.find(each => each.job === job)
    if (place === undefined) return
    this.drop(place)
    this.open()
    this.share()
  }

  private open(): Place<A, R> {
    const place: Place<A, R> = { hand: this.hire(), job: null }
    place.hand.onmessage = ({ data }) => this.hear(place, data as Reply<R>)
    place.hand.onerror = event => this.fail(place, event.message)
    this.places.push(place)
    return place
  }

  private drop(place: Place<A, R>): void {
    place.hand.onmessage = null
    place.hand.onerror = null
    place.hand.terminate()
    this.places.splice(this.places.indexOf(place), 1)
  }

  private share(): void {
    while (this.waiting.length > 0) {
      const free = this.places.find(place => place.job === null)
      if (free === undefined && this.places.length >= this.most) return
      const job = this.waiting.shift()!
      const place = free ?? this.open()
      place.job = job
      place.hand.postMessage({ id: job.id, ask: job.ask } satisfies Question<A>)
    }
  }

  private hear(place: Place<A, R>, reply: Reply<R>): void {
    const { job } = place
    if (job === null || job.id !== reply.id) return
    place.job = null
    if (!job.off) {
      if ('answer' in reply) job.hear.done(reply.answer)
      else job.hear.failed(reply.fault)
    }
    this.share()
  }

  /** A worker that breaks, or never started: its job is told, and another worker takes its place when there is work. */
  private fail(place: Place<A, R>, message: string | undefined): void {
    const { job } = place
    this.drop(place)
    if (job !== null && !job.off)
      job.hear.failed(message === undefined || message === '' ? 'its helper program did not start' : message)
    this.share()
  }
}
