/** Hands a file to the person by way of the browser's own downloads. */
export function handOut(name: string, content: Blob): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}

/** A file name anybody's disk takes. */
export const sheetFileName = (title: string, what: string, ending: string): string => {
  const plain = title
    .replace(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, 80)
  return `${plain === '' ? 'Plan' : plain}, ${what}.${ending}`
}
