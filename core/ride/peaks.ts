import type { CornerInMotion } from './corner-in-motion.ts'
import type { ContactFigure } from './results.ts'

/** At full droop steel that pushes more than so many times the springs is hit, not leant on. */
const HELD = 2

/** Whether steel has a say in what is felt; that it merely holds a wheel up against its springs at full droop hangs on no stiffness. */
const isSteel = ({ end, springs, modes }: CornerInMotion): boolean =>
  end !== 0 && (modes.end === 'bump' || -end > HELD * Math.abs(springs))

/** Keeps the most of each figure, and whether steel was pushing when it came. */
export class Peaks {
  private wheelMax = -Infinity
  private wheelMin = Infinity
  private suspension = -Infinity
  private stop = 0
  private acceleration = 0
  private readonly steel = {
    wheelMax: false,
    wheelMin: false,
    suspensionForceMax: false,
    stopForceMax: false,
    chassisAccelMax: false,
    chassisAccelRms: false,
  }

  take(corner: CornerInMotion): void {
    const { steel } = this
    const { wheel, suspension, stopForce } = corner
    const onSteel = isSteel(corner)
    const acceleration = Math.abs(corner.chassisAcceleration)
    if (onSteel) steel.chassisAccelRms = true
    if (wheel > this.wheelMax) {
      this.wheelMax = wheel
      steel.wheelMax = onSteel
    }
    if (wheel < this.wheelMin) {
      this.wheelMin = wheel
      steel.wheelMin = onSteel
    }
    if (suspension > this.suspension) {
      this.suspension = suspension
      steel.suspensionForceMax = onSteel
    }
    if (stopForce > this.stop) {
      this.stop = stopForce
      steel.stopForceMax = onSteel
    }
    if (acceleration > this.acceleration) {
      this.acceleration = acceleration
      steel.chassisAccelMax = onSteel
    }
  }

  most() {
    return {
      wheelMax: this.wheelMax,
      wheelMin: this.wheelMin,
      suspensionForceMax: this.suspension,
      stopForceMax: this.stop,
      chassisAccelMax: this.acceleration,
    }
  }

  onSteel(): ContactFigure[] {
    return (Object.keys(this.steel) as ContactFigure[]).filter(name => this.steel[name])
  }
}
