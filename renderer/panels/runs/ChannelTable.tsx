import type { AxleId } from '../../../core/plan/schema.ts'
import type { ChannelChoice } from '../../../core/runs/channel.ts'
import { measuredBy } from '../../../core/runs/choose.ts'
import { lengthUnit, unitSymbol } from '../../../core/runs/column-units.ts'
import type { Column } from '../../../core/runs/reading.ts'
import type { System } from '../../../core/units/quantity.ts'
import { ChannelMeaning } from './ChannelMeaning.tsx'
import { wheelWords } from './wheels.ts'

const SIDES = ['left', 'right', 'both'] as const

interface Props {
  readonly columns: readonly Column[]
  /** The column of the time, which is no travel; null where none is. */
  readonly timeColumn: number | null
  readonly channels: readonly ChannelChoice[]
  /** Of the plan. */
  readonly axles: readonly AxleId[]
  readonly system: System
  readonly onChange: (channels: readonly ChannelChoice[]) => void
}

const NONE = ''

/** Which column is which wheel's travel, of what, and what its readings mean. */
export function ChannelTable({ columns, timeColumn, channels, axles, system, onChange }: Props) {
  const wheels = axles.flatMap(axle => SIDES.map(side => ({ axle, side })))
  const channelOf = (column: number): ChannelChoice | undefined => channels.find(each => each.column === column)
  const put = (column: number, next: ChannelChoice | null): void =>
    onChange(
      next === null
        ? channels.filter(each => each.column !== column)
        : channelOf(column) === undefined
          ? [...channels, next]
          : channels.map(each => (each.column === column ? next : each)),
    )
  const choose = (column: number, wheel: string): void => {
    const before = channelOf(column)
    const found = wheels.find(each => wheelWords(each) === wheel)
    if (found === undefined) {
      put(column, null)
      return
    }
    const { name, unit } = columns[column]!
    put(column, {
      ...(before ?? {
        column,
        measures: measuredBy({ name, unit }),
        calibration: { scale: lengthUnit(unit) ?? 0, offset: 0 },
        rideHeightAt: channels[0]?.rideHeightAt ?? null,
        fullDroopAt: channels[0]?.fullDroopAt ?? null,
        lowPass: channels[0]?.lowPass ?? null,
      }),
      ...found,
    })
  }
  return (
    <table className="channels">
      <thead>
        <tr>
          <th scope="col">Column</th>
          <th scope="col">is</th>
          <th scope="col">travel of</th>
          <th scope="col">a reading means</th>
        </tr>
      </thead>
      <tbody>
        {columns.map((column, place) => {
          if (place === timeColumn) return null
          const channel = channelOf(place)
          const called = column.name
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two columns may have one name
            <tr key={place}>
              <th scope="row">
                {called}
                {column.unit === null ? null : <span> {unitSymbol(column.unit)}</span>}
              </th>
              <td>
                <select
                  aria-label={`What ${called} is`}
                  value={channel === undefined ? NONE : wheelWords(channel)}
                  onChange={event => choose(place, event.currentTarget.value)}
                >
                  <option value={NONE}>not taken</option>
                  {wheels.map(wheel => (
                    <option key={wheelWords(wheel)} value={wheelWords(wheel)}>
                      {wheelWords(wheel)}
                    </option>
                  ))}
                </select>
              </td>
              <td>
                {channel === undefined ? null : (
                  <select
                    aria-label={`What ${called} is the travel of`}
                    value={channel.measures}
                    onChange={event =>
                      put(place, { ...channel, measures: event.currentTarget.value as ChannelChoice['measures'] })
                    }
                  >
                    <option value="shaft">shock shaft</option>
                    <option value="wheel">wheel</option>
                  </select>
                )}
              </td>
              <td>
                {channel === undefined ? null : (
                  <ChannelMeaning
                    channel={channel}
                    name={called}
                    system={system}
                    onChange={calibration => put(place, { ...channel, calibration })}
                  />
                )}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
