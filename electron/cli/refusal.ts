/** A sentence that ends a command. */
export class Refusal extends Error {}

export const refuse = (sentence: string): never => {
  throw new Refusal(`${sentence}\n`)
}
