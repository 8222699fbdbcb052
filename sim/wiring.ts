// Wiring and safety: what this drive needs to be connected without hurting anyone, as a checklist with its sources.
import { TOUCH_C } from './advise/air.ts'
import { longestDischarge, TOUCHABLE_VOLTS } from './advise/discharge.ts'
import { isDeadly } from './advise/supply.ts'
import { CAST_RIM, flywheelRim, runaway, TRIED } from './drive/runaway.ts'
import { SAFETY } from './handbook/safety.ts'
import type { Job } from './job.ts'
import type { Figures } from './judge.ts'
import { liveVolts } from './parts/supply.ts'
import { ratio } from './parts/belt.ts'
import type { Bench } from './parts/bench.ts'
import { topSpeed } from './steady/operating.ts'
import {
  type Fact,
  GROUPS,
  type Group,
  PRACTICE,
  type Statement,
  type StatementName,
} from './wiring/statement.ts'
import { stopTime } from './wiring/stopping.ts'

export { type Fact, GROUPS, type Group, type Statement, type StatementName } from './wiring/statement.ts'

/** Machines that are wet, and that throw dust, sparks and chips. */
const WET: readonly string[] = ['mill', 'wheel']
const DUSTY: readonly string[] = ['saw', 'lathe', 'grinder', 'drill']

const fact = (value: number, dimension: Fact['dimension']): Fact => ({ value, dimension })

