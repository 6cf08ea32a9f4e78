/** A request that is not carried out, and the sentence that says so. */
export class Refusal extends Error {
  readonly status: number
  readonly headers: Readonly<Record<string, string>>

  constructor(status: number, sentence: string, headers: Readonly<Record<string, string>> = {}) {
    super(sentence)
    this.status = status
    this.headers = headers
  }
}
