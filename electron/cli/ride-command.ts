import { resolve } from 'node:path'
import type { Command } from 'commander'
import type { Plan } from '../../core/plan/schema.ts'
import { planCarRides, planRides } from '../../core/ride/plan-ride.ts'
import type { Course } from '../../core/ride/terrain.ts'
import { parseMeasure } from '../../core/units/parse.ts'
import { reason } from '../services/reason.ts'
import { writeAtomically } from '../services/write-atomically.ts'
import type { Printed } from './loads-command.ts'
import { rideJson } from './ride-json.ts'
import { rideText } from './ride-text.ts'
import { rideTrace } from './ride-trace.ts'
import { openRoad } from './road-file.ts'

interface Options {
  readonly terrain?: string
  readonly road?: string
  readonly speed?: string
  readonly json?: true
  readonly trace?: string
  readonly car?: true
}

type Chosen = { readonly course: Course } | { readonly problem: string }

/** Fastest a road is driven, m/s: as in a plan. */
const FASTEST = 200

function terrainOf(plan: Plan, id: string): Chosen {
  const terrain = plan.terrains.find(each => each.id === id)
  if (terrain !== undefined) return { course: terrain }
  const ids = plan.terrains.map(each => each.id)
  return {
    problem: `There is no terrain “${id}” in this plan. ${ids.length === 0 ? 'It has none.' : `It has ${ids.join(', ')}.`}\n`,
  }
}

async function roadOf(plan: Plan, file: string, typed: string | undefined, folder: string): Promise<Chosen> {
  if (typed === undefined) return { problem: 'How fast is the road driven? Give a --speed with it.\n' }
  const speed = parseMeasure(typed, 'speed', plan.units)
  if (!speed.ok) return { problem: `--speed ${typed}: ${speed.problem}\n` }
  if (speed.value <= 0 || speed.value > FASTEST)
    return { problem: `--speed ${typed}: it should be more than 0 and no more than ${FASTEST} m/s.\n` }
  const road = await openRoad(file, folder)
  if (!road.ok) return { problem: road.complaint }
  return { course: { kind: 'measured', id: file, profile: road.profile, speed: speed.value } }
}

/** What is to be driven: a terrain of the plan or a road from a file, one of them. */
async function chosen(plan: Plan, { terrain, road, speed }: Options, folder: string): Promise<Chosen> {
  if (terrain !== undefined && road !== undefined) return { problem: 'Give a --terrain or a --road, not both.\n' }
  if (terrain !== undefined) {
    if (speed !== undefined) return { problem: 'A terrain has its own speed: --speed goes with --road.\n' }
    return terrainOf(plan, terrain)
  }
  if (road !== undefined) return roadOf(plan, road, speed, folder)
  const ids = plan.terrains.map(each => each.id)
  const has = ids.length === 0 ? 'This plan has none' : `This plan has ${ids.join(', ')}`
  return { problem: `What is to be driven? Give a --terrain of the plan or a --road. ${has}.\n` }
}

/** Time between the moments of a trace file, s. */
const TRACED = 1e-3

async function driven(plan: Plan, options: Options, folder: string): Promise<Printed> {
  const what = await chosen(plan, options, folder)
  if ('problem' in what) return what
  const rides = options.car ? planCarRides : planRides
  const setups = rides(plan, what.course, options.trace === undefined ? {} : { sample: TRACED })
  const text = options.json
    ? `${JSON.stringify(rideJson(what.course, setups), null, 2)}\n`
    : rideText(plan, what.course, setups, options.car === true)
  if (options.trace !== undefined)
    try {
      await writeAtomically(resolve(folder, options.trace), rideTrace(setups))
    } catch (error) {
      return { problem: `${options.trace} could not be written: ${reason(error)}.\n` }
    }
  return { text }
}

/**
 * Adds `ride PLAN` to the command line.
 * @param print opens the plan and prints what the function makes of it
 * @param folder where file names are taken from
 */
export function addRideCommand(
  stopgap: Command,
  print: (file: string, make: (plan: Plan) => Promise<Printed>) => Promise<void>,
  folder: string,
): void {
  stopgap
    .command('ride')
    .description(
      'Drive every setup and axle over a terrain of the plan, or over a measured road, and show what happens.',
    )
    .argument('<plan>', 'A plan file.')
    .option('--terrain <id>', 'A terrain of the plan, by its id.')
    .option('--road <file>', 'A measured road instead: CSV, distance and height.')
    .option('--speed <speed>', 'How fast the road is driven, such as 40 mph.')
    .option('--car', 'Both axles under one body that heaves and pitches, not each by itself.')
    .option('--json', 'For programs: SI units, every digit.')
    .option('--trace <file>', 'Write every moment to this CSV file as well.')
    .action((file: string, options: Options) => print(file, plan => driven(plan, options, folder)))
}
