// What can be saved of a job: every chart as SVG or PNG, the run as a table, the job itself.
import { html, type TemplateResult } from 'lit'
import { csvLines } from '../../../sim/say/csv.ts'
import { download, fileName } from '../../keep/download.ts'
import { pictureOf, pngFile, svgFile } from '../../keep/picture.ts'
import { charts, drivePicture } from './charts.ts'
import type { Report } from './facts.ts'

/** A drawing on the page that can be saved. */
export interface Offered {
  readonly title: string
  readonly about: string
  readonly drawing: SVGSVGElement
}

/** Drawings of the page, through all its shadow trees, without those in the elements named in `but`. */
function drawingsIn(root: ParentNode, but: readonly string[]): SVGSVGElement[] {
  return [...root.children].flatMap((child) => {
    if (but.includes(child.localName)) return []
    if (child instanceof SVGSVGElement) return child.matches('[role=img][aria-label]') ? [child] : []
    return [...(child.shadowRoot ? drawingsIn(child.shadowRoot, but) : []), ...drawingsIn(child, but)]
  })
}

/** Drawn anew for the report, over the whole job. */
const OWN = ['drive-line', 'over-time', 'report-zone']

/**
 * Every drawing there is just now: those of the report, over the whole job, then those of the zones that have been
 * looked at, each by its zone. `own`: where the report's drawings stand.
 */
export function offered(report: Report, own: ParentNode): readonly Offered[] {
  const drawn = [drivePicture(report), ...charts(report)].flatMap(({ id, title, about }) => {
    const drawing = own.querySelector<SVGSVGElement>(`[data-picture="${id}"]`)
    return drawing ? [{ title, about, drawing }] : []
  })
  const rest = [...document.querySelectorAll<HTMLElement>('.zone')].flatMap((zone) => {
    const found = drawingsIn(zone, OWN)
    const title = zone.getAttribute('aria-label') ?? ''
    return found.map((drawing, index) => ({
      title: found.length > 1 ? `${title} ${index + 1}` : title,
      about: '',
      drawing,
    }))
  })
  return [...drawn, ...rest]
}

const nameOf = ({ name, variant }: Report, what: string, ending: string): string =>
  fileName(`${name} ${variant} ${what}`, ending)

const saved = (report: Report, { title, about, drawing }: Offered) =>
  pictureOf(drawing, title, about, `${report.name}, ${report.variant}`)

/** The whole run as a table. */
export function saveTable(report: Report): void {
  const { job, trace } = report.shown.result
  download(nameOf(report, 'over time', 'csv'), new Blob([...csvLines(job, trace)], { type: 'text/csv' }))
}

/** Buttons that save each drawing. */
export const pictures = (report: Report, found: readonly Offered[]): TemplateResult =>
  html`<ul class="files">${found.map(
    (each) => html`<li><span>${each.title}</span>
      <button aria-label="${each.title} as SVG" @click=${() =>
        download(nameOf(report, each.title, 'svg'), svgFile(saved(report, each)))}>SVG</button>
      <button aria-label="${each.title} as PNG" @click=${async () =>
        download(nameOf(report, each.title, 'png'), await pngFile(saved(report, each)))}>PNG</button>
    </li>`,
  )}</ul>`
