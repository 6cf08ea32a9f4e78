import { INCH } from '../../units/constants.ts'
import type { Finding } from '../results.ts'
import type { Facts, Rule } from './rule.ts'

/** Shaft to keep showing at full bump, m: common practice, so that mounts and bushings may give without the shock closing. */
const SHOCK_MARGIN = INCH / 2

/** Spring travel to keep before bind at full bump, m: common practice. */
const COIL_MARGIN = INCH / 4

/** A motion ratio that falls by more than this share from ride height to full bump is worth saying. */
const RATIO_FALL = 0.02

/** What is left, as text, where that is less than a margin it may read the same as. */
function under({ say, some }: Pick<Facts, 'say' | 'some'>, left: number, margin: number): string {
  const text = some(left, 'length')
  if (text === say(margin, 'length')) return `just under ${text}`
  return text === say(left, 'length') ? `only ${text}` : text
}

export const shockCloses: Rule = ({ model, figures, say, some }): Finding | null => {
  const left = figures.shockLeftAtBump
  if (figures.travel.bumpLimitedBy === 'shock closed') {
    const stop = model.corner.stop
    const open = model.parts(model.bump).stopLeft
    const before =
      stop === null
        ? ''
        : figures.engagement === null
          ? ' before the stop is met'
          : ` with ${some(open!, 'length')} of the stop still open`
    return {
      id: 'shock-closes-first',
      severity: 'danger',
      message: `The shock closes first${before}: it takes the hit metal to metal.`,
      remedy: `${stop === null ? 'A stop that ends the travel first' : 'A smaller gap, a pad shim'}, or a mount that shows ${say(SHOCK_MARGIN, 'length')} more shaft.`,
      values: { bump: model.bump, ...(open === null ? {} : { stopLeft: open }) },
      field: 'corner.shock.showing',
      at: model.bump,
      where: 'shock',
    }
  }
  if (left >= SHOCK_MARGIN) return null
  return {
    id: 'shock-nearly-closes',
    severity: 'caution',
    message: `At full bump ${under({ say, some }, left, SHOCK_MARGIN)} of shaft is left; keep ${say(SHOCK_MARGIN, 'length')}.`,
    remedy: `End the travel ${some(SHOCK_MARGIN - left, 'length')} of shaft sooner: gap or pad shim.`,
    values: { shockLeft: left, margin: SHOCK_MARGIN },
    field: 'corner.shock.showing',
    at: model.bump,
    where: 'shock',
  }
}

export const coilBinds: Rule = ({ model, figures, say, some }): Finding | null => {
  const left = figures.mainSpring.leftAtBump
  if (figures.travel.bumpLimitedBy === 'coil bind')
    return {
      id: 'coil-binds-first',
      severity: 'danger',
      message: `The springs bind first, at ${say(model.bump, 'length', { sign: true })}.`,
      remedy: 'A longer main spring, less preload, or a stop that closes sooner.',
      values: { bump: model.bump },
      field: 'corner.springs',
      at: model.bump,
      where: 'main',
    }
  if (left >= COIL_MARGIN) return null
  return {
    id: 'coil-nearly-binds',
    severity: 'caution',
    message:
      left <= 0
        ? `The main spring binds before full bump: from there only the springs above it give; keep ${say(COIL_MARGIN, 'length')} at full bump.`
        : `The main spring has ${under({ say, some }, left, COIL_MARGIN)} left to coil bind at full bump; keep ${say(COIL_MARGIN, 'length')}.`,
    remedy: 'A longer main spring or less preload.',
    values: { mainLeft: left, margin: COIL_MARGIN },
    field: 'corner.springs',
    at: model.bump,
    where: 'main',
  }
}

export const looseAtDroop: Rule = ({ model, some }): Finding | null => {
  const slack = -(model.corner.springs.preload + model.parts(model.droop).shockCompression)
  if (slack <= 0) return null
  return {
    id: 'springs-loose-at-droop',
    severity: 'caution',
    message: `At full droop the springs hang loose by ${some(slack, 'length')}: they can leave their seats.`,
    remedy: `A helper spring, a shorter limit strap, or ${some(slack, 'length')} more preload.`,
    values: { slack },
    field: 'corner.springs.preload',
    at: model.droop,
    where: 'main',
  }
}

export const ratioFalls: Rule = ({ model, figures, say }): Finding | null => {
  const [ride, bump] = [figures.ride.motionRatio, model.linkage.at(model.bump).shockRatio]
  if (ride <= 0 || bump >= ride * (1 - RATIO_FALL)) return null
  const rate = model.wheelRate(model.bump, 'slow', 'below')
  return {
    id: 'motion-ratio-falls',
    severity: 'note',
    message: `The motion ratio falls toward bump, from ${say(ride, 'ratio', { digits: 2 })} to ${say(bump, 'ratio', { digits: 2 })}: softer where it should be firmer.`,
    remedy: 'Lean the shock less, or move its lower mount outboard.',
    values: { atRide: ride, atBump: bump, wheelRateAtBump: rate },
    field: 'corner.linkage',
    at: model.bump,
    where: 'drawing',
  }
}

export const assumedShockVolume: Rule = ({ axle, model, say }): Finding | null => {
  const { gas } = model.corner.shock
  if (gas === null || !axle.assumed?.includes('corner.shock.gas.volume')) return null
  return {
    id: 'shock-gas-volume-assumed',
    severity: 'note',
    message: `The shock’s gas volume, ${say(gas.volume, 'volume')}, is assumed, not measured.`,
    remedy: 'Take it from the body and reservoir, or measure it.',
    values: { gasVolume: gas.volume },
    field: 'corner.shock.gas.volume',
    at: model.bump,
    where: 'shock',
  }
}
