// Zones E to H: ratio, map, torque, how sure, limits; each as it comes out for jobs that differ, and in every state.
import { html } from 'lit'
import { limitsCard } from '../../../sim/say/limitsCard.ts'
import type { Units } from '../../../sim/say/units.ts'
import type { AgainstOld } from '../../../sim/rival/picture.ts'
import type { LimitsStudy } from '../../../sim/studies/limits.ts'
import type { HeatMap } from '../../../sim/studies/map.ts'
import type { RatioStudy } from '../../../sim/studies/ratio.ts'
import type { Sure } from '../../../sim/studies/sure.ts'
import { NO_OLD_MOTOR } from '../../change/noOldMotor.ts'
import type { OldMotor } from '../../change/oldMotor.ts'
import type { Work } from '../../study/work.ts'
import '../../zone/against.ts'
import '../../zone/limits.ts'
import '../../zone/map.ts'
import '../../zone/ratio.ts'
import '../../zone/sure.ts'
import { type Case, type Group, work } from '../case.ts'
import { jobOf, studies } from '../data.ts'
import type { MadeName } from '../made.ts'
import { OLD, OLD_STEPS } from '../oldMotors.ts'

type Drawn<T> = (id: string, title: string, made: Work<T>, job?: MadeName, stale?: boolean) => Case

/** The states every study may be in, drawn alike; before it is begun most draw nothing. */
const states = <T>(name: string, drawn: Drawn<T>, result: T): readonly Case[] => [
  drawn(`${name}-working`, 'Working', work.working),
  drawn(`${name}-again`, 'Working, the older one still there', work.again(result), 'mill', true),
  drawn(`${name}-stopped`, 'Stopped', work.stopped),
  drawn(`${name}-stale`, 'Stopped, of other inputs', work.stale(result), 'mill', true),
  drawn(`${name}-failed`, 'Came to nothing', work.failed),
]

const ratio: Drawn<RatioStudy> = (id, title, made, job = 'mill', stale = false) => ({
  ...{ id, title },
  draw: (units) =>
    html`<ratio-zone .work=${made} ?stale=${stale} .job=${jobOf(job)} .units=${units} .series=${'A'}></ratio-zone>`,
})

const map: Drawn<HeatMap> = (id, title, made, _job, stale = false) => ({
  ...{ id, title },
  draw: (units) => html`<map-zone .work=${made} ?stale=${stale} .units=${units}></map-zone>`,
})

const sure: Drawn<Sure> = (id, title, made, job = 'mill', stale = false) => ({
  ...{ id, title },
  draw: (units) =>
    html`<sure-zone .work=${made} ?stale=${stale} .job=${jobOf(job)} .units=${units}></sure-zone>`,
})

const limits: Drawn<LimitsStudy> = (id, title, made, job = 'mill', stale = false) => ({
  ...{ id, title },
  draw: (units) =>
    html`<limits-zone .work=${made} ?stale=${stale} .job=${jobOf(job)} .units=${units} .name=${'Orchard workshop apple mill'}></limits-zone>`,
})

const torque = (id: string, title: string, made: Work<AgainstOld>, old: OldMotor = NO_OLD_MOTOR): Case => ({
  ...{ id, title },
  draw: (units) =>
    html`<against-zone .work=${made} .old=${old} .job=${jobOf('mill')} .units=${units}></against-zone>`,
})

const card = (title: string, study: LimitsStudy) => (units: Units) =>
  html`<limits-card .card=${limitsCard(title, study, units)}></limits-card>`

const LONG_NAME = 'The cider club’s second apple mill, rebuilt from a treadmill, behind the barn'

export const studied: readonly Group[] = [
  {
    title: 'Minutes until the cutoff opens',
    cases: [
      map('map-mill', 'No fan, and with the fan', work.done(studies.map.mill)),
      map('map-saw', 'Closed frame', work.done(studies.map.saw)),
      map('map-none', 'No cutoff: until the winding passes its class', work.done(studies.map.burnt)),
      ...states('map', map, studies.map.mill),
    ],
  },
  {
    title: 'Work and rest',
    cases: [
      limits('limits-mill', 'Short runs and long rests', work.done(studies.limits.mill)),
      limits('limits-well', 'Nothing stops it', work.done(studies.limits.well), 'well'),
      ...states('limits', limits, studies.limits.mill),
      { id: 'card', title: 'The card', draw: card('Orchard workshop apple mill', studies.limits.mill) },
      { id: 'card-long', title: 'The card with a long name', draw: card(LONG_NAME, studies.limits.well) },
    ],
  },
  {
    title: 'Which belt ratio',
    cases: [
      ratio('ratio-mill', 'A window that works', work.done(studies.ratio.mill)),
      ratio('ratio-saw', 'Two stages', work.done(studies.ratio.saw), 'saw'),
      ...states('ratio', ratio, studies.ratio.mill),
    ],
  },
  {
    title: 'Against the old motor',
    cases: [
      torque('torque-alone', 'No old motor told', work.done(studies.against.alone)),
      torque('torque-old', 'Beside an old motor', work.done(studies.against.old), OLD),
      torque(
        'torque-steps',
        'Beside an old motor with two steps',
        work.done(studies.against.steps),
        OLD_STEPS,
      ),
      torque('torque-refused', 'A plate that is refused', work.done(studies.against.alone), {
        ...OLD,
        power: '-3 hp',
      }),
      torque('torque-empty', 'Not there yet', work.empty),
      torque('torque-failed', 'Came to nothing', work.failed),
    ],
  },
  {
    title: 'How sure',
    cases: [
      sure('sure-mill', 'It may fail', work.done(studies.sure.mill)),
      sure('sure-empty', 'Not there yet', work.empty),
      sure('sure-well', 'It nearly always lasts', work.done(studies.sure.well), 'well'),
      ...states('sure', sure, studies.sure.mill),
    ],
  },
]
