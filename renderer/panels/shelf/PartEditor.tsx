import type { Shelf } from '../../../core/changes/shelf.ts'
import { type KeptOf, type PartKind, withoutPart, withPart } from '../../../core/changes/shelf-parts.ts'
import type { LooseStop } from '../../../core/changes/stop-rules.ts'
import type { Problem } from '../../../core/plan/problem.ts'
import type { System } from '../../../core/units/quantity.ts'
import { type KeptShelf, shelfProblems } from '../../state/shelf.ts'
import { CurveFields } from './CurveFields.tsx'
import { Fields } from './Fields.tsx'
import { PartName } from './PartName.tsx'
import { HYDRAULIC_FIELDS, type LooseHydraulic, SPRING_FIELDS, TUBE_FIELDS } from './part-fields.ts'

interface Props {
  readonly kept: KeptShelf
  readonly kind: PartKind
  readonly id: string
  readonly system: System
  readonly onGone: () => void
}

/** A part is judged by itself: what else is on the shelf has no say. */
const NOTHING: Shelf = { stops: [], springs: [], tubes: [] }

/** Everything about one part of the user’s own; what cannot be is refused in its field, and the part stays as it was. */
export function PartEditor({ kept, kind, id, system, onGone }: Props) {
  const { shelf } = kept.read()
  const entry = shelf[kind].find(each => each.id === id)
  if (entry === undefined) return null
  const next = (part: unknown) => withPart(shelf, kind, { ...entry, part } as KeptOf<typeof kind>)
  const common = {
    system,
    wouldBe: (part: unknown): readonly Problem[] => shelfProblems({ ...NOTHING, [kind]: [{ ...entry, part }] }),
    onChange: (part: unknown, what: string) => void kept.change(`${entry.name}: ${what}`, next(part)),
  }
  return (
    <section className="part-editor" aria-label={entry.name === '' ? 'Part without a name' : entry.name}>
      <PartName
        key={id}
        name={entry.name}
        onChange={name => kept.change('name', withPart(shelf, kind, { ...entry, name } as KeptOf<typeof kind>))}
      />
      {kind === 'stops' ? <StopValues part={entry.part as LooseStop} {...common} /> : null}
      {kind === 'springs' ? (
        <Fields fields={SPRING_FIELDS} part={entry.part as KeptOf<'springs'>['part']} {...common} />
      ) : null}
      {kind === 'tubes' ? (
        <Fields fields={TUBE_FIELDS} part={entry.part as KeptOf<'tubes'>['part']} {...common} />
      ) : null}
      <button
        type="button"
        className="step"
        onClick={() => {
          kept.change(`${entry.name} taken off`, withoutPart(shelf, kind, id))
          onGone()
        }}
      >
        Take it off the shelf
      </button>
    </section>
  )
}

interface StopProps {
  readonly part: LooseStop
  readonly system: System
  readonly wouldBe: (part: unknown) => readonly Problem[]
  readonly onChange: (part: unknown, what: string) => void
}

function StopValues({ part, ...rest }: StopProps) {
  if (part.kind === 'elastomer') return <CurveFields part={part} {...rest} />
  const damped = part.compression !== undefined || part.rebound !== undefined
  const { compression: _, rebound: __, ...bare } = part
  return (
    <>
      <Fields<LooseHydraulic> fields={HYDRAULIC_FIELDS} part={part} {...rest} />
      {damped ? (
        <p>
          With the damping curves it came with.{' '}
          <button type="button" className="step" onClick={() => rest.onChange(bare, 'damping taken off')}>
            Take its damping off
          </button>
        </p>
      ) : null}
    </>
  )
}
