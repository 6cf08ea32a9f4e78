import { type FormEvent, useState } from 'react'
import { unitOf } from '../../../core/units/quantity.ts'
import { ErrorMark } from '../../fields/ErrorMark.tsx'
import { unreadable } from '../../fields/refusals.ts'
import { Switch, type SwitchOption } from '../../fields/Switch.tsx'
import { startPlan } from '../../state/opening.ts'
import { openDialog } from '../../state/view.ts'
import { useFiles } from '../../window-context.ts'
import { Dialog } from './Dialog.tsx'
import { asked, type Entry, type Errors, OPTIONAL, quantityOf, type StartForm, startFrom } from './start-answers.ts'

const asks: Readonly<Record<Entry, readonly [string, string]>> = {
  stroke: ['Shock stroke', 'Fully out to fully closed.'],
  showing: ['Shaft showing', 'On the ground, the bright shaft you can see.'],
  stopStroke: ['Stop stroke', 'The shaft that can go in.'],
  gap: ['Gap', 'On the ground, pad to foot. Pushed in: with a minus.'],
  rise: ['Wheel raised by', 'Jack it up an inch or two from ride height.'],
  shockClosed: ['Shock closed by', 'How much less of the shaft shows then.'],
  gapClosed: ['Gap closed by', 'How much less gap is left then.'],
  ratioShock: ['Motion ratio, shock', 'Shock travel over wheel travel.'],
  ratioStop: ['Motion ratio, stop', 'Stop travel over wheel travel.'],
  tender: ['Tender rate', 'The spring at the chassis end.'],
  main: ['Spring rate', 'Of the main spring; printed on it.'],
  cornerMass: ['Corner weight', 'One scale under this tire.'],
}

/** What is said otherwise to those who measure in millimetres. */
const metricHow: Readonly<Partial<Record<Entry, string>>> = { rise: 'Jack it up 30 to 50 mm from ride height.' }

const AXLES = [
  { value: 'front', label: 'Front' },
  { value: 'rear', label: 'Rear' },
] as const
const SUSPENSIONS = [
  { value: 'independent', label: 'Independent' },
  { value: 'solid', label: 'Solid axle' },
] as const
const STOPS = [
  { value: 'yes', label: 'Bump stop' },
  { value: 'no', label: 'None' },
] as const
const SPRINGS = [
  { value: 'one', label: 'One spring' },
  { value: 'two', label: 'Tender and main' },
] as const
const RATIOS = [
  { value: 'jack', label: 'Measure by jacking' },
  { value: 'known', label: 'Known' },
] as const
const UNITS = [
  { value: 'inch', label: 'Inch' },
  { value: 'metric', label: 'Metric' },
] as const

const empty = Object.fromEntries(Object.keys(quantityOf).map(entry => [entry, ''])) as Record<Entry, string>

/** Five or six measurements, and there is a plan; all else is assumed and marked so. */
export function StartDialog() {
  const files = useFiles()
  const [form, setForm] = useState<StartForm>(() => ({
    title: '',
    units: files.store.read().plan.units,
    axle: 'rear',
    suspension: 'independent',
    stop: 'yes',
    springs: 'two',
    ratios: 'jack',
    texts: empty,
  }))
  const [errors, setErrors] = useState<Errors>({})
  const close = () => openDialog(files.store, null)
  const set = (change: Partial<StartForm>) => setForm({ ...form, ...change })

  const submit = (event: FormEvent) => {
    event.preventDefault()
    const started = startFrom(form)
    if (started.ok) return void startPlan(files, started.plan)
    setErrors(started.errors)
    const first = asked(form).find(entry => started.errors[entry] !== undefined)
    document.getElementById(`start-${first}`)?.focus()
  }

  const choice = <T extends string>(
    name: string,
    options: readonly SwitchOption<T>[],
    value: T,
    on: (to: T) => void,
  ) => (
    <div className="choice">
      <span>{name}</span>
      <Switch label={name} options={options} value={value} onChange={on} />
    </div>
  )

  return (
    <Dialog title="New plan" className="start" onClose={close}>
      <form onSubmit={submit} noValidate>
        <p>
          A handful of measurements is enough to begin. Springs and weight may stay empty: they and everything else are
          assumed, marked, and can be measured later.
        </p>
        <div className="choices">
          <div className="choice">
            <label htmlFor="start-title">Title</label>
            <input
              id="start-title"
              className="words"
              maxLength={200}
              value={form.title}
              onChange={event => set({ title: event.currentTarget.value })}
            />
          </div>
          {choice('Units', UNITS, form.units, units => set({ units }))}
          {choice('Axle', AXLES, form.axle, axle => set({ axle }))}
          {choice('Suspension', SUSPENSIONS, form.suspension, suspension => set({ suspension }))}
          {choice('Stop', STOPS, form.stop, stop => set({ stop }))}
          {choice('Springs', SPRINGS, form.springs, springs => set({ springs }))}
          {choice('Motion ratios', RATIOS, form.ratios, ratios => set({ ratios }))}
        </div>
        <div className="asks">
          {asked(form).map(entry => (
            <Ask
              key={entry}
              entry={entry}
              form={form}
              error={errors[entry]}
              onText={text => {
                set({ texts: { ...form.texts, [entry]: text } })
                if (errors[entry] !== undefined) setErrors({ ...errors, [entry]: undefined })
              }}
            />
          ))}
        </div>
        <footer>
          <button type="button" className="plain" onClick={close}>
            Cancel
          </button>
          <button type="submit" className="chief">
            Start the plan
          </button>
        </footer>
      </form>
    </Dialog>
  )
}

interface AskProps {
  readonly entry: Entry
  readonly form: StartForm
  readonly error: string | undefined
  readonly onText: (text: string) => void
}

function Ask({ entry, form, error, onText }: AskProps) {
  const id = `start-${entry}`
  const [label, usual] = asks[entry]
  const how = (form.units === 'metric' ? metricHow[entry] : undefined) ?? usual
  const text = form.texts[entry]
  return (
    <div className="ask">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={error === undefined ? 'f' : 'f bad'}
        autoComplete="off"
        spellCheck={false}
        value={text}
        aria-invalid={error !== undefined || undefined}
        placeholder={OPTIONAL.has(entry) ? 'assumed' : undefined}
        aria-describedby={`${id}-how`}
        onChange={event => onText(event.currentTarget.value)}
      />
      <span className="u">{unitOf(quantityOf[entry], form.units).label}</span>
      <span id={`${id}-how`} className={error === undefined ? 'hint' : 'hint wrong'}>
        {error === undefined ? how : <AskError {...(text.trim() === '' ? missing(how) : unreadable(text, error))} />}
      </span>
    </div>
  )
}

/** Where nothing is entered, how to measure it is what is right. */
const missing = (how: string) => ({ wrong: 'Needed.', right: how })

const AskError = ({ wrong, right }: { readonly wrong: string; readonly right: string }) => (
  <>
    <ErrorMark />
    <span>
      <b>{wrong}</b> {right}
    </span>
  </>
)
