// The machines, seen along their spindle: plain line drawings, in units of the machine pulley, around the spindle.
import { type SVGTemplateResult, svg } from 'lit'

/** How far a machine reaches from its spindle, in its own units; y downwards. */
export interface Reach {
  readonly left: number
  readonly right: number
  readonly top: number
  /** Least height of the spindle over the floor, or what lies under it. */
  readonly bottom: number
}

export interface Machine {
  readonly name: string
  readonly reach: Reach
  /** Seen from above: its spindle stands upright, and there is no floor in the picture. */
  readonly fromAbove: boolean
  /** Drawn with its floor at y = g. */
  draw(g: number): SVGTemplateResult
}

/** A leg from (x, y) to (to, g), `w` wide. */
const leg = (x: number, y: number, to: number, g: number, w = 0.16): string =>
  `M${x - w / 2} ${y}L${to - w / 2} ${g}h${w}L${x + w / 2} ${y}Z`

/** Two splayed legs from height y, with a bar between them where there is room. */
function legs(left: number, right: number, y: number, g: number): SVGTemplateResult {
  const bar = y + (g - y) * 0.58
  const out = (g - y) * 0.11
  const at = (bar - y) * 0.11
  return svg`<path class="part" d=${leg(left, y, left - out, g) + leg(right, y, right + out, g)} />
    ${g - y > 0.5 ? svg`<rect class="part" x=${left - at} y=${bar} width=${right - left + 2 * at} height="0.12" />` : svg``}`
}

const LUMPS = [
  [-0.7, -1.54],
  [-0.36, -1.6],
  [0, -1.58],
  [0.36, -1.62],
  [0.7, -1.54],
  [-0.53, -1.36],
  [-0.18, -1.37],
  [0.18, -1.36],
  [0.54, -1.37],
] as const

const mill: Machine = {
  name: 'mill',
  reach: { left: 1.1, right: 1.1, top: 1.8, bottom: 1.05 },
  fromAbove: false,
  draw: (g) => svg`${LUMPS.map(([x, y]) => svg`<circle class="part light" cx=${x} cy=${y} r="0.17" />`)}
    <path class="part" d="M-.72-.56-1.08-1.46H1.08L.72-.56Z" />
    ${legs(-0.74, 0.74, 0.62, g)}
    <rect class="part" x="-.88" y="-.56" width="1.76" height="1.18" rx=".03" />`,
}

const lathe: Machine = {
  name: 'lathe',
  reach: { left: 1.05, right: 1.45, top: 1.05, bottom: 1.5 },
  fromAbove: false,
  draw: (g) => svg`<circle class="part" r="1.02" /><circle class="inner" r=".88" />
    ${legs(-0.4, 1.05, 1.08, g)}
    <path class="part" d="M1.15.9V.06H1.29V.9Z M1-.04h.42v.1H1Z" />
    <rect class="part" x="-.62" y=".88" width="2.02" height=".2" />
    <path class="part" d="M-.62.88V-.3Q-.62-.72-.2-.72H.2Q.62-.72.62-.3V.88Z" />`,
}

const saw: Machine = {
  name: 'saw',
  reach: { left: 1.2, right: 1, top: 3.05, bottom: 1.25 },
  fromAbove: false,
  draw: (g) => svg`<path class="part" d=${`M-.72.6H.82V${g}H-.72Z`} />
    <path class="part" d="M-.92 0A.92.92 0 0 0 .96 0V-2.1A.92.92 0 0 0-.92-2.1V-1.76H.52V-.9H-.92Z" />
    <circle class="inner" cy="-2.1" r=".7" /><circle class="inner" cy="-2.1" r=".08" /><circle class="inner" r=".7" />
    <path class="inner" d="M-.7-2.1V0" />
    <path class="part" d="M-.79-1.76h.18v.34h-.18Z M-1.18-.98H.52v.12H-1.18Z" />`,
}

const grinder: Machine = {
  name: 'grinder',
  reach: { left: 1.15, right: 0.95, top: 0.95, bottom: 1.6 },
  fromAbove: false,
  draw: (g) => svg`<path class="part" d=${`M-.28 1.02H.28V${g - 0.14}H.7V${g}H-.7V${g - 0.14}H-.28Z`} />
    <path class="part" d="M-.5.4H.5V1.1H-.5Z" />
    <circle class="part" r=".8" />
    <path class="part" d="M-.66-.66A.93.93 0 1 1-.42.83L-.36.71A.8.8 0 1 0-.57-.57Z" />
    <path class="part" d="M-1.12.1h.34v.1h-.1L-.66.78h-.12L-.98.2h-.14Z" />`,
}

const wheel: Machine = {
  name: 'potter’s wheel, from above',
  reach: { left: 1.25, right: 2, top: 1.25, bottom: 1.25 },
  fromAbove: true,
  draw: () => svg`<rect class="part" x="1.4" y="-.52" width=".58" height="1.04" rx=".2" />
    <path class="part" d="M1.1-.3h.3v.6h-.3Z" />
    <rect class="part" x="-1.22" y="-1.22" width="2.44" height="2.44" rx=".22" />
    <circle class="inner" r="1.1" /><circle class="absent" r=".72" />`,
}

const drill: Machine = {
  name: 'drill press, from above',
  reach: { left: 1.05, right: 2.35, top: 1.05, bottom: 1.3 },
  fromAbove: true,
  draw: () => svg`<circle class="absent" r="1.02" />
    <path class="part" d="M-.1.6h.5v.28h-.5Z M.08.88h.14v.34h-.14Z" />
    <rect class="part" x="-.74" y="-.68" width="3.04" height="1.36" rx=".5" />
    <circle class="part" cx="1.72" r=".34" /><circle class="inner" cx="1.72" r=".24" />`,
}

const other: Machine = {
  name: 'machine',
  reach: { left: 0.95, right: 0.95, top: 0.95, bottom: 1.3 },
  fromAbove: false,
  draw: (g) => svg`${legs(-0.72, 0.72, 0.82, g)}
    <rect class="part" x="-.92" y="-.92" width="1.84" height="1.74" rx=".06" />
    <path class="inner" d="M-.76-.76H.76V.66H-.76Z" />`,
}

const MACHINES: Readonly<Record<string, Machine>> = { mill, lathe, saw, grinder, wheel, drill, other }

/** The machine of a kind; any other word is a plain one. */
export const machineOf = (kind: string): Machine => (Object.hasOwn(MACHINES, kind) ? MACHINES[kind] : other)
