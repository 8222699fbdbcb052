// The other parts of the drive line: controller and wires, motor from its end, stands, pulleys, belts, dimension lines.
import { type SVGTemplateResult, svg } from 'lit'
import type { Rect } from '../plot/label.ts'
import type { DimensionLine } from './annotations.ts'
import type { DrawnStage } from './placement.ts'
import { beltPath, beltWidth, distance, type Point, runsOf, type Wheel } from './runs.ts'
import type { Sheet } from './sheet.ts'

const n1 = (value: number): string => value.toFixed(1)

/** The box with the knob; one unit of its drawing is its width. */
export const controllerBox = ({ x, y, width }: Rect): SVGTemplateResult =>
  svg`<g class="unit" transform=${`translate(${x} ${y}) scale(${width})`}>
    <rect class="part" width="1" height="1.33" rx=".06" />
    <circle class="part" cx=".5" cy=".5" r=".25" /><path class="part bare" d="M.5.5.36.32" />
    <path class="inner" d="M.19.68.14.73M.13.5H.07M.2.2.15.15M.5.07V.14M.8.2.85.15M.87.5H.93M.81.68.86.73M.22 1H.78V1.16H.22ZM.28 1.08H.72" />
  </g>`

/** The wires from the controller's foot to the motor's side, sagging on the way: two curves, by their points. */
export function wireCurves(
  { x, y, width, height }: Rect,
  { at, r }: Wheel,
  floor: number,
  narrow: boolean,
): readonly Point[] {
  const end: Point = { x: at.x - r, y: at.y + 0.25 * r }
  if (narrow) {
    const from = { x: x + width / 2, y: y + height }
    const low = Math.min(floor - 10, Math.max(from.y, end.y) + 26)
    const half = { x: (from.x + end.x) / 2, y: low }
    return [from, { x: from.x, y: low }, { x: from.x, y: low }, half, half, { x: end.x - 20, y: low }, end]
  }
  const from = { x: x + width, y: y + 0.84 * height }
  const low = Math.min(floor - 10, Math.max(from.y, end.y) + 26)
  const out = Math.max(24, 0.45 * (end.x - from.x))
  const half = { x: (from.x + end.x) / 2, y: low }
  return [
    from,
    { x: from.x + out, y: from.y },
    { x: from.x + 0.4 * out, y: low },
    half,
    { x: end.x - 0.4 * out, y: low },
    { x: end.x - 30, y: end.y + 2 },
    end,
  ]
}

/** The wires drawn. */
export function wires(points: readonly Point[]): SVGTemplateResult {
  const [from, ...rest] = points.map(({ x, y }) => `${n1(x)} ${n1(y)}`)
  return svg`<path class="wire" d=${`M${from}C${rest.join(' ')}`} />`
}

/** The motor from its shaft end: shell, end bell, feet. */
export const motorEnd = ({ at, r }: Wheel): SVGTemplateResult => svg`
  <circle class="part frame" cx=${at.x} cy=${at.y} r=${r} />
  ${r > 9 ? svg`<circle class="inner" cx=${at.x} cy=${at.y} r=${0.8 * r} />` : svg``}`

/** A small table under the motor. */
export function motorStand({ at, r }: Wheel, floor: number): SVGTemplateResult {
  const top = at.y + r
  const [thick, wide] = [Math.max(4, 0.22 * r), 1.65 * r]
  const legs = [-1, 1].map(
    (side) =>
      `M${n1(at.x + side * 1.25 * r - 0.2 * r)} ${n1(top + thick)}h${n1(0.4 * r)}V${n1(floor)}h${n1(-0.4 * r)}Z`,
  )
  return svg`<path class="part" d=${`M${n1(at.x - wide)} ${n1(top)}h${n1(2 * wide)}v${n1(thick)}h${n1(-2 * wide)}Z${legs.join('')}`} />`
}

/** A bearing block on a post, for a jackshaft. */
export function jackStand({ at, r }: Wheel, floor: number): SVGTemplateResult {
  const w = Math.min(26, Math.max(9, 0.5 * r))
  return svg`<path class="part" d=${`M${n1(at.x - w / 2)} ${n1(at.y)}h${n1(w)}V${n1(floor - 5)}h${n1(w / 2)}v5h${n1(-2 * w)}v-5h${n1(w / 2)}Z`} />`
}

