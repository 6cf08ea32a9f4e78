import { type Host, HostRefused } from '../host.ts'

/** Told of a failure that is the program's own: its message is for those who mend it, and is in the log. */
export const OWN_FAULT = 'Something in Stopgap failed that should not have. The plan on screen is as it was.'

/** What a person is told of an error: what the host refuses is a sentence for them. */
export const told = (error: unknown): string => (error instanceof HostRefused ? error.message : OWN_FAULT)

/** Tells the log of something that ought not to happen here. A host that has gone cannot be told. */
export function logFault({ host }: { readonly host: Host }, about: string, error: unknown): void {
  const message = error instanceof Error ? `${error.name}: ${error.message}` : String(error)
  host.call('fault', { about, message: message.slice(0, 4000) }).catch(() => undefined)
}