/** Every statement that bears on a job, in the order of the work; in each group what is wrong as it stands comes first. */
export function wiringOf(job: Job, bench: Partial<Bench>, figures: Figures | null): readonly Statement[] {
  const { supply, cutoff, machine, controller } = job.parts
  const battery = supply.kind === 'battery'
  const mains = !battery
  const deadly = isDeadly(supply)
  const fitted = cutoff.fitted !== 'none'
  const fastest = Math.max(...job.duty.phases.map(({ speed }) => speed))
  const ac = supply.kind === 'ac'
  const top = topSpeed(job.parts)
  const wild = runaway(job.parts, bench.flywheelDiameter)
  const rim = flywheelRim(job.parts, fastest * ratio(job.parts.belt), bench.flywheelDiameter)
  const grinds = machine.kind === 'grinder'
  const plateSpeed = job.plate.speed
  const tooFast =
    wild.pulleyRim > CAST_RIM ||
    (wild.flywheelRim ?? 0) > CAST_RIM ||
    (plateSpeed !== undefined && wild.motor > TRIED * plateSpeed)
  const { capacitance, bleeder } = supply
  const peak = liveVolts(supply)
  const known = capacitance !== undefined && bleeder !== undefined
  const volts = { volts: fact(liveVolts(supply), 'voltage') }

  const ofBattery: Statement['facts'] = battery ? { battery: fact(1, 'number') } : {}

  const found: Statement[] = []
  const say = (
    when: boolean,
    group: Group,
    name: StatementName,
    source: string,
    facts: Statement['facts'] = {},
    wrong = false,
  ) => {
    if (when) found.push({ name, group, source, facts, wrong })
  }

  say(true, 'connect', 'electrician', PRACTICE)
  say(supply.kind === 'ac', 'connect', 'ac', PRACTICE, {}, true)
  say(deadly && supply.earth !== 'no', 'connect', 'earth', SAFETY.bonding)
  say(
    deadly && supply.earth === 'no',
    'connect',
    'earthOpen',
    SAFETY.bonding,
    { ...volts, ...ofBattery },
    true,
  )
  say(
    mains,
    'connect',
    'notIsolated',
    'closed circuit from the mains through the rectifier; common practice, no source',
  )
  say(mains, 'connect', 'noEarthedMeter', PRACTICE)
  say(
    mains,
    'connect',
    'residual',
    'IEC 62423 (type B residual-current devices; from memory)',
    WET.includes(machine.kind) ? { wet: fact(1, 'number') } : {},
  )
  say(deadly, 'connect', 'insulation', 'IEC 60204-1, clause 12 (conductors; from memory)', volts)
  say(true, 'connect', 'wireSize', 'your local electrical code')
  say(true, 'connect', 'rotation', PRACTICE)

  say(mains, 'protect', 'fuse', 'IEC 60204-1, 7.2 (overcurrent protection; from memory)', volts)
  say(battery, 'protect', 'batteryFuse', PRACTICE)
  say(true, 'protect', 'release', SAFETY.restart)
  say(fitted && cutoff.leads !== 'motor lead', 'protect', 'cutoffInCoil', SAFETY.overtemperature)
  say(
    fitted && cutoff.leads === 'motor lead',
    'protect',
    'cutoffInMotorLead',
    PRACTICE,
    { ...volts, amps: fact(controller.currentLimit, 'current') },
    true,
  )
  say(cutoff.leads === 'not connected', 'protect', 'cutoffLoose', PRACTICE, {}, true)
  say(fitted, 'protect', 'enableAlone', PRACTICE)
  say(true, 'protect', 'contacts', PRACTICE, { ...volts, ...ofBattery })
  say(
    mains && !ac && figures !== null,
    'protect',
    'outlet',
    'the breaker’s own rating; hours of load at four fifths of it: common practice',
    { amps: fact(figures?.outletAmps ?? 0, 'current'), breaker: fact(supply.breaker, 'current') },
    (figures?.outletAmps ?? 0) > supply.breaker,
  )

  say(known, 'touch', 'discharge', SAFETY.charged, {
    seconds: fact(
      known
        ? longestDischarge(capacitance, bleeder, mains ? supply.lineVolts : supply.volts / Math.SQRT2)
        : 0,
      'time',
    ),
    peak: fact(peak, 'voltage'),
    safe: fact(TOUCHABLE_VOLTS, 'voltage'),
  })
  say(!known && peak > TOUCHABLE_VOLTS, 'touch', 'dischargeUnknown', SAFETY.charged, {
    safe: fact(TOUCHABLE_VOLTS, 'voltage'),
  })
  say(mains, 'touch', 'pins', SAFETY.pins)
  say(true, 'touch', 'unplug', PRACTICE, ofBattery)
  say(battery, 'touch', 'charger', PRACTICE)
  say(figures !== null && figures.hottestFrameC.value > TOUCH_C, 'touch', 'frame', SAFETY.burns, {
    frame: fact(figures?.hottestFrameC.value ?? 0, 'temperature'),
    limit: fact(TOUCH_C, 'temperature'),
  })

  say(true, 'moving', 'guards', 'IEC 60204-1 defers to ISO 12100 (guards; from memory)')
  say(true, 'moving', 'thread', PRACTICE)
  say(true, 'moving', 'reverse', 'closed form: inertia against drag, belt taken as tight', {
    stop: fact(stopTime(job.parts, fastest), 'time'),
    ...(top > fastest ? { full: fact(stopTime(job.parts, top), 'time') } : {}),
  })
  say(true, 'moving', 'knob', PRACTICE)
  say(
    rim !== null && rim > CAST_RIM,
    'moving',
    'flywheel',
    SAFETY.castRim,
    { rim: fact(rim ?? 0, 'speed'), limit: fact(CAST_RIM, 'speed') },
    true,
  )
  say(
    grinds,
    'moving',
    'wheelMark',
    SAFETY.wheel,
    {
      asked: fact(fastest, 'angular speed'),
      wild: fact(wild.spindle, 'angular speed'),
      ...(machine.wheelSpeed === undefined ? {} : { printed: fact(machine.wheelSpeed, 'angular speed') }),
    },
    machine.wheelSpeed !== undefined && Math.max(fastest, wild.spindle) > machine.wheelSpeed,
  )
  // A motor that stands on AC does not run away.
  say(
    !ac,
    'moving',
    supply.kind === 'bare bridge' ? 'bridge' : 'overspeed',
    `volts over the motor constant; ${SAFETY.castRim}`,
    {
      motor: fact(wild.motor, 'angular speed'),
      spindle: fact(wild.spindle, 'angular speed'),
      rim: fact(wild.pulleyRim, 'speed'),
      ...(wild.flywheelRim === null ? {} : { flywheel: fact(wild.flywheelRim, 'speed') }),
      limit: fact(CAST_RIM, 'speed'),
    },
    tooFast,
  )
  say(true, 'use', 'chips', PRACTICE)
  say(DUSTY.includes(machine.kind) || battery, 'use', 'sparks', PRACTICE)
  say(DUSTY.includes(machine.kind), 'use', 'eyes', SAFETY.eyes)
  say(true, 'use', 'noLifting', 'this drive has one quadrant: it can neither hold nor lower')

  return found.sort(
    (a, b) => GROUPS.indexOf(a.group) - GROUPS.indexOf(b.group) || Number(b.wrong) - Number(a.wrong),
  )
}
