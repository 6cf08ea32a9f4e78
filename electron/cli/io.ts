/** What a command may touch. */
export interface Io {
  /** What was asked for. */
  out(text: string): void
  /** What is wrong. */
  err(text: string): void
  /** The folder the person stands in: file names are taken from here. */
  readonly folder: string
}
