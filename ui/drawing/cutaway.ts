// The motor cut open: winding, frame and cutoff in the colour of their heat, brushes, bearings, magnets, fan, air.
import { type SVGTemplateResult, svg } from 'lit'
import { SHELL_LENGTH } from './drive.ts'
import { hatch } from './hatch.ts'

/** How far the cut motor reaches from the left end of its shell, in shell diameters. */
export function cutReach(cooling: string): { readonly left: number; readonly right: number } {
  return {
    left: cooling === 'blower' ? 0.82 : 0.2,
    right: SHELL_LENGTH + (hasFanPlace(cooling) ? 0.78 : 0.52),
  }
}

const hasFanPlace = (cooling: string): boolean => cooling !== 'blower' && cooling !== 'enclosed'
const isOpen = (cooling: string): boolean => !cooling.startsWith('enclosed')

/** Where the labels' leaders point, in shell diameters from the left end of the shell and its axis. */
export const POINTS = {
  winding: [1.26, -0.2],
  frame: [0.75, 0.47],
  brushes: [0.29, 0.22],
  fan: [1.72, -0.44],
  blower: [-0.5, -0.36],
} as const

/** Where the cutoff sits: left edge, top, width and height. */
const SWITCH: Readonly<Record<string, readonly [number, number, number, number]>> = {
  'brush end': [0.36, -0.42, 0.06, 0.15],
  magnet: [0.37, -0.44, 0.06, 0.12],
  shell: [0.42, -0.57, 0.16, 0.07],
}

export const switchPoint = (place: string): readonly [number, number] => {
  const [x, y, w] = SWITCH[place] ?? SWITCH['brush end']
  return [x + w / 2, y + 0.03]
}

/** Slots of the armature, slanting as they are wound. */
const slots = [-0.24, -0.17, -0.1, -0.03, 0.04, 0.11, 0.18, 0.25]
  .map((y) => `M.5 ${y}L1.2 ${y - 0.04}`)
  .join('')
const bars = [-0.09, -0.03, 0.03, 0.09].map((y) => `M.22 ${y}H.37`).join('')

/** Crossed box: a bearing in section. */
const bearing = (x: number): SVGTemplateResult =>
  svg`${[-0.17, 0.07].map((y) => svg`<path class="part" d=${`M${x} ${y}h.1v.1h-.1Z`} /><path class="inner" d=${`M${x} ${y}l.1 .1M${x + 0.1} ${y}l-.1 .1`} />`)}`

/** One half of an end bell with its hub, mirrored about the axis; open ones have a window for the air. */
function bell(x: number, out: number, open: boolean): SVGTemplateResult {
  const half = (s: number) =>
    `M${x} ${s * 0.5}V${s * 0.2}h${out * 0.12}V${s * 0.07}h${-out * 0.18}V${s * 0.5}Z`
  return svg`<path class="part frame" d=${half(-1) + half(1)} />
    ${open ? svg`<path class="window" d=${`M${x + out * 0.02} -.38v.12h${-out * 0.1}v-.12Z M${x + out * 0.02} .38v-.12h${-out * 0.1}v.12Z`} />` : svg``}`
}

function fan(cooling: string): SVGTemplateResult {
  if (cooling === 'blower')
    return svg`<path class="part" d="M-.2-.1H.02V.1H-.36A.22.22 0 1 1-.28-.28L-.2-.24Z" /><circle class="inner" cx="-.5" cy="-.12" r=".1" />`
  if (!hasFanPlace(cooling)) return svg``
  if (cooling === 'none') return svg`<rect class="absent" x="1.64" y="-.47" width=".17" height=".94" />`
  const blades = [-0.34, -0.23, -0.12, 0.19, 0.3, 0.41].map((y) => `M1.64 ${y}l.17-.05`).join('')
  return svg`<rect class="part" x="1.64" y="-.47" width=".17" height=".94" /><path class="inner" d=${blades} />
    ${cooling === 'enclosed, outer fan' ? svg`<path class="part bare" d="M1.4-.57H1.88V-.2M1.4.57H1.88V.2" />` : svg``}`
}

