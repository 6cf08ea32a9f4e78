import { FileButton } from '../../fields/FileButton.tsx'

interface Props {
  readonly name: string
  readonly className: string
  readonly onFile: (file: File) => void
}

/** A button that takes a road. */
export const RoadFile = (props: Props) => (
  <FileButton
    {...props}
    what="Road file"
    accept=".csv,.tsv,.txt,text/csv,text/plain"
    title="A CSV file: distance and height, its first line such as “distance (m),height (m)”"
  />
)
