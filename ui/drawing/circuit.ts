// The circuit in principle: supply, fuse, start, stop and cutoff in the coil of a no-volt release, controller, motor, earth.
import { type SVGTemplateResult, svg } from 'lit'
import { isDeadly } from '../../sim/advise/supply.ts'
import type { Job } from '../../sim/job.ts'
import { told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'

export interface CircuitDrawing {
  readonly width: number
  readonly height: number
  /** The drawing in a sentence or two. */
  readonly words: string
  readonly drawn: SVGTemplateResult
}

/** As wide as the narrowest phone shows unshrunk. */
const WIDTH = 326
const HEIGHT = 452
/** Where the two poles and the earth run down, and where the control circuit comes back. */
const FIRST = 70
const SECOND = 130
const EARTH = 318
const CONTROL = 268

const wire = (d: string) => svg`<path class="wire" d=${d} />`
const control = (d: string) => svg`<path class="wire control" d=${d} />`
const text = (x: number, y: number, words: string, anchor: 'start' | 'middle' | 'end' = 'start', look = '') =>
  svg`<text x=${x} y=${y} text-anchor=${anchor} class=${look}>${words}</text>`
const node = (x: number, y: number) => svg`<circle class="node" cx=${x} cy=${y} r="3.2" />`

/** A blade between two points on a vertical: closed ones touch, open ones stand off. */
const blade = (x: number, top: number, bottom: number, off: number) =>
  `M${x},${top}V${top + 4}M${x},${bottom}V${bottom - 4}L${x - off},${top + 3}`

/** What stands between the supply and the motor, in words. */
const BETWEEN: Readonly<Record<Job['parts']['supply']['kind'], string>> = {
  battery: 'DC in, DC out',
  pwm: 'AC in, DC out',
  'phase control with choke': 'AC in, DC out, choke',
  'phase control': 'AC in, DC out',
  'bare bridge': 'bridge: no control',
  ac: 'none: see the list',
}

/** The circuit a job’s supply wants; not the one it has. */
export function circuitDrawing({ parts: { supply, cutoff } }: Job, units: Units): CircuitDrawing {
  const battery = supply.kind === 'battery'
  const earthed = isDeadly(supply)
  const fitted = cutoff.fitted !== 'none' || cutoff.leads === 'not connected'
  const [first, second] = battery ? ['+', '−'] : ['L', 'N']
  const rating = battery ? 'at its post' : told(supply.breaker, 'current', units)
  const words = [
    `${battery ? 'Battery' : 'Outlet'}, ${battery ? 'fuse at its post' : `fuse or breaker ${rating}`}, then both poles through the contacts of a no-volt release, then the controller, then the motor.`,
    `The coil of the release is fed through the stop button, the start button with a holding contact beside it${fitted ? ', and the cutoff' : ''}: if one of them opens, the supply is broken and stays so until start is pressed.`,
    earthed
      ? 'Earth goes to the controller case, the motor frame and the machine, and to no motor lead.'
      : '',
  ]
    .filter((each) => each !== '')
    .join(' ')

  const cutoffPart = fitted
    ? svg`${control(`M${CONTROL},86V106M${CONTROL},132V160`)}
        <path class="wire control" d=${blade(CONTROL, 104, 134, -5)} />
        ${text(CONTROL + 9, 124, 'cutoff', 'start', 'named')}`
    : control(`M${CONTROL},86V160`)
  const earth = earthed
    ? svg`<path class="earth" d=${`M${EARTH},34V432M${EARTH},298H166M${EARTH},432H250V416M250,432H100V416`} />
        ${text(EARTH, 24, 'E', 'middle', 'strong')}${text(EARTH - 6, 447, 'earth to case, frame and machine', 'end', 'green')}`
    : svg``

  const drawn = svg`
    ${text(FIRST, 24, first, 'middle', 'strong')}${text(SECOND, 24, second, 'middle', 'strong')}
    ${wire(`M${FIRST},32V208M${FIRST},242V266M${SECOND},32V208M${SECOND},242V266`)}
    <rect class="part" x=${FIRST - 8} y="44" width="16" height="28" />${wire(`M${FIRST},44V72`)}
    ${text(FIRST - 14, 56, 'fuse', 'end')}${text(FIRST - 14, 72, rating, 'end')}
    ${node(FIRST, 86)}${node(SECOND, 160)}
    ${control(`M${FIRST},86H${SECOND - 7}A7,7 0 0 1 ${SECOND + 7},86H160M188,86H204M232,86H${CONTROL}`)}
    <path class="wire control" d="M160,86H164L189,83M184,86H188M174,78V84M168,78H180" />
    <path class="wire control" d="M204,86H208L230,76M228,86H232M218,70V80M212,70H224" />
    ${text(174, 66, 'stop', 'middle')}${text(218, 62, 'start', 'middle')}
    ${control('M198,86V112H208L229,103M228,112H240V86')}${node(198, 86)}${node(240, 86)}
    ${text(219, 130, 'holds', 'middle')}
    ${cutoffPart}
    ${control(`M${CONTROL},160H246M206,160H${SECOND}`)}
    <rect class="part control" x="206" y="150" width="40" height="20" />
    ${text(226, 188, 'release coil', 'middle', 'named')}
    <path class="wire" d=${`${blade(FIRST, 204, 244, 11)}${blade(SECOND, 204, 244, 11)}`} />
    <path class="link" d=${`M${FIRST - 7},224H${SECOND - 7}M${SECOND - 5},224H226V172`} />
    ${text(142, 240, 'no-volt release')}
    <rect class="part" x="34" y="266" width="132" height="58" />
    ${text(100, 292, 'controller', 'middle', 'strong')}${text(100, 311, BETWEEN[supply.kind], 'middle')}
    ${wire(`M${FIRST},324V350H100V358M${SECOND},324V350H112`)}
    <rect class="frame" x="52" y="344" width="96" height="72" />
    ${wire(`M${FIRST},324V380H74M${SECOND},324V380H126`)}
    <circle class="part" cx="100" cy="380" r="26" />${text(100, 386, 'M', 'middle', 'strong')}
    ${text(FIRST - 6, 340, '+', 'end')}${text(SECOND + 6, 340, '−')}
    <rect class="frame" x="206" y="344" width="88" height="72" />${text(250, 385, 'machine', 'middle')}
    <path class="link" d="M148,370H206M148,392H206" />
    ${earth}`
  return { width: WIDTH, height: HEIGHT, words, drawn }
}
