import { z } from 'zod'
import { LOST } from './lenient-json.ts'

export type Path = readonly (string | number)[]

/** What of a damaged value could not be taken over. */
export interface Loss {
  /** Where it would stand in what was made of it. */
  readonly path: Path
  /** Another value stands in its place; else nothing does. */
  readonly usual: boolean
}

export interface Shaped {
  readonly value: unknown
  readonly losses: readonly Loss[]
  /** Numbers taken over as they were, of those that are counted. */
  readonly numbers: number
}

/** More entries than any list of a plan has. */
const LONGEST_LIST = 1000

type Group = Record<string, unknown>
const isGroup = (value: unknown): value is Group => typeof value === 'object' && value !== null && !Array.isArray(value)

function numbersIn(value: unknown): number {
  if (typeof value === 'number') return 1
  if (typeof value !== 'object' || value === null) return 0
  return Object.values(value).reduce((sum: number, inner) => sum + numbersIn(inner), 0)
}

/**
 * A value made to fit a schema, piece by piece: what fits is taken over, what does not is the usual value in its place. Where there is no usual one the
 * whole around it is lost, up to something that can be left out: an entry of a list, or what need not be there.
 * @param usual of the same shape as the value, as far as there is one
 * @param counted the part in which numbers are counted
 */
export function shape(schema: z.ZodType, found: unknown, usual: unknown, counted: string): Shaped {
  const losses: Loss[] = []
  let numbers = 0

  function instead(usualHere: unknown, path: Path): unknown {
    if (usualHere === undefined) return LOST
    const isEmpty = usualHere === '' || (Array.isArray(usualHere) && usualHere.length === 0)
    losses.push({ path, usual: !isEmpty })
    return usualHere
  }

  /** As it is, or taken apart; LOST, and nothing told of it, where neither goes. */
  function piece(schemaHere: z.ZodType, value: unknown, usualHere: unknown, path: Path): unknown {
    const whole = schemaHere.safeParse(value)
    if (whole.success) {
      if (path.length === 0) numbers += numbersIn((whole.data as Group)[counted])
      else if (path[0] === counted) numbers += numbersIn(whole.data)
      return whole.data
    }
    if (schemaHere instanceof z.ZodOptional || schemaHere instanceof z.ZodNullable) {
      if (value === undefined && usualHere !== undefined && usualHere !== null) return instead(usualHere, path)
      const inner = value === undefined ? LOST : piece(schemaHere.unwrap() as z.ZodType, value, usualHere, path)
      if (inner !== LOST) return inner
      losses.push({ path, usual: false })
      return schemaHere instanceof z.ZodOptional ? undefined : null
    }
    if (schemaHere instanceof z.ZodDiscriminatedUnion) return ofKind(schemaHere, value, usualHere, path)
    if (schemaHere instanceof z.ZodObject) return group(schemaHere, value, usualHere, path)
    if (schemaHere instanceof z.ZodArray) return list(schemaHere, value, usualHere, path)
    return instead(usualHere, path)
  }

  /** Keeps what was told of the inside only when the inside is taken. */
  function attempt(work: () => unknown, usualHere: unknown, path: Path): unknown {
    const [told, counted] = [losses.length, numbers]
    const made = work()
    if (made !== LOST) return made
    losses.length = told
    numbers = counted
    return instead(usualHere, path)
  }

  function ofKind(union: z.ZodDiscriminatedUnion, value: unknown, usualHere: unknown, path: Path): unknown {
    const key = union.def.discriminator
    const kind = isGroup(value) ? value[key] : undefined
    const option = (union.options as z.ZodObject[]).find(each => each.shape[key]?.safeParse(kind).success)
    if (option === undefined) {
      const guessed = isGroup(value) ? guessKind(union, value) : undefined
      if (guessed === undefined) return instead(isWhole(union, usualHere) ? usualHere : undefined, path)
      losses.push({ path: [...path, key], usual: true })
      return guessed
    }
    const like = isGroup(usualHere) && (usualHere[key] === kind || usualHere[key] === undefined) ? usualHere : undefined
    return attempt(() => group(option, value, like, path), isWhole(union, usualHere) ? usualHere : undefined, path)
  }

  function group(object: z.ZodObject, value: unknown, usualHere: unknown, path: Path): unknown {
    if (!isGroup(value)) return instead(isWhole(object, usualHere) ? usualHere : undefined, path)
    return attempt(
      () => {
        const made: Group = {}
        for (const [key, inner] of Object.entries(object.shape)) {
          const known = isGroup(usualHere) ? usualHere[key] : undefined
          const taken = piece(inner as z.ZodType, value[key], known, [...path, key])
          if (taken === LOST) return LOST
          if (taken !== undefined) made[key] = taken
        }
        for (const key of Object.keys(value))
          if (!Object.hasOwn(object.shape, key)) losses.push({ path: [...path, key], usual: false })
        return object.safeParse(made).success ? made : LOST
      },
      isWhole(object, usualHere) ? usualHere : undefined,
      path,
    )
  }

  function list(array: z.ZodArray, value: unknown, usualHere: unknown, path: Path): unknown {
    if (!Array.isArray(value)) return instead(usualHere, path)
    const like = Array.isArray(usualHere) ? usualHere : []
    return attempt(
      () => {
        const made: unknown[] = []
        if (value.length > LONGEST_LIST) losses.push({ path, usual: false })
        for (const each of value.slice(0, LONGEST_LIST)) {
          // Nothing at all in an entry makes no entry.
          const known = isGroup(each) ? (like[made.length] ?? like.at(-1)) : undefined
          const at = [...path, made.length]
          const taken = piece(array.element as z.ZodType, each, known, at)
          if (taken === LOST) losses.push({ path: at, usual: false })
          else made.push(taken)
        }
        return array.safeParse(made).success ? made : LOST
      },
      usualHere,
      path,
    )
  }

  const value = piece(schema, found, usual, [])
  return { value, losses, numbers }
}

/** The value under the one kind it fits entirely, where only its kind was lost. */
function guessKind(union: z.ZodDiscriminatedUnion, value: Group): unknown {
  const key = union.def.discriminator
  for (const option of union.options as z.ZodObject[]) {
    const kind = option.shape[key]
    if (!(kind instanceof z.ZodLiteral)) continue
    const read = option.safeParse({ ...value, [key]: kind.value })
    if (read.success) return read.data
  }
  return undefined
}

const isWhole = (schema: z.ZodType, value: unknown): boolean => schema.safeParse(value).success
