import type { Plan } from '../../core/plan/schema.ts'
import { customerFacts } from './customer-facts.ts'
import type { Side } from './figures.ts'
import { Foot, fitting, Lines, Mark } from './Lines.tsx'
import { SheetDrawing } from './SheetDrawing.tsx'

/** What the customer takes home, on one page. */
export function CustomerSheet({ plan, before, after, date }: SheetProps) {
  const facts = customerFacts(plan, before, after)
  const span = Math.max(...[before, after].map(({ budget }) => budget.travel.total))
  const sides = [
    { name: 'Before', side: before, id: 'sheet-before' },
    { name: 'After', side: after, id: 'sheet-after' },
  ]
  return (
    <>
      <header>
        <h1>{facts.title}</h1>
        <p>
          <span>For the owner</span>
          <span>{date ?? 'Date:'}</span>
        </p>
      </header>
      <p className="lead">{facts.lead}</p>
      <div className="pair">
        {sides.map(({ name, side, id }) => (
          <div key={id}>
            <h2>
              {name} <span>{side.setup.name}</span>
            </h2>
            <SheetDrawing side={side} plan={plan} id={id} span={span} />
          </div>
        ))}
      </div>
      <table className="numbers">
        <thead>
          <tr>
            <th>Three numbers to compare</th>
            <th>Before</th>
            <th>After</th>
          </tr>
        </thead>
        <tbody>
          {facts.numbers.map(({ what, before: was, after: is }) => (
            <tr key={what}>
              <td>
                <span>{what}</span>
              </td>
              <td>{was}</td>
              <td>{is}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="two">
        <Lines head="What we do" lines={fitting(facts.done, 4, 'the shop sheet')} />
        <Lines head="What you will feel" lines={fitting(facts.feel, 4, 'the plan')} />
      </div>
      <div className="two">
        <Lines head="What it does not fix" lines={fitting(facts.notFixed, 3, 'the plan')} />
        <Lines head="After the first drive" lines={facts.check} />
      </div>
      <div className="care">
        <h2>Please read</h2>
        <ul>
          {facts.cautions.map(({ severity, text }) => (
            <li key={text}>
              <Mark severity={severity} />
              <span>{text}</span>
            </li>
          ))}
        </ul>
      </div>
      <Foot
        names={['Measured by', 'Checked by', 'Customer']}
        left="Customer sheet"
        right={plan.units === 'inch' ? 'Lengths to the nearest 1/16 in' : 'Lengths to the nearest millimetre'}
      />
    </>
  )
}

export interface SheetProps {
  readonly plan: Plan
  readonly before: Side
  readonly after: Side
  readonly date: string | null
}
