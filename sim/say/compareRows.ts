// The table of a comparison with the old motor, a speed at a time.
import type { Job } from '../job.ts'
import type { Met } from '../rival/compare.ts'
import type { Rival } from '../rival/rival.ts'
import { MINUTES, SECONDS } from '../rival/strength.ts'
import { WITH } from './compare.ts'
import { brief, duration, ratioText, show } from './number.ts'
import type { Units } from './units.ts'

/** A row of the table: torques of the cut with the old motor and with this one, in the reader's unit. */
export interface CompareRow {
  readonly label: string
  readonly old: string
  readonly motor: string
  readonly note: string
}

const LIMITS: Readonly<Record<Met['motor']['limit'], string>> = {
  winding: 'the winding limits',
  switch: 'the cutoff limits',
  runaway: 'heat limits',
  current: 'the current limit',
  voltage: 'volts run out',
  belt: 'the belt slips',
}

/** The table of one speed. */
export function compareRows(
  { old, motor, allDay, step }: Met,
  job: Job,
  rival: Rival,
  units: Units,
): CompareRow[] {
  const torque = (value: number) => show(value, 'torque', units).number
  const { cooling } = job.parts.heat
  const others = allDay.filter((each) => each.cooling !== cooling)
  const factor =
    rival.kind === 'DC' ? '' : `old: service factor ${brief(Number(rival.serviceFactor.toPrecision(3)))}`
  const dutyNote = rival.kind === 'DC' ? '' : 'old: all day'
  return [
    {
      label: 'All day',
      old: torque(old.allDay),
      motor: torque(motor.allDay),
      note: `old: ${ratioText(step.ratio)}`,
    },
    ...others.map((each) => ({
      label: `  ${WITH[each.cooling] === 'without' ? 'without a fan' : WITH[each.cooling]}`,
      old: '',
      motor: torque(each.torque),
      note: '',
    })),
    ...(motor.duty === null || old.duty === null
      ? []
      : [
          {
            label: 'For this duty',
            old: torque(old.duty),
            motor: torque(motor.duty),
            note: dutyNote,
          },
        ]),
    { label: duration(MINUTES), old: torque(old.minutes), motor: torque(motor.minutes), note: factor },
    {
      label: duration(SECONDS),
      old: torque(old.seconds),
      motor: torque(motor.seconds),
      note: LIMITS[motor.limit],
    },
    { label: 'Standing', old: torque(old.start), motor: torque(motor.start), note: '' },
  ]
}
