// The text of a log file, whatever spreadsheet wrote it: UTF-8, UTF-16 with its mark, or the old Western code page.

/** Bytes as text. */
export function logText(bytes: ArrayBuffer): string {
  const [first, second] = new Uint8Array(bytes, 0, Math.min(2, bytes.byteLength))
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    return new TextDecoder(first === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes)
  const text = new TextDecoder('utf-8').decode(bytes)
  // A lone byte that is no UTF-8 is a degree sign or an umlaut of the old code page; pairs of them are no text at all.
  return text.includes('\ufffd') && !text.includes('\ufffd\ufffd')
    ? new TextDecoder('windows-1252').decode(bytes)
    : text
}
