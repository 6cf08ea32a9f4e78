import { bumpLimits, droopLimits, nearest } from '../corner/limits.ts'
import { circleArea } from '../forces/gas.ts'
import { springPack } from '../forces/spring-pack.ts'
import { stopModel } from '../forces/stop.ts'
import { wheelCircle } from '../linkage/arm.ts'
import { linkageModel } from '../linkage/linkage.ts'
import { movementOf } from '../linkage/movement.ts'
import { cross, minus, size } from '../linkage/vector.ts'
import type { Bound } from './bound.ts'
import type { Corner, Curve, Linkage, Point, Shock, Springs, Stop } from './schema.ts'

export type Path = readonly PropertyKey[]
export type Report = (path: Path, found: string, wanted: string | Bound, unit?: '' | ' m' | ' kg' | ' m³') => void

/** Values as a problem names them: in the file's own units, short. */
export const short = (value: number): string => String(Number(value.toPrecision(6)))
const metres = (value: number): string => `${short(value)} m`

/** Points closer than this are one point, m. */
const APART = 1e-6

function rises(path: Path, column: string, values: readonly number[], strictly: boolean, report: Report): void {
  values.forEach((value, i) => {
    const before = values[i - 1]
    if (before !== undefined && (strictly ? value <= before : value < before))
      report([...path, i, column], String(value), {
        side: strictly ? 'above' : 'least',
        limit: before,
        of: 'the one before it',
      })
  })
}

function curve(path: Path, rows: Curve | undefined, report: Report): void {
  if (rows === undefined || rows.length === 0) return
  const first = rows[0]!
  if (first.velocity !== 0) report([...path, 0, 'velocity'], String(first.velocity), '0: a damper curve starts at rest')
  if (first.force !== 0) report([...path, 0, 'force'], String(first.force), '0: a damper at rest pushes nothing')
  rises(
    path,
    'velocity',
    rows.map(row => row.velocity),
    true,
    report,
  )
  rises(
    path,
    'force',
    rows.map(row => row.force),
    false,
    report,
  )
}

function apart(path: Path, a: Point, b: Point, what: string, report: Report): void {
  if (size(minus(a, b)) < APART) report(path, `the same point as ${what}`, `a point apart from ${what}`)
}

function mounts(
  path: Path,
  { shockLower, shockUpper, stopAxis }: { shockLower: Point; shockUpper: Point; stopAxis: Point },
  report: Report,
): void {
  apart([...path, 'shockUpper'], shockUpper, shockLower, 'shockLower', report)
  if (size(stopAxis) < APART)
    report([...path, 'stopAxis'], 'no direction', 'the direction the pad moves towards the stop')
}

function linkage(path: Path, given: Linkage, report: Report): void {
  if (given.kind === 'axle') mounts(path, given, report)
  if (given.kind === 'table') {
    const rows = [...path, 'rows']
    for (const column of ['wheel', 'shock', 'stop'] as const)
      rises(
        rows,
        column,
        given.rows.map(row => row[column]),
        true,
        report,
      )
    if (!given.rows.some(row => row.wheel === 0 && row.shock === 0 && row.stop === 0))
      report(rows, 'no row of zeros', 'one row with wheel, shock and stop at 0: ride height')
  }
  if (given.kind === 'arm') {
    const [first, second] = given.pivot
    apart([...path, 'pivot', 1], second, first, 'the other pivot', report)
    mounts(path, given, report)
    const axis = minus(second, first)
    if (size(axis) < APART) return
    const fromAxis = size(cross(minus(given.wheel, first), axis)) / size(axis)
    if (fromAxis < APART)
      report([...path, 'wheel'], 'a point on the pivot axis', 'a point away from the line through the pivots')
    else if (Math.abs(wheelCircle(given).lift) < 1e-3 * fromAxis)
      report(
        [...path, 'wheel'],
        'a wheel that cannot rise about these pivots',
        'a wheel point beside the pivot axis, not straight above or below it',
      )
  }
}

function shock(path: Path, given: Shock, report: Report): void {
  const { stroke, showing, shaftDiameter, gas } = given
  if (showing > stroke)
    report([...path, 'showing'], metres(showing), { side: 'most', limit: stroke, of: 'the stroke' }, ' m')
  const displaced = circleArea(shaftDiameter) * stroke
  if (gas !== null && gas.volume <= displaced)
    report(
      [...path, 'gas', 'volume'],
      `${short(gas.volume)} m³`,
      { side: 'above', limit: displaced, of: 'what the shaft pushes aside over its stroke' },
      ' m³',
    )
  curve([...path, 'compression'], given.compression, report)
  curve([...path, 'rebound'], given.rebound, report)
}