const AIR: Readonly<Record<string, string>> = {
  'shaft fan': [
    'M-.16.32C0 .3.1.33.24.33m-.08-.045.08.045-.08.045',
    'M1.36.34C1.46.36 1.52.46 1.55.6m-.07-.06.07.06.02-.09',
    'M1.84.38C1.86.46 1.9.54 1.98.58m-.09 0 .09 0-.04-.08',
  ].join(''),
  blower: [
    'M-.1-.02C.02.1.06.3.2.33m-.085-.03.085.03-.06.07',
    'M1.36.34C1.46.36 1.52.46 1.55.6m-.07-.06.07.06.02-.09',
    'M1.36-.34C1.46-.36 1.52-.46 1.55-.6m-.07.06.07-.06.02.09',
  ].join(''),
  'enclosed, outer fan': ['M1.36-.535H.95m.08-.035-.08.035.08.035', 'M1.36.56H.95m.08-.04-.08.04.08.04'].join(
    '',
  ),
}

/** A pulley on the shaft's end, in section, `r` in shell diameters; one too large for the picture is broken off at `most`. */
function pulley(x: number, r: number, most: number): SVGTemplateResult {
  const tall = Math.min(Math.max(r, 0.075), most)
  const deep = Math.max(0.06, tall - 0.13)
  const cut = (s: number) => `M${x - 0.03} ${s * tall}l.06-.03.04.06.06-.06.04.06.05-.03`
  return svg`<path class="part" d=${`M${x} -.06V${-tall}L${x + 0.08} ${-deep}L${x + 0.16} ${-tall}V${tall}L${x + 0.08} ${deep}L${x} ${tall}Z`} />
    ${r > most ? svg`<path class="inner bare" d=${cut(-1) + cut(1)} />` : svg``}`
}

/** The cut motor around (0, 0): left end of its shell, on its axis; one unit is the shell's diameter. */
export function cutaway(
  cooling: string,
  cutoff: string | null,
  pulleyRadius: number,
  most: number,
): SVGTemplateResult {
  const open = isOpen(cooling)
  const { left, right } = cutReach(cooling)
  const end = SHELL_LENGTH
  const shaftEnd = right - 0.06
  const sensor = cutoff === null ? null : (SWITCH[cutoff] ?? SWITCH['brush end'])
  return svg`<path class="part frame" d=${`M0-.5H${end}V-.44H0ZM0 .5H${end}V.44H0Z`} />
    ${bell(0, -1, open)}${bell(end, 1, open)}
    ${[-0.42, 0.33].map((y) => svg`<rect class="part" x=".44" y=${y} width=".82" height=".09" /><path class="hatch" d=${hatch(0.44, y, 0.82, 0.09, 0.05)} />`)}
    <path class="part" d=${`M-.16-.06H${shaftEnd}V.06H-.16Z`} />
    <path class="part winding" d="M.5-.29H.46C.38-.29.38-.24.39-.18V.18C.38.24.38.29.46.29H.5Z M1.2-.29h.04C1.32-.29 1.32-.24 1.31-.18V.18C1.32.24 1.32.29 1.24.29H1.2Z" />
    <rect class="part winding" x=".5" y="-.31" width=".7" height=".62" /><path class="inner" d=${slots} />
    <rect class="part" x=".22" y="-.13" width=".15" height=".26" /><path class="inner" d=${bars} />
    <path class="part brush" d="M.25-.13h.08v-.12h-.08Z M.25.13h.08v.12h-.08Z" />
    <path class="inner bare" d="M.29-.25.26-.28.32-.32.26-.36.32-.4.29-.44 M.29.25.26.28.32.32.26.36.32.4.29.44" />
    ${bearing(-0.11)}${bearing(end + 0.01)}
    ${fan(cooling)}
    ${pulley(right - 0.3, pulleyRadius, most)}
    ${sensor ? svg`<rect class="part switch" x=${sensor[0]} y=${sensor[1]} width=${sensor[2]} height=${sensor[3]} />` : svg``}
    <path class="air" d=${AIR[cooling] ?? ''} />
    <path class="centre" d=${`M${-left - 0.04} 0H${right + 0.04}`} />`
}
