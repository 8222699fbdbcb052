// Numbers as people write them: 4.2, 4,2, 4 000, 2 1/2, 1.2e-3; a comma that could mean either is not guessed.

export type Read =
  | { readonly kind: 'number'; readonly value: number; readonly rest: string }
  | { readonly kind: 'two ways'; readonly run: string; readonly readings: readonly [string, string] }
  | { readonly kind: 'garbled' }
  | { readonly kind: 'none' }

const garbled: Read = { kind: 'garbled' }

/**
 * The unsigned number a tidied text begins with, and what follows it. Infinity where it is too large to hold.
 * 'two ways' for one comma before three digits, 'garbled' for digits that make no number, 'none' without digits.
 */
export function readNumber(text: string): Read {
  const mixed = /^(\d+)(?: ?- ?| )(\d+) ?\/ ?(\d+)/.exec(text)
  if (mixed) {
    const [, whole, top, bottom] = mixed.map(Number)
    if (top! >= bottom!) return garbled
    return { kind: 'number', value: whole! + top! / bottom!, rest: text.slice(mixed[0].length).trim() }
  }
  const fraction = /^(\d+) ?\/ ?(\d+)/.exec(text)
  if (fraction) {
    const bottom = Number(fraction[2])
    if (bottom === 0) return garbled
    return {
      kind: 'number',
      value: Number(fraction[1]) / bottom,
      rest: text.slice(fraction[0].length).trim(),
    }
  }
  // Blanks between groups of three, then the plain run of digits and separators.
  const run =
    /^[1-9]\d{0,2}(?: \d{3})+(?:[.,]\d+)?(?!\d)/.exec(text)?.[0] ?? /^[.,]?\d+(?:[.,]\d+)*/.exec(text)?.[0]
  if (run === undefined) return { kind: 'none' }
  if (/^[1-9]\d{0,2},\d{3}$/.test(run))
    return { kind: 'two ways', run, readings: [run.replace(',', ''), run.replace(',', '.')] }
  const digits = withPoint(run)
  if (digits === undefined) return garbled
  const after = text.slice(run.length)
  const power = /^e[+-]?\d+/i.exec(after)?.[0] ?? ''
  return { kind: 'number', value: Number(digits + power), rest: after.slice(power.length).trim() }
}

/** A run of digits with thousands marks taken out and a point for the decimals; undefined if its marks make no sense. */
function withPoint(run: string): string | undefined {
  if (run.includes(' ')) return run.replaceAll(' ', '').replace(',', '.')
  if (/^\d*[.,]?\d*$/.test(run)) return run.replace(',', '.')
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(run)) return run.replaceAll(',', '')
  if (/^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d+)?$/.test(run)) return run.replaceAll('.', '').replace(',', '.')
  return undefined
}
