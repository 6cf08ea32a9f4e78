import { type MessageName, messages, type Reply, type Request } from './contract.ts'

/** What a host does for each message of the contract. */
export type Handlers = { [N in MessageName]: (request: Request<N>) => Promise<Reply<N>> }

/** `status` is the HTTP status for the same outcome. */
export type Answer = { kind: 'reply'; value: unknown } | { kind: 'refused'; status: number; sentence: string }

/**
 * One message through the door: name and request are checked before anything is done, the reply before it leaves.
 * `fault` hears of errors that ought not to happen; the window is told without details, which could hold a path.
 */
export async function answer(
  handlers: Handlers,
  name: unknown,
  request: unknown,
  fault: (error: unknown) => void,
): Promise<Answer> {
  if (!isMessage(name)) {
    return { kind: 'refused', status: 404, sentence: 'There is no such request. Reload the window.' }
  }
  const asked = messages[name].request.safeParse(request)
  if (!asked.success) {
    const issue = asked.error.issues[0]
    const where = issue?.path.join('.') ?? ''
    const sentence = `The request “${name}” does not have the right shape${where && ` at ${where}`}: ${issue?.message}.`
    return { kind: 'refused', status: 400, sentence }
  }
  try {
    const handle = handlers[name] as (request: unknown) => Promise<unknown>
    return { kind: 'reply', value: messages[name].reply.parse(await handle(asked.data)) }
  } catch (error) {
    fault(error)
    return {
      kind: 'refused',
      status: 500,
      sentence: `Stopgap could not carry out “${name}”. Try again; if it stays so, save under another name.`,
    }
  }
}

const isMessage = (name: unknown): name is MessageName => typeof name === 'string' && Object.hasOwn(messages, name)
