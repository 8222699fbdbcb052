// A drawing taken off the page as a file of its own: its looks written into it, on paper, with its title; SVG or PNG.

import { textWidth } from '../plot/label.ts'

/** What is looked up for each shape; the rest is the same everywhere. */
const LOOKS = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-linecap',
  'paint-order',
  'vector-effect',
  'opacity',
  'stop-color',
  'display',
  'visibility',
] as const
const TEXT_LOOKS = [
  'font-family',
  'font-size',
  'font-weight',
  'font-style',
  'font-stretch',
  'font-variant-numeric',
  'text-anchor',
  'dominant-baseline',
] as const
/** Where the faces of the sheet are not installed, these come nearest. */
const FALLBACKS = 'Helvetica, Arial, sans-serif'
const SPACE = 'http://www.w3.org/2000/svg'
/** Margin around a saved picture, and room for its title, px. */
const MARGIN = 16
const HEAD = 54
/** Pixels of a PNG for each pixel of the drawing. */
const SHARP = 2

export interface Saved {
  readonly text: string
  readonly width: number
  readonly height: number
}

/** Size of a drawing, px: that of its viewBox, or of the element. */
function boxOf(drawing: SVGSVGElement): { x: number; y: number; width: number; height: number } {
  const { x, y, width, height } = drawing.viewBox.baseVal ?? { x: 0, y: 0, width: 0, height: 0 }
  if (width > 0 && height > 0) return { x, y, width, height }
  const shown = drawing.getBoundingClientRect()
  return { x: 0, y: 0, width: shown.width, height: shown.height }
}

/** Writes the looks an element has on the page into its copy, and into all that is in it. */
function dress(shown: Element, copy: Element): void {
  const style = getComputedStyle(shown)
  const isText = shown.localName === 'text' || shown.localName === 'tspan'
  const looks = isText ? [...LOOKS, ...TEXT_LOOKS] : LOOKS
  const own = looks
    .map((name) => [name, style.getPropertyValue(name)] as const)
    .filter(([, value]) => value !== '')
    .map(([name, value]) =>
      name === 'font-family'
        ? `${name}:${value.replaceAll('"', "'")}, ${FALLBACKS}`
        : `${name}:${value.replaceAll('"', "'")}`,
    )
  copy.setAttribute('style', own.join(';'))
  copy.removeAttribute('class')
  for (const [index, child] of [...shown.children].entries()) {
    const twin = copy.children[index]
    if (twin) dress(child, twin)
  }
}

/** Comments are the page's own bookkeeping. */
function withoutComments(node: Node): void {
  for (const child of [...node.childNodes])
    if (child.nodeType === Node.COMMENT_NODE) child.remove()
    else withoutComments(child)
}

const element = (
  name: string,
  attributes: Readonly<Record<string, string | number>>,
  text = '',
): SVGElement => {
  const made = document.createElementNS(SPACE, name)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value))
  made.textContent = text
  return made
}

/** Does something as if the light theme were chosen: what is saved goes on paper. */
function inLight<T>(work: () => T): T {
  const { dataset } = document.documentElement
  const { theme } = dataset
  dataset.theme = 'light'
  try {
    return work()
  } finally {
    if (theme === undefined) delete dataset.theme
    else dataset.theme = theme
  }
}

/**
 * A drawing of the page as a whole SVG file: it needs nothing beside it. `about` stands after the title, `of` under it:
 * whose job this is.
 */
export function pictureOf(drawing: SVGSVGElement, title: string, about: string, of: string): Saved {
  const { x, y, width, height } = boxOf(drawing)
  const heads = [textWidth(title, 17) + textWidth(about, 13) + 10, textWidth(of, 13)]
  const whole = {
    width: Math.ceil(Math.max(width, ...heads)) + 2 * MARGIN,
    height: Math.ceil(height) + HEAD + 2 * MARGIN,
  }
  const file = element('svg', {
    xmlns: SPACE,
    width: whole.width,
    height: whole.height,
    viewBox: `${x - MARGIN} ${y - MARGIN - HEAD} ${whole.width} ${whole.height}`,
  })
  const words = drawing.getAttribute('aria-label') ?? ''
  file.append(element('title', {}, title), element('desc', {}, words))
  inLight(() => {
    const paper = getComputedStyle(document.documentElement)
    const colour = (name: string) => paper.getPropertyValue(name).trim()
    const copy = drawing.cloneNode(true) as SVGSVGElement
    withoutComments(copy)
    dress(drawing, copy)
    const place = { x: x - MARGIN, y: y - MARGIN - HEAD }
    const plain = { 'font-family': `Archivo, ${FALLBACKS}`, 'font-size': 13, fill: colour('--ink2') }
    const line = element('text', { x, y: y - HEAD + 16, ...plain })
    line.append(
      element('tspan', { 'font-size': 16, 'font-weight': 600, fill: colour('--ink') }, title),
      element('tspan', { dx: 10 }, about),
    )
    const body = element('g', {})
    body.append(...copy.childNodes)
    file.append(element('rect', { ...place, ...whole, fill: colour('--paper') }), line)
    file.append(element('text', { x, y: y - HEAD + 36, ...plain }, of), body)
  })
  return { ...whole, text: `${new XMLSerializer().serializeToString(file)}\n` }
}

/** The picture as an SVG file. */
export const svgFile = ({ text }: Saved): Blob => new Blob([text], { type: 'image/svg+xml' })

/** The picture as a PNG, two pixels a pixel; throws where the browser cannot draw it. */
export async function pngFile(saved: Saved): Promise<Blob> {
  const image = new Image()
  // As data, not as an address of its own: a canvas that was given one may not be read again.
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(saved.text)}`
  await image.decode()
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(saved.width * SHARP)
  canvas.height = Math.round(saved.height * SHARP)
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height)
  return new Promise((done, failed) =>
    canvas.toBlob((blob) => (blob ? done(blob) : failed(new Error('no picture came of it'))), 'image/png'),
  )
}