/** A pulley from its side: spokes where it is large enough to have them. */
export function pulley({ at, r }: Wheel): SVGTemplateResult {
  const spokes = [0, 1, 2, 3, 4].map((n) => {
    const angle = (n / 5) * 2 * Math.PI - Math.PI / 2
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    const arm = (off: number) =>
      `M${n1(at.x + 0.22 * r * c - off * s)} ${n1(at.y + 0.22 * r * s + off * c)}L${n1(at.x + 0.78 * r * c - off * s)} ${n1(at.y + 0.78 * r * s + off * c)}`
    return arm(0.05 * r) + arm(-0.05 * r)
  })
  const ring = (share: number, look: string) =>
    svg`<circle class=${look} cx=${at.x} cy=${at.y} r=${n1(share * r)} />`
  return svg`${ring(1, 'part wheel')}
    ${r > 34 ? svg`${ring(0.82, 'inner')}<path class="inner" d=${spokes.join('')} />${ring(0.22, 'part')}` : svg``}
    ${r > 6 ? ring(r > 34 ? 0.08 : 0.3, 'inner') : svg``}`
}

/** The belt of a stage; where it is drawn too short, with a gap between two broken edges. */
export function belt({ driving, driven, shortened }: DrawnStage): SVGTemplateResult {
  const wide = beltWidth(Math.min(driving.r, driven.r))
  return svg`<path class="belt" d=${beltPath(driving, driven)} stroke-width=${n1(wide)} />
    ${shortened ? svg`<g class="broken">${breakMarks(driving, driven, wide)}</g>` : svg``}`
}

/** Across each straight run: paper over it, and two wavy edges. */
function breakMarks(driving: Wheel, driven: Wheel, wide: number): SVGTemplateResult[] {
  return runsOf(driving, driven).straight.map(([a, b]) => {
    const angle = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI
    const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2]
    const h = wide / 2 + 5
    const edge = (dx: number) => `M${dx} ${n1(-h)}q4 ${n1(h / 2)} 0 ${n1(h)}t0 ${n1(h)}`
    return svg`<g transform=${`translate(${n1(x)} ${n1(y)}) rotate(${n1(angle)})`}>
      <rect class="gap" x="-4" y=${n1(-h)} width="8" height=${n1(2 * h)} /><path class="inner bare" d=${edge(-5) + edge(4)} /></g>`
  })
}

/** A dimension line with its arrows and witnesses. */
export function dimensionLine({ ends: [a, b], witnesses }: DimensionLine): SVGTemplateResult {
  const length = Math.max(1e-6, distance(a, b))
  const [c, s] = [(b.x - a.x) / length, (b.y - a.y) / length]
  const head = (p: Point, way: number) =>
    `M${n1(p.x)} ${n1(p.y)}l${n1(way * 8 * c - 2.4 * s)} ${n1(way * 8 * s + 2.4 * c)}l${n1(4.8 * s)} ${n1(-4.8 * c)}Z`
  const drawn = witnesses.map(([p, q]) => `M${n1(p.x)} ${n1(p.y)}L${n1(q.x)} ${n1(q.y)}`)
  return svg`<path class="dimension" d=${`M${n1(a.x)} ${n1(a.y)}L${n1(b.x)} ${n1(b.y)}${drawn.join('')}`} />
    <path class="arrow" d=${head(a, 1) + head(b, -1)} />`
}

/** Centre lines through a wheel. */
export const cross = ({ at, r }: Wheel): string =>
  `M${n1(at.x - r - 8)} ${n1(at.y)}H${n1(at.x + r + 8)}M${n1(at.x)} ${n1(at.y - r - 8)}V${n1(at.y + r + 8)}`

/** Dotted lines from the inset to the motor it shows. */
export function sightLines({ inset, key, placement }: Sheet): string {
  const bottom = inset.y + inset.height
  const { at, r } = placement.shell
  if (at.y - r < bottom + 8) return ''
  const left = Math.max(key.x + key.width + 16, at.x - 3.2 * r - 40)
  return `M${n1(left)} ${n1(bottom)}L${n1(at.x - r)} ${n1(at.y)}M${n1(inset.x + inset.width)} ${n1(bottom)}L${n1(at.x + r)} ${n1(at.y)}`
}
