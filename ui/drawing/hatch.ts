// Hatching of a lying strip: strokes at 45 degrees, none past its ends.

/** Path of the strokes in a strip, `apart` from each other; in the strip's own units. */
export function hatch(x: number, y: number, width: number, height: number, apart: number): string {
  const strokes: string[] = []
  for (let at = x; at + height <= x + width + 1e-9; at += apart)
    strokes.push(`M${at.toFixed(3)} ${(y + height).toFixed(3)}l${height} ${-height}`)
  return strokes.join('')
}
