import { together } from '../../../core/changes/shelf-parts.ts'
import { formatShelf } from '../../../core/plan/shelf-file.ts'
import { FileButton } from '../../fields/FileButton.tsx'
import type { KeptShelf } from '../../state/shelf.ts'
import { handOut } from '../sheets/hand-out.ts'
import { bringShelf } from './bring.ts'

interface Props {
  readonly kept: KeptShelf
  /** What came of an import, in a sentence. */
  readonly onTold: (sentence: string) => void
}

/** The shelf as a file for another machine or another person, and back. */
export function ShelfFiles({ kept, onTold }: Props) {
  const bring = async (file: File): Promise<void> => {
    const brought = await bringShelf(file)
    if (!brought.ok) {
      onTold(brought.why)
      return
    }
    const { stops, springs, tubes } = brought.shelf
    const [problem] = kept.change(`${file.name} imported`, together(kept.read().shelf, brought.shelf))
    onTold(
      problem === undefined
        ? `“${file.name}” is on the shelf: ${stops.length} stops, ${springs.length} springs, ${tubes.length} tubes; what was there before stays.`
        : `“${file.name}” could not be imported: together with what is there, ${problem.path} is ${problem.found}; it should be ${problem.wanted}.`,
    )
  }
  return (
    <>
      <button
        type="button"
        className="plain"
        onClick={() => handOut('Shelf.json', new Blob([formatShelf(kept.read().shelf)], { type: 'application/json' }))}
      >
        Export
      </button>
      <FileButton
        name="Import"
        className="plain"
        what="Shelf file"
        accept=".json,application/json"
        onFile={file => void bring(file)}
      />
    </>
  )
}
