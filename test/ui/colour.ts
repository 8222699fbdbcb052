// Colours as numbers: contrast, distance, and how they look to the colour-blind.

/** Linear red, green, blue, 0 to 1. */
export type Linear = readonly [number, number, number]

/** Of "#rrggbb". sRGB transfer curve: IEC 61966-2-1:1999. */
export function linear(hex: string): Linear {
  const found = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex)
  if (!found) throw new Error(`${hex} is no colour`)
  const [r, g, b] = found.slice(1).map((pair) => {
    const c = Number.parseInt(pair, 16) / 255
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4
  })
  return [r, g, b]
}

const luminance = ([r, g, b]: Linear): number => 0.2126 * r + 0.7152 * g + 0.0722 * b

/** Contrast of two colours, 1 to 21. W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio". */
export function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(linear(one)), luminance(linear(other))].sort((a, b) => a - b)
  return (light + 0.05) / (dark + 0.05)
}

/** CIE 1976 L*, a*, b* under D65. CIE 15:2004; the matrix of IEC 61966-2-1. */
export function lab([r, g, b]: Linear): readonly [number, number, number] {
  const x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505
  const y = luminance([r, g, b])
  const z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089
  const [fx, fy, fz] = [x, y, z].map((t) =>
    t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29,
  )
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)]
}

/** Distance ΔE*ab of two colours. CIE 15:2004. */
export function distance(one: Linear, other: Linear): number {
  const [a, b] = [lab(one), lab(other)]
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
}

/**
 * How each kind of colour-blindness sees linear colours, wholly: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Trans. Vis. Comput. Graph. 15 (2009),
 * severity 1.0.
 */
export const BLIND = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const
export type Vision = 'everyone' | keyof typeof BLIND
export const VISIONS: readonly Vision[] = ['everyone', 'protanopia', 'deuteranopia', 'tritanopia']

/** A colour as somebody sees it. */
export function seen(hex: string, vision: Vision): Linear {
  const rgb = linear(hex)
  if (vision === 'everyone') return rgb
  const [r, g, b] = BLIND[vision].map((row) =>
    Math.min(1, Math.max(0, row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2])),
  )
  return [r, g, b]
}
