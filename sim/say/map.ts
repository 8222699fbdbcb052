// The map in sentences: how long without a pause, what ends it, and what limits a speed and torque.
import type { Cooling, HeatMap, MapPanel } from '../studies/map.ts'
import type { MapPoint } from '../studies/map/warming.ts'
import { clockTime, duration, told } from './number.ts'
import type { Units } from './units.ts'

/** Over a panel, and in a sentence. */
export const COOLING_TITLE: Readonly<Record<Cooling, string>> = {
  none: 'No fan',
  'shaft fan': 'With shaft fan',
  blower: 'With blower',
  enclosed: 'Enclosed, no fan',
  'enclosed, outer fan': 'Enclosed, with outer fan',
}
const COOLING_WORDS: Readonly<Record<Cooling, string>> = {
  none: 'without a fan',
  'shaft fan': 'with the shaft fan',
  blower: 'with a blower',
  enclosed: 'without the outer fan',
  'enclosed, outer fan': 'with the outer fan',
}

/** When it ends, in clock form for tables and readouts: "25:20", "never". */
export const endText = ({ seconds }: Pick<MapPoint, 'seconds'>): string =>
  seconds === Infinity ? 'never' : clockTime(seconds)

/** What ends it and when: "the cutoff opens in 25 min 20 s"; "the cutoff never opens". */
export function endWords({ seconds, ends }: MapPoint, map: Pick<HeatMap, 'fitted'>): string {
  if (ends === 'opens')
    return seconds === 0 ? 'the cutoff is open already' : `the cutoff opens in ${duration(seconds)}`
  if (ends === 'burns') return `the winding burns out in ${duration(seconds)}, and nothing stops it`
  if (ends === 'class') return `the winding passes its class in ${duration(seconds)}`
  return map.fitted ? 'the cutoff never opens' : 'the winding keeps its class for good'
}

/** The winding, where it passes its class before anything stops it; '' where it does not. */
export function classWords({ classAt, ends }: MapPoint): string {
  if (ends === 'class' || classAt === Infinity) return ''
  return `the winding passes its class ${ends === null ? 'after' : 'before that, at'} ${duration(classAt)}`
}

/** What keeps it from the asked speed; '' where nothing does. */
export function limitWords({ limit, limitedAt, speed, ends }: MapPoint, units: Units): string {
  const reached = told(speed, 'angular speed', units)
  if (limit === 'stall') return 'it stands: more than the controller’s current limit holds'
  if (limit === 'current') return `the current limit holds it at ${reached}`
  if (limit === 'slip') return 'the belt slips'
  const late =
    ends === null || limitedAt === Infinity
      ? ''
      : limitedAt === 0
        ? 'the current limit keeps it from its speed'
        : `the current limit takes its speed at ${duration(limitedAt)}`
  return [limit === 'voltage' ? `the volts give only ${reached}` : '', late].filter(Boolean).join('; ')
}

/** A point of the map in one piece: "350 rpm, 4.5 lbf·ft: the cutoff opens in 25 min 20 s; …". */
export function pointWords(
  point: MapPoint,
  speed: number,
  torque: number,
  map: Pick<HeatMap, 'fitted'>,
  units: Units,
): string {
  const place = `${told(speed, 'angular speed', units)}, ${told(torque, 'torque', units)}`
  return `${place}: ${[endWords(point, map), classWords(point), limitWords(point, units)].filter(Boolean).join('; ')}`
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

/** What comes of a mark without a pause: "Milling without a pause: the cutoff opens in 25 min 20 s; …". */
export function markWords(map: HeatMap, panel: MapPanel, n: number, units: Units): string {
  const point = panel.marks[n]
  const what = panel.edges[n]
    ? `just on the edge: ${map.fitted ? 'the cutoff opens' : 'the winding passes its class'} after hours, or never`
    : endWords(point, map)
  const rest = [classWords(point), limitWords(point, units)].filter(Boolean)
  return `${capital(map.marks[n].name)} without a pause: ${[what, ...rest].join('; ')}.`
}

/** What never ends, slow, midway and fast: "Without a fan the cutoff never opens up to 2.7 lbf·ft at 112 rpm, …". */
export function neverSentence(map: HeatMap, { columns, cooling }: MapPanel, units: Units): string {
  const { speeds, torques } = map
  const last = speeds.length - 1
  const never = (n: number) => {
    const most = Math.min(columns[n].never, columns[n].most, torques[torques.length - 1])
    const at = told(speeds[n], 'angular speed', units)
    return most > 0 ? `${told(most, 'torque', units)} at ${at}` : `nothing at all at ${at}`
  }
  const holds = map.fitted ? 'the cutoff never opens' : 'the winding keeps its class'
  const at = [0, Math.round(last / 2), last].map(never)
  return `${capital(COOLING_WORDS[cooling])} ${holds} up to ${at[0]}, ${at[1]}, ${at[2]}.`
}

/** What is on a panel, in words: the job's steps, and what never ends. */
export const panelSentence = (map: HeatMap, panel: MapPanel, units: Units): string =>
  [...map.marks.map((_, n) => markWords(map, panel, n, units)), neverSentence(map, panel, units)].join(' ')

/** What plain paper means. */
export const plainWords = (map: HeatMap): string => {
  if (!map.fitted)
    return 'No cutoff is fitted: the minutes are those until the winding passes its class. Plain: as long as you like.'
  const over = map.panels.some(({ columns }) => columns.some(({ cool, never }) => cool < never))
  return over
    ? 'Plain: the cutoff never opens; under the dashed red line the winding keeps its class too, as long as you like.'
    : 'Plain: as long as you like.'
}

/** How the marks are meant. */
export const heatNote = ({ marks }: HeatMap, units: Units): string =>
  marks
    .filter(({ low, high }) => high > low)
    .map(
      ({ name, torque, low, high }) =>
        `${capital(name)} goes between ${told(low, 'torque', units)} and ${told(high, 'torque', units)}, and heats as ${told(torque, 'torque', units)} held.`,
    )
    .join(' ')

/** What the minutes count to. */
export const untilWords = ({ fitted }: Pick<HeatMap, 'fitted'>): string =>
  fitted ? 'Minutes until the cutoff opens' : 'Minutes until the winding passes its class'
