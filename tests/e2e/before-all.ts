import { unpackBrowser } from './browser.ts'

export default async function beforeAll(): Promise<void> {
  await unpackBrowser()
}