function springs(path: Path, given: Springs, report: Report): void {
  given.springs.forEach((spring, i) => {
    if (spring.solidLength >= spring.freeLength)
      report(
        [...path, 'springs', i, 'solidLength'],
        metres(spring.solidLength),
        { side: 'below', limit: spring.freeLength, of: 'the free length' },
        ' m',
      )
  })
  const travel = given.springs.reduce((sum, spring) => sum + spring.freeLength - spring.solidLength, 0)
  if (given.preload > travel)
    report(
      [...path, 'preload'],
      metres(given.preload),
      { side: 'most', limit: travel, of: 'what the springs can give' },
      ' m',
    )
}

function stop(path: Path, given: Stop, report: Report): void {
  if (given.kind === 'elastomer') {
    const rows = [...path, 'curve']
    const first = given.curve[0]!
    if (first.deflection !== 0)
      report([...rows, 0, 'deflection'], String(first.deflection), '0: the first row is the touch')
    rises(
      rows,
      'deflection',
      given.curve.map(row => row.deflection),
      true,
      report,
    )
    rises(
      rows,
      'force',
      given.curve.map(row => row.force),
      false,
      report,
    )
    const height = given.curve.at(-1)!.deflection
    if (given.gap < -height)
      report(
        [...path, 'gap'],
        metres(given.gap),
        { side: 'least', limit: -height, why: 'it cannot be pushed in further than its curve goes' },
        ' m',
      )
    return
  }
  const { stroke, gap, shaftDiameter, gasVolume, spacer, body } = given
  if (gap < -stroke)
    report(
      [...path, 'gap'],
      metres(gap),
      { side: 'least', limit: -stroke, why: 'it cannot be pushed in further than its stroke' },
      ' m',
    )
  const displaced = circleArea(shaftDiameter) * stroke
  if (gasVolume <= displaced)
    report(
      [...path, 'gasVolume'],
      `${short(gasVolume)} m³`,
      { side: 'above', limit: displaced, of: 'what the shaft pushes aside over its stroke' },
      ' m³',
    )
  if (body !== undefined && body.bore <= shaftDiameter)
    report(
      [...path, 'body', 'bore'],
      metres(body.bore),
      { side: 'above', limit: shaftDiameter, of: 'the shaft diameter' },
      ' m',
    )
  if (spacer !== undefined && spacer.wall * 2 >= spacer.outerDiameter)
    report(
      [...path, 'spacer', 'wall'],
      metres(spacer.wall),
      { side: 'below', limit: spacer.outerDiameter / 2, of: 'half the outer diameter' },
      ' m',
    )
  curve([...path, 'compression'], given.compression, report)
  curve([...path, 'rebound'], given.rebound, report)
}

/** Whether something ends the travel within reach both ways; asked only of a corner that is otherwise right. */
export function travelEnds(path: Path, given: Corner, report: Report): void {
  const movement = movementOf(linkageModel(given.linkage))
  const stops = given.stop === null ? null : stopModel(given.stop)
  if (nearest(bumpLimits(given, movement, springPack(given.springs), stops)) === null)
    report(
      [...path, 'linkage'],
      'nothing that ends bump within the travel of any car',
      'a shock, stop or clearance that does',
    )
  if (nearest(droopLimits(given, movement)) === null)
    report([...path, 'linkage'], 'nothing that ends droop within the travel of any car', 'a shock or strap that does')
}

/** What values of a corner say against each other. */
export function cornerSense(path: Path, given: Corner, report: Report): void {
  if (given.unsprungMass >= given.cornerMass)
    report(
      [...path, 'unsprungMass'],
      `${short(given.unsprungMass)} kg`,
      { side: 'below', limit: given.cornerMass, of: 'what the tire carries' },
      ' kg',
    )
  linkage([...path, 'linkage'], given.linkage, report)
  shock([...path, 'shock'], given.shock, report)
  springs([...path, 'springs'], given.springs, report)
  if (given.stop !== null) stop([...path, 'stop'], given.stop, report)
}
