// Reads the pictures of the gallery as an eye would: which texts stand on one another, leave their picture, or are too small.
import type { Page } from 'playwright-core'

/** What is amiss in the pictures of a page, a line each: case, and what. */
export interface Seen {
  /** Texts looked at: a check that sees none has seen nothing. */
  readonly texts: number
  readonly touching: readonly string[]
  readonly outside: readonly string[]
  readonly small: readonly string[]
}

/** Waits until nothing in the pictures has moved for three frames. */
export const still = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const frame = () => new Promise((next) => requestAnimationFrame(next))
    const shape = () => {
      const found: string[] = []
      const visit = (node: ParentNode) => {
        for (const el of node.querySelectorAll('*')) {
          if (el.shadowRoot) visit(el.shadowRoot)
          // Elements that wait for their turn are not drawn yet.
          if ((el as { isUpdatePending?: boolean }).isUpdatePending) found.push(`${performance.now()}`)
          if (el.tagName === 'svg') found.push(`${el.clientWidth} ${el.innerHTML.length}`)
        }
      }
      visit(document)
      return found.join()
    }
    for (let last = '', same = 0; same < 8; ) {
      await frame()
      const now = shape()
      same = now === last ? same + 1 : 0
      last = now
    }
  })

/** Looks at every drawing of every case. Boxes are px of the window. */
export const look = (page: Page): Promise<Seen> =>
  page.evaluate(() => {
    /** Boxes of letters have air above and below: so much may overlap before ink does. */
    const AIR = { across: 0.5, down: 3 }
    const LEAST = 13
    const seen = { texts: 0, touching: [] as string[], outside: [] as string[], small: [] as string[] }

    const inside = (node: ParentNode, wanted: string): Element[] =>
      [...node.querySelectorAll('*')].flatMap((el) => [
        ...(el.matches(wanted) ? [el] : []),
        ...(el.shadowRoot ? inside(el.shadowRoot, wanted) : []),
      ])

    const drawing = (id: string, svg: SVGSVGElement) => {
      const frame = svg.getBoundingClientRect()
      const scale = svg.getScreenCTM()?.a ?? 1
      // Fields that stand in a drawing are part of what is read in it.
      const fields = [...(svg.parentElement?.querySelectorAll('button.tag') ?? [])]
      const texts = [...svg.querySelectorAll('text'), ...fields].filter(
        (el) => el.textContent?.trim() && el.checkVisibility(),
      )
      const boxes = texts.map((el) => ({
        text: el.textContent?.trim() ?? '',
        box: el.getBoundingClientRect(),
      }))
      seen.texts += texts.length
      for (const el of texts) {
        const parts = [el, ...el.querySelectorAll('tspan')]
        const size = Math.min(...parts.map((part) => Number.parseFloat(getComputedStyle(part).fontSize)))
        const drawn = el instanceof SVGElement ? size * scale : size
        if (drawn < LEAST - 0.01) seen.small.push(`${id}: “${el.textContent?.trim()}” ${drawn.toFixed(2)} px`)
      }
      for (const { text, box } of boxes) {
        const over = Math.max(
          frame.left - box.left,
          box.right - frame.right,
          frame.top - box.top - AIR.down,
          box.bottom - frame.bottom - AIR.down,
        )
        if (over > 0.5) seen.outside.push(`${id}: “${text}” by ${over.toFixed(1)} px`)
      }
      for (let a = 0; a < boxes.length; a++)
        for (let b = a + 1; b < boxes.length; b++) {
          const [one, other] = [boxes[a].box, boxes[b].box]
          const across = Math.min(one.right, other.right) - Math.max(one.left, other.left)
          const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top)
          if (across > AIR.across && down > AIR.down)
            seen.touching.push(
              `${id}: “${boxes[a].text}” on “${boxes[b].text}” (${across.toFixed(1)} × ${down.toFixed(1)} px)`,
            )
        }
    }

    /** Texts of the page around the drawings. */
    const words = (id: string, el: Element) => {
      const own = [...el.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
      )
      if (
        !own ||
        el instanceof SVGElement ||
        el.tagName === 'STYLE' ||
        el.closest('.unseen') ||
        !el.checkVisibility()
      )
        return
      const size = Number.parseFloat(getComputedStyle(el).fontSize)
      if (size < LEAST - 0.01) seen.small.push(`${id}: “${el.textContent?.trim()}” ${size.toFixed(2)} px`)
    }

    for (const one of document.querySelectorAll('.case')) {
      for (const el of inside(one, '*')) words(one.id, el)
      for (const svg of inside(one, 'svg')) if (svg instanceof SVGSVGElement) drawing(one.id, svg)
    }
    return seen
  })
