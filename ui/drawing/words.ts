// The drawing in words: one sentence, and a list of what it shows at the moment.
import { ratioText, told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { type Drive, isStandIn } from './drive.ts'
import { machineOf } from './machines.ts'

const COOLING: Readonly<Record<string, string>> = {
  'shaft fan': 'a fan on its shaft',
  blower: 'a separate blower',
  none: 'its fan removed',
  enclosed: 'a closed frame and no fan',
  'enclosed, outer fan': 'a closed frame and a fan outside',
}

/** The drive line in a sentence. */
export function driveSentence(drive: Drive, units: Units): string {
  const machine = machineOf(drive.kind).name.split(',')[0]
  const motor = `a motor with ${COOLING[drive.cooling] ?? 'cooling not said'}`
  if (isStandIn(drive)) return `Drive line, pulleys not given yet: ${motor} drives the ${machine} by a belt.`
  const length = (metres: number) => told(metres, 'length', units)
  const ratio = drive.stages.reduce((product, { driving, driven }) => (product * driven) / driving, 1)
  const stages = drive.stages
    .map(
      ({ driving, driven, centres }) => `${length(driving)} on ${length(driven)}, ${length(centres)} apart`,
    )
    .join(', then by a jackshaft ')
  return `Drive line, to scale: ${motor} drives the ${machine} by a belt, ${stages}, ${ratioText(ratio)}.`
}
