// Hands a text or a picture to the browser as a file to save, under a name that every file system takes.

/** Longest name given to a file, characters, before its ending. */
const LONGEST = 80
/** Names some file systems keep for devices. */
const KEPT = /^(con|prn|aux|nul|com\d|lpt\d)$/i

/** A name for a file: letters and digits of what it is called, joined by hyphens; `or` where there are none. */
export function fileName(title: string, ending: string, or = 'job'): string {
  const words = title
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
  const short = [...words].slice(0, LONGEST).join('').replace(/-$/, '')
  return `${short === '' || KEPT.test(short) ? `${or}${short === '' ? '' : `-${short}`}` : short}.${ending}`
}

/** How long the browser is given to take a file, ms. */
const TAKEN = 60_000

/** Offers a file to be saved. */
export function download(name: string, content: Blob): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(content)
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), TAKEN)
}
