import { type Files, guarded } from './files.ts'
import { notify } from './notices.ts'

/** Shows the log in its folder; where the host cannot, says where it is. */
export async function showLog(files: Files): Promise<void> {
  const reply = await guarded(files, 'log', () => files.host.call('showLog', {}))
  if (reply === null || reply.shown) return
  notify(files.store, {
    about: 'log',
    severity: 'news',
    text: 'What went wrong, with its time, is in the log. Nothing of your plans is in it.',
    details: [reply.place],
  })
}
