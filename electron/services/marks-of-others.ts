import { watch } from 'node:fs'
import { refusal } from './reason.ts'

/** What stands this long, ms, is there to stay: a mark that is only tried is gone sooner. */
const standing = 400

/**
 * Hears of files that come into a folder, by name, once they have stood for a moment. Where the system will not say, nothing is heard.
 * The result stops it.
 */
export function hearOfFiles(folder: string, heard: (fileName: string) => void): () => void {
  try {
    const watcher = watch(folder, { persistent: false }, (_event, fileName) => {
      if (fileName !== null) setTimeout(() => heard(fileName), standing).unref()
    })
    // The folder has gone, or its disk: nothing more is heard of it.
    watcher.on('error', () => watcher.close())
    return () => watcher.close()
  } catch (error) {
    if (refusal(error) === null) throw error
    return () => undefined
  }
}
