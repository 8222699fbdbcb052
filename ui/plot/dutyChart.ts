// The duty strip: the torque the job asks of the spindle over time, surges included.
import { type SVGTemplateResult, svg } from 'lit'
import { cycleSeconds, type Duty, type Phase, phaseSeconds } from '../../sim/duty.ts'
import { cutTorque } from '../../sim/parts/machine.ts'
import { duration, show, told } from '../../sim/say/number.ts'
import { unitFor } from '../../sim/say/units.ts'
import { type Chart, type Level, levelTexts } from './chart.ts'
import { gridMark, valueTicks } from './layers/axis.ts'
import { type Scales, valueAxis } from './scales.ts'
import { boxOf, scalesIn, type View } from './view.ts'

const HEIGHT = 62
/** Narrower than this, surges or cycles are drawn as a block up to their height. px */
const TOOTH = 2
const CYCLE = 2

/** Torque of a phase's cut at its asked speed, without and with its surge, N·m at the spindle. */
function torques({ cut, speed, surge }: Phase): { base: number; peak: number } {
  const base = speed > 0 ? cutTorque(cut, 0, speed) : 0
  return { base, peak: speed > 0 && surge ? cutTorque(cut, surge.torque, speed) : base }
}

/** A stretch of one torque: s, N·m. */
export interface Step {
  readonly from: number
  readonly until: number
  readonly torque: number
}

/**
 * The duty in steps over [from, to], s: cut and surges, at their own times. Surges closer together than `least` s
 * become one step as high as they are; so does the whole duty where a cycle is shorter than that.
 */
export function dutySteps(
  duty: Duty,
  from: number,
  to: number,
  least: number,
): { base: Step[]; surges: Step[] } {
  const until = Math.min(to, duty.seconds)
  const cycle = cycleSeconds(duty)
  const base: Step[] = []
  const surges: Step[] = []
  if (cycle <= 0) return { base, surges }
  if (cycle < least) {
    const all = duty.phases.map(torques)
    base.push({ from, until, torque: Math.max(...all.map((torque) => torque.base)) })
    surges.push({ from, until, torque: Math.max(...all.map(({ peak }) => peak)) })
    return { base, surges }
  }
  for (let start = Math.floor(from / cycle) * cycle; start < until; start += cycle) {
    let t = start
    for (const phase of duty.phases) {
      const end = Math.min(until, t + phaseSeconds(phase))
      const torque = torques(phase)
      if (end > Math.max(from, t)) {
        base.push({ from: t, until: end, torque: torque.base })
        const { surge } = phase
        if (surge && torque.peak > torque.base) {
          if (surge.every < least) surges.push({ from: t, until: end, torque: torque.peak })
          else
            for (let s = t; s < end; s += surge.every)
              if (s + surge.lasts > from)
                surges.push({ from: s, until: Math.min(end, s + surge.lasts), torque: torque.peak })
        }
      }
      t += phaseSeconds(phase)
    }
  }
  return { base, surges }
}

const blocks = (steps: readonly Step[], { x, y, box }: Scales, look: string): SVGTemplateResult => {
  const path = steps.map(({ from, until, torque }) => {
    const left = Math.max(box.left, x(from)).toFixed(1)
    const right = Math.min(box.right, x(until)).toFixed(1)
    return `M${left},${box.bottom}V${y(torque).toFixed(1)}H${right}V${box.bottom}`
  })
  return svg`<path class="duty ${look}" d=${path.join('')} />`
}

const named = ({ name }: Phase, index: number): string => name || `step ${index + 1}`

/** Torque asked at the spindle over time, of the active variant's job. */
export function dutyChart(view: View): Chart {
  const { duty } = view.active.job
  const { units, narrow } = view
  const unit = unitFor('torque', units)
  const all = duty.phases.map((phase, index) => ({ phase, name: named(phase, index), ...torques(phase) }))
  const axis = valueAxis(0, Math.max(...all.map(({ peak }) => peak), 0.1), unit)
  const few = axis.ticks.filter((_tick, index) => index % 2 === 0 || axis.ticks.length < 4)
  const { box, height } = boxOf(view, HEIGHT, false)
  const scales = scalesIn(view, box, { ...axis, ticks: few })
  const { base, surges } = dutySteps(duty, view.from, view.to, Math.max(TOOTH, CYCLE) * view.perPixel)

  const hardest = all.reduce((so, next) => (next.peak > so.peak ? next : so))
  const levels: Level[] = [
    {
      text: `${hardest.name}${hardest.phase.name ? '' : ':'} ${show(hardest.base, 'torque', units).number}`,
      look: 'quiet',
      value: hardest.base,
    },
  ]
  if (hardest.peak > hardest.base)
    levels.unshift({
      text: `surges to ${show(hardest.peak, 'torque', units).number}`,
      look: 'quiet',
      value: hardest.peak,
    })

  const steps = all.map(({ phase, name, base: torque, peak }) => {
    const surge = peak > torque ? `, surges to ${told(peak, 'torque', units)}` : ''
    const what = phase.speed > 0 ? `${told(torque, 'torque', units)}${surge}` : 'controller off'
    return `${name} ${duration(phase.seconds)} (${what})`
  })
  const listed = steps.length > 6 ? `${steps.length} steps` : steps.join(', ')
  return {
    ...{
      id: 'duty',
      title: 'Duty',
      unit: `torque at the spindle, ${unit}`,
      hint: narrow ? '' : 'drag the edges of the first cycle, or type below; it repeats',
      height,
      scales,
      reads: '',
      readings: () => [],
    },
    words: `Torque asked at the spindle: ${listed}; repeated for ${duration(duty.seconds)}.`,
    table: () => ({
      head: ['Step', 'Lasts', 'Speed, rpm', `Torque, ${unit}`, `In a surge, ${unit}`],
      rows: all.map(({ phase, name, base: torque, peak }) => [
        name,
        duration(phase.seconds),
        show(phase.speed, 'angular speed', units).number,
        show(torque, 'torque', units).number,
        peak > torque ? show(peak, 'torque', units).number : '–',
      ]),
    }),
    still: svg`
      ${gridMark(scales, { ...axis, ticks: few }, view.times)}
      ${valueTicks(scales, { ...axis, ticks: few })}
      ${blocks(surges, scales, 'surge')}${blocks(base, scales, 'cut')}`,
    over: narrow ? svg`` : levelTexts({ ...view, variants: [] }, scales, levels).marks,
  }
}
