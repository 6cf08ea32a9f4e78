import { formatMeasure } from '../../../core/units/format.ts'
import { onTape, spokenPosition } from '../text/length-spans.ts'
import { shownShare } from './shown-share.ts'
import type { RiddenSetup, TerrainScene } from './terrain-scene.ts'
import type { TravelScene } from './travel-scene.ts'

/** What each chart says, in sentences, for someone who hears the page instead of seeing it. */

const ridden = ({ view: { shown, other } }: TerrainScene): RiddenSetup[] =>
  [shown, ...(other === null ? [] : [other])].filter(({ ride }) => ride !== null)

export function traceSentence(scene: TerrainScene, subject: string): string {
  const { system } = scene.view
  const setups = ridden(scene).map(({ name, ride }) => {
    const { wheelMin, wheelMax, share, hits, bottoms } = ride!
    const bottom = bottoms === 0 ? 'never bottoms' : bottoms === 1 ? 'bottoms once' : `bottoms ${bottoms} times`
    return `${name}: from ${spokenPosition(onTape(wheelMin, system), system)} to ${spokenPosition(onTape(wheelMax, system), system)}, ${shownShare(share.onStop)} of the time on the stop, ${hits} ${hits === 1 ? 'hit' : 'hits'}, ${bottom}.`
  })
  return [`Wheel position over ${scene.duration.toFixed(1)} seconds of ${subject}.`, ...setups].join(' ')
}

export function histogramSentence({ view: { shown, other } }: TravelScene): string {
  const setups = [shown, ...(other === null ? [] : [other])]
    .filter(({ ride }) => ride !== null)
    .map(
      ({ name, ride }) =>
        `${name}: ${shownShare(ride!.share.droop)} below ride height, ${shownShare(ride!.share.coilover)} between it and engagement, ${shownShare(ride!.share.engagement)} above engagement.`,
    )
  return ['Time spent at each wheel position.', ...setups].join(' ')
}

export function forcesSentence(scene: TerrainScene): string {
  const { system } = scene.view
  const unit = system === 'inch' ? 'pounds' : 'newtons'
  const setups = ridden(scene).map(({ name, ride }) => {
    const { suspensionForceMax, stopForceMax, contactDependent } = ride!
    const about = contactDependent.includes('suspensionForceMax') ? 'about ' : ''
    return `${name}: at most ${about}${formatMeasure(suspensionForceMax, 'force', system)} ${unit} at the wheel, and ${formatMeasure(stopForceMax, 'force', system)} along the stop.`
  })
  return ['Force of the suspension and of the stop over the same time.', ...setups].join(' ')
}
