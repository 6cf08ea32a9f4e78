import { type Licence, licenceList } from '../../electron/contract/licence.ts'

/** What the build found in the programs it made; rejects when the list is missing or damaged. */
export async function shippedLicences(): Promise<readonly Licence[]> {
  const response = await fetch('./licences.json')
  if (!response.ok) throw new Error(`The list of licences could not be read: the host answered ${response.status}.`)
  return licenceList.parse(await response.json())
}
