// The drive line as one drawing: what stays while the moment moves, and the readings that follow it.
import { type SVGTemplateResult, svg } from 'lit'
import { told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { HEAT_STOPS_C, heatColour } from '../plot/heat.ts'
import { textWidth } from '../plot/label.ts'
import type { Annotations, Tag } from './annotations.ts'
import { cutaway } from './cutaway.ts'
import { type Drive, isStandIn } from './drive.ts'
import { hatch } from './hatch.ts'
import type { InsetLabel } from './insetLabels.ts'
import { machineOf } from './machines.ts'
import * as part from './parts.ts'
import { scaleBar } from './scaleBar.ts'
import { ROW, type Sheet } from './sheet.ts'

/** What the drawing shows of a moment; null while no answer is there. */
export interface Moment {
  readonly windingC: number
  readonly frameC: number
  readonly switchC: number
  /** rad/s */
  readonly motor: number
  readonly spindle: number
  /** What the controller gives: "84 V, 9.6 A". */
  readonly gives: string
}

/** A drawing laid out. */
export interface Drawing {
  readonly drive: Drive
  readonly sheet: Sheet
  readonly annotations: Annotations
  readonly labels: readonly InsetLabel[]
}

/** A tag as it is printed; on the page its button covers it. */
function tagMark({ box: { x, y, width, height }, text: words }: Tag): SVGTemplateResult {
  return svg`<rect class="tag-frame" x=${x} y=${y + Math.max(0, height / 2 - 14)} width=${width} height=${Math.min(28, height)} rx="6" />
    ${text(x + width / 2, y + height / 2, words, 'tag-text middle')}`
}

const text = (x: number, y: number, words: string, look = ''): SVGTemplateResult =>
  svg`<text class=${look} x=${x} y=${y} dy=".34em">${words}</text>`

/** "3 times the scale of the rest". */
const timesWords = (times: number): string =>
  times === 1 ? 'at the scale of the rest' : `${times} times the scale of the rest`

/** What the controller can give: "up to 120 V, limit 18 A". */
const limitWords = ({ volts, amps }: Drive, units: Units): string =>
  [
    volts === null ? '' : `up to ${told(volts, 'voltage', units)}`,
    amps === null ? '' : `limit ${told(amps, 'current', units)}`,
  ]
    .filter((words) => words !== '')
    .join(', ')

/** Colours of a moment, as style of the svg: cold where there is none. */
export const tints = (now: Moment | null): string =>
  (['winding', 'frame', 'switch'] as const)
    .map((node) => `--${node}:${heatColour(now ? now[`${node}C`] : HEAT_STOPS_C[0])}`)
    .join(';')

function heatKey({ key: { x, y, width }, k, narrow }: Sheet, units: Units): SVGTemplateResult {
  const [low, high] = [HEAT_STOPS_C[0], HEAT_STOPS_C[HEAT_STOPS_C.length - 1]]
  const bar = y + ROW * k + 2
  const share = (c: number) => (c - low) / (high - low)
  const shown = HEAT_STOPS_C.filter((c) => !narrow || c !== 90)
  const place = (c: number) => (c === low ? 'start' : c === high ? 'end' : 'middle')
  return svg`<defs><linearGradient id="heat">${HEAT_STOPS_C.map(
    (c) => svg`<stop offset=${share(c)} style=${`stop-color:var(--heat-${c})`} />`,
  )}</linearGradient></defs>
    ${text(x, y + (ROW / 2) * k, `temperature of the part, ${units.temperature}`, 'quiet')}
    <rect class="part" style="fill:url(#heat)" x=${x} y=${bar} width=${width} height="12" />
    ${shown.map((c) => text(x + share(c) * width, bar + 14 + (ROW / 2) * k, told(c, 'temperature', units).split('\u00a0')[0], `quiet ${place(c)}`))}`
}

/** Where the words under the floor stand. */
export function footPlaces(
  { foot: { x, y, width, height }, placement, k, narrow }: Sheet,
  drive: Drive,
  units: Units,
) {
  const bar = scaleBar(placement.scale, (narrow ? 0.18 : 0.24) * width, units)
  const broken = placement.stages.some(({ shortened }) => shortened)
  const standIn = isStandIn(drive)
  const words = standIn
    ? 'stand-in until you fill it in'
    : `${bar.text}, ${narrow ? '' : 'drawn '}to scale${broken ? ', belt broken' : ''}`
  const { name } = machineOf(drive.kind)
  const [long, wide] = [words, name].map((each) => textWidth(each, 13 * k))
  const rows = height > 1.5 * ROW * k
  const least = (rows ? 0 : x + bar.length + 22 + long) + wide / 2
  const middle = Math.min(
    width - wide / 2,
    Math.max(least, placement.machine.x + placement.machine.width / 2),
  )
  const row = (ROW / 2) * k
  return {
    bar: standIn ? 0 : bar.length,
    name: { text: name, x: middle, y: y + row, width: wide },
    words: { text: words, x: standIn ? x : x + bar.length + 10, y: y + row * (rows ? 3 : 1), width: long },
  }
}

function foot(sheet: Sheet, drive: Drive, units: Units): SVGTemplateResult {
  const { bar, name, words } = footPlaces(sheet, drive, units)
  const { x } = sheet.foot
  const ends = [0, bar / 2, bar].map((at) => `M${x + at} ${words.y - 4}v8`)
  return svg`${bar > 0 ? svg`<path class="inner bare" d=${`M${x} ${words.y}h${bar}${ends.join('')}`} />` : svg``}
    ${text(words.x, words.y, words.text, 'quiet')}${text(name.x, name.y, name.text, 'quiet middle')}`
}

/** All that stays while the moment moves. */
export function still({ drive, sheet, annotations, labels }: Drawing, units: Units): SVGTemplateResult {
  const { inset, cut, cutScale, times, controller, controllerText, placement, k, width, narrow } = sheet
  const { stages, shell, floor, unit } = placement
  const unitOf = cutScale * drive.shell
  const machine = machineOf(drive.kind)
  const spindle = stages[stages.length - 1].driven.at
  const stands = !machine.fromAbove
  const small = stages.slice(1)
  const most = inset.height / 2 - 34 * k
  return svg`
    ${text(inset.x, (ROW / 2) * k + 1, `Motor, cut open, ${timesWords(times)}`, 'quiet')}
    ${narrow ? svg`` : svg`<rect class="dotted" x=${inset.x} y=${inset.y} width=${inset.width} height=${inset.height} /><path class="dotted" d=${part.sightLines(sheet)} />`}
    <g class="unit" transform=${`translate(${cut.x} ${cut.y}) scale(${unitOf})`}>
      ${cutaway(drive.cooling, drive.cutoff, stages[0].driving.r / placement.scale / drive.shell, Math.min(0.62, most / unitOf))}
    </g>
    ${labels.map(({ leader: [from, to] }) => svg`<path class="dimension" d=${`M${from.x} ${from.y}L${to.x} ${to.y}`} /><circle class="dot" cx=${to.x} cy=${to.y} r="2" />`)}
    ${labels.map(({ name, at }) => text(at.x, at.y, name, 'quiet middle'))}
    ${heatKey(sheet, units)}
    ${stands ? svg`<path class="hatch" d=${hatch(0, floor, width, 7, 9)} /><path class="ground" d=${`M0 ${floor}H${width}`} />` : svg``}
    <g class="unit" transform=${`translate(${spindle.x} ${spindle.y}) scale(${unit})`}>${machine.draw((floor - spindle.y) / unit)}</g>
    ${stands && !narrow ? svg`<path class="post" d=${`M${controller.x + controller.width / 2} ${controller.y + controller.height}V${floor}`} />` : svg``}
    ${part.controllerBox(controller)}
    ${text(controllerText.x, controllerText.y + 11 * k, 'Controller', 'title')}
    ${text(controllerText.x, controllerText.y + (22 + 1.5 * ROW) * k, limitWords(drive, units), 'quiet')}
    ${part.wires(part.wireCurves(controller, shell, floor, narrow))}
    ${stands ? part.motorStand(shell, floor) : svg``}${part.motorEnd(shell)}
    ${stands ? small.map(({ driving }, n) => part.jackStand({ ...driving, r: stages[n].driven.r }, floor)) : svg``}
    ${annotations.lines.map(part.dimensionLine)}
    ${part.pulley(stages[0].driving)}${stages.map(({ driven }) => part.pulley(driven))}
    ${part.belt(stages[0])}
    ${small.map((stage) => svg`${part.pulley(stage.driving)}${part.belt(stage)}`)}
    <path class="centre" d=${[...stages.map(({ driven }) => driven), stages[0].driving].map(part.cross).join('')} />
    ${[...annotations.tags, ...annotations.speeds].map(({ leader }) => (leader ? svg`<path class="dimension" d=${`M${leader[0].x} ${leader[0].y}L${leader[1].x} ${leader[1].y}`} /><circle class="dot" cx=${leader[1].x} cy=${leader[1].y} r="1.75" />` : svg``))}
    ${annotations.tags.map(tagMark)}
    ${foot(sheet, drive, units)}`
}

/** The readings of a moment. */
export function readings(
  { sheet, annotations, labels }: Drawing,
  now: Moment | null,
  units: Units,
): SVGTemplateResult {
  const { controllerText: at, k } = sheet
  const rpm = (speed: number | undefined) =>
    speed === undefined ? `?${'\u00a0'}rpm` : told(Math.max(0, speed), 'angular speed', units)
  const speeds = [now?.motor, now?.spindle]
  return svg`${annotations.speeds.map(({ box }, n) => text(box.x + box.width / 2, box.y + box.height / 2, rpm(speeds[n]), 'number middle'))}
    ${labels.map(({ reads, at: { x, y } }) =>
      text(
        x,
        y + 19 * k,
        typeof reads === 'string' ? (now ? told(now[`${reads}C`], 'temperature', units) : '') : reads.always,
        'reading middle',
      ),
    )}
    ${text(at.x, at.y + (22 + ROW / 2) * k, now?.gives ?? '')}`
}
