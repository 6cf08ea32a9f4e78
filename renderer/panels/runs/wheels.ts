import type { AxleId } from '../../../core/plan/schema.ts'
import type { ChannelChoice } from '../../../core/runs/channel.ts'
import type { Recording } from '../../state/recording.ts'

/** A channel, and its place in its run. */
export interface WheelOf {
  readonly at: number
  readonly channel: ChannelChoice
}

/** Channels of one axle, left before right. */
export const wheelsOf = ({ channels }: Recording, axle: AxleId): WheelOf[] =>
  channels
    .flatMap((channel, at) => (channel.axle === axle ? [{ at, channel }] : []))
    .sort((a, b) => order(a.channel.side) - order(b.channel.side))

const order = (side: ChannelChoice['side']): number => ['left', 'right', 'both'].indexOf(side)

/** The channel of another run that tells the same: its side where there is one, else any of its axle. */
export const sameWheel = (run: Recording, { axle, side }: ChannelChoice): WheelOf | null => {
  const wheels = wheelsOf(run, axle)
  return wheels.find(({ channel }) => channel.side === side) ?? wheels[0] ?? null
}

/** Its axle and side in words; a shaft that stands for both sides of an axle has no side. */
export const wheelWords = ({ axle, side }: Pick<ChannelChoice, 'axle' | 'side'>): string =>
  side === 'both' ? `${axle}, both sides` : `${axle} ${side}`

/** What a run's wheel is called beside others. */
export const wheelName = (run: Pick<Recording, 'name'>, { side }: Pick<ChannelChoice, 'side'>): string =>
  side === 'both' ? run.name : `${run.name}, ${side}`
