// One panel of the map: minutes until the cutoff opens over speed and torque, with the job's marks on it.
import { type SVGTemplateResult, svg } from 'lit'
import { fromUnit, toUnit } from '../../sim/quantity.ts'
import { grouped } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import type { HeatMap } from '../../sim/studies/map.ts'
import { placeLabels, type Rect, textWidth, type Wanted } from './label.ts'
import { bandColour, fieldOf, LEVELS } from './mapField.ts'
import { evenWithin } from './scale.ts'
import { roundStep, valueAxis } from './scales.ts'

export interface MapDrawing {
  readonly width: number
  readonly height: number
  readonly bottom: number
  readonly drawn: SVGTemplateResult
  /** px → rad/s and N·m, held inside. */
  at(x: number, y: number): { speed: number; torque: number }
  readonly x: (speed: number) => number
  /** The cross-hair at a speed and torque. */
  cross(speed: number, torque: number): SVGTemplateResult
}

const HEIGHT = 330
const MARK = 7

/** The panel drawn; `k`: how much text is enlarged. Null where there is no room. */
export function mapDrawing(
  map: HeatMap,
  index: number,
  units: Units,
  width: number,
  k: number,
): MapDrawing | null {
  const panel = map.panels[index]
  const { speeds, torques, marks, fitted } = map
  const box = { left: Math.round(40 * k), right: width - 10, top: 22 * k, bottom: (22 + HEIGHT) * k }
  if (box.right - box.left < 120) return null
  const unit = unitFor('torque', units)
  const [slowest, fastest, top] = [speeds[0], speeds[speeds.length - 1], torques[torques.length - 1]]
  const x = evenWithin([slowest, fastest], [box.left, box.right])
  const y = evenWithin([0, top], [box.bottom, box.top])
  const field = fieldOf(map, panel, x, y)
  const ticks = valueAxis(0, top, unit).ticks.filter(({ value }) => value <= top * (1 + 1e-9))
  const [from, until] = [toUnit(slowest, 'rpm'), toUnit(fastest, 'rpm')]
  const step = roundStep(0, until, Math.max(3, Math.floor((box.right - box.left) / (90 * k))))
  const rpms = Array.from({ length: Math.floor(until / step + 1e-9) }, (_, n) => (n + 1) * step).filter(
    (n) => n >= from,
  )

  const row = 20 * k
  const size = (text: string, type = 13) => ({
    width: textWidth(text, type * k) * 1.08 + 16 * k,
    height: row,
  })
  const spotsAlong = (line: readonly (readonly [number, number])[], pill: { width: number }) =>
    [0.8, 0.65, 0.9, 0.5, 0.35, 0.2, 0.1].flatMap((share) => {
      const point = line[Math.round(share * (line.length - 1))]
      return point ? [[point[0] - pill.width / 2, point[1] - row / 2] as const] : []
    })
  const taken: Rect[] = marks.map(({ speed, torque, low, high }) => ({
    x: x(speed) - MARK,
    y: Math.min(y(high), y(torque) - MARK),
    width: 2 * MARK,
    height: Math.max(y(low) - y(high), 2 * MARK),
  }))
  const beside = (speed: number, middle: number, text: string, lift: readonly number[]): Wanted => {
    const pill = size(text)
    const spots = lift.flatMap((by) => [
      [x(speed) - MARK - 6 - pill.width, middle - row / 2 + by * row] as const,
      [x(speed) + MARK + 6, middle - row / 2 + by * row] as const,
    ])
    return { text, ...pill, spots }
  }
  const markLabels = marks.map(({ name, speed, torque, low, high }) =>
    beside(speed, y(torque), high > low ? `${name}, averaged` : name, [0, 0.5, -0.5]),
  )
  const surging = marks.filter(({ low, high }) => high > low)
  const surgeLabels = surging.map(({ speed, high }) => beside(speed, y(high), 'surges', [0, 0.5, -0.5]))
  /** A name for a region, in its middle, where it is high enough. */
  const inside = (text: string, of: (n: number) => readonly [number, number], type = 13): Wanted => {
    const pill = size(text, type)
    const order = [0.5, 0.7, 0.3, 0.85, 0.15].map((share) => Math.round(share * (speeds.length - 1)))
    const spots = order.flatMap((n) => {
      const [above, below] = of(n)
      const middle = (above + below) / 2
      const x0 = Math.min(box.right - pill.width, Math.max(box.left, x(speeds[n]) - pill.width / 2))
      return below - above > 1.3 * row ? [[x0, middle - row / 2] as const] : []
    })
    return { text, ...pill, spots }
  }
  const { columns } = panel
  const safeTop = (n: number) => y(Math.min(columns[n].never, columns[n].most, top))
  const regions = [
    inside(fitted ? 'never opens' : 'keeps its class', (n) => [safeTop(n), box.bottom], 16),
    inside('more than the amps hold: it stands', (n) => [box.top, y(Math.min(columns[n].most, top))]),
  ]
  const levelLabels = LEVELS.map((minutes, n): Wanted => {
    const text = `${minutes}\u00a0min`
    const pill = size(text)
    return { text, ...pill, spots: spotsAlong(field.levels[n], pill) }
  })
  const lineLabels = [
    { text: 'winding at its class', lines: field.cool, look: 'bad' },
    { text: 'volts run out', lines: field.short, look: 'quiet' },
  ].map(({ text, lines, look }) => {
    const pill = size(text)
    const [line] = [...lines].sort((a, b) => b.length - a.length)
    const spots = line ? spotsAlong(line, pill).map(([a, b]) => [a, b + 0.65 * row] as const) : []
    return { look, wanted: { text, ...pill, spots } }
  })
  const wanted = [
    ...markLabels,
    ...surgeLabels,
    ...regions,
    ...levelLabels,
    ...lineLabels.map((each) => each.wanted),
  ]
  const places = placeLabels(wanted, taken, [...field.never, ...field.levels, ...field.cool, field.most], {
    x: box.left,
    y: box.top,
    width: box.right - box.left,
    height: box.bottom - box.top,
  })
  const pillsFrom = markLabels.length + surgeLabels.length
  const looks = [
    ...markLabels.map(() => 'strong pill'),
    ...surgeLabels.map(() => 'pill'),
    'region',
    'quiet',
    ...levelLabels.map(() => 'strong pill'),
    ...lineLabels.map(({ look }) => look),
  ]
  const shape = (lines: readonly (readonly (readonly [number, number])[])[]) =>
    lines.map((line) => `M${line.map(([a, b]) => `${a.toFixed(1)},${b.toFixed(1)}`).join('L')}`).join('')
  const id = `map-${index}`
  return {
    width,
    height: box.bottom + 3.9 * row,
    bottom: box.bottom,
    x,
    at: (px, py) => ({ speed: x.at(px), torque: y.at(py) }),
    cross: (speed, torque) =>
      svg`<path class="scrubber" d="M${x(speed)},${box.top}V${box.bottom}M${box.left},${y(torque)}H${box.right}" />
        <circle class="crossing" cx=${x(speed)} cy=${y(torque)} r="4.5" />`,
    drawn: svg`
      <clipPath id="${id}-plot"><rect x=${box.left} y=${box.top} width=${box.right - box.left} height=${box.bottom - box.top} /></clipPath>
      <clipPath id="${id}-ends"><path d=${field.ends} /></clipPath>
      <text class="tick" x=${box.left} y=${box.top - 8 * k}>${unit}</text>
      <g clip-path="url(#${id}-plot)">
        <path d=${field.ends} style="fill: ${bandColour(-1)}" />
        <g clip-path="url(#${id}-ends)">
          ${field.bands.map((d, n) => svg`<path class="contour" d=${d} style="fill: ${bandColour(n)}" />`)}
        </g>
        <path class="over" d=${field.over} />
        <path class="limit" d=${shape([field.most])} fill="none" />
        <path class="limit" d=${shape(field.short)} fill="none" />
        <path class="limit warning" d=${shape(field.cool)} fill="none" />
        <path class="never" d=${shape(field.never)} />
      </g>
      <rect class="frame" x=${box.left} y=${box.top} width=${box.right - box.left} height=${box.bottom - box.top} />
      ${ticks.map(
        ({
          value,
          text,
        }) => svg`<line class="base" x1=${box.left - 5} x2=${box.left} y1=${y(value)} y2=${y(value)} />
          <text class="tick" x=${box.left - 9} y=${y(value)} dy="0.34em" text-anchor="end">${text}</text>`,
      )}
      ${rpms.map(
        (
          rpm,
        ) => svg`<line class="base" x1=${x(fromUnit(rpm, 'rpm'))} x2=${x(fromUnit(rpm, 'rpm'))} y1=${box.bottom} y2=${box.bottom + 5} />
          <text class="tick" x=${x(fromUnit(rpm, 'rpm'))} y=${box.bottom + row} text-anchor="middle">${grouped(rpm, 0)}</text>`,
      )}
      <text class="tick" x=${box.right} y=${box.bottom + 2.1 * row} text-anchor="end">spindle speed, rpm</text>
      ${surging.map(
        ({ speed, low, high }) =>
          svg`<path class="surging" d="M${x(speed)},${y(low)}V${y(high)}" /><path class="base" d="M${x(speed) - 6},${y(low)}h12M${x(speed) - 6},${y(high)}h12" />`,
      )}
      ${marks.map(
        ({ speed, torque }) =>
          svg`<circle class="point" cx=${x(speed)} cy=${y(torque)} r=${MARK} /><circle cx=${x(speed)} cy=${y(torque)} r="2" fill="var(--ink)" />`,
      )}
      ${wanted.map(({ text }, n) => {
        const place = places[n]
        if (!place) return svg``
        const middle = place.x + place.width / 2
        return svg`${
          looks[n].includes('pill')
            ? svg`<rect class="pill ${n < pillsFrom ? 'of-mark' : ''}" x=${place.x} y=${place.y} width=${place.width} height=${place.height} rx=${place.height / 2} />`
            : svg``
        }<text class="label ${looks[n]}" x=${middle} y=${place.y + place.height / 2} dy="0.34em" text-anchor="middle">${text}</text>`
      })}`,
  }
}

/** Where a key takes the cross-hair: a per cent of the range, or ten with Shift; undefined: no key of its. */
export function mapKey(
  key: string,
  shift: boolean,
  { speed, torque }: { speed: number; torque: number },
  { speeds, torques }: Pick<HeatMap, 'speeds' | 'torques'>,
): { speed: number; torque: number } | undefined {
  const [slowest, fastest, top] = [speeds[0], speeds[speeds.length - 1], torques[torques.length - 1]]
  const part = shift ? 0.1 : 0.01
  const hold = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value))
  const across = (by: number) => ({ speed: hold(speed + by * (fastest - slowest), slowest, fastest), torque })
  const up = (by: number) => ({ speed, torque: hold(torque + by * top, 0, top) })
  switch (key) {
    case 'ArrowRight':
      return across(part)
    case 'ArrowLeft':
      return across(-part)
    case 'ArrowUp':
      return up(part)
    case 'ArrowDown':
      return up(-part)
    case 'PageUp':
      return up(0.1)
    case 'PageDown':
      return up(-0.1)
    case 'Home':
      return { speed: slowest, torque }
    case 'End':
      return { speed: fastest, torque }
    default:
      return undefined
  }
}
