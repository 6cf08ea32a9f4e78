import { FileButton } from '../../fields/FileButton.tsx'
import { RECORDING_TYPES } from '../../state/brought-recording.ts'

interface Props {
  readonly name: string
  readonly className: string
  readonly onFile: (file: File) => void
}

/** A button that takes a recording. */
export const RecordingFile = (props: Props) => <FileButton {...props} what="Recording" accept={RECORDING_TYPES} />
