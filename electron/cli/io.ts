/** What a command may touch. */
export interface Io {
  /** What was asked for. */
  out(text: string): void
  /** What is wrong. */
  err(text: string): void
  /** How far long work has come, in one line that replaces the one before; empty when it is done. Left out where nobody watches. */
  progress?(line: string): void
  /** The folder the person stands in: file names are taken from here. */
  readonly folder: string
}
