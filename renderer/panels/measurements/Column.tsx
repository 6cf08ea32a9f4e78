import { useNarrow } from '../../narrow.ts'
import { Group } from './Group.tsx'
import { groups } from './groups.ts'
import { HowToMeasure } from './HowToMeasure.tsx'

/** Every field, and how the one in use is measured. */
export function Column() {
  const narrow = useNarrow()
  return (
    <>
      <div className="groups">
        {groups.map(group => (
          <Group key={group.id} group={group} narrow={narrow} />
        ))}
      </div>
      <HowToMeasure />
    </>
  )
}
