/** Endings of tables as text, for choosers and for what is dropped. */
export const recordingEndings = ['csv', 'tsv', 'txt', 'asc', 'dat', 'log'] as const

/** Bytes of a recording that go over in one piece. */
export const recordingPiece = 4 * 1024 * 1024

/** Largest file of a kept run, bytes: as base64 it goes through every host. */
export const longestRun = 48 * 1024 * 1024
