// Lessons in words: a few sentences, a table and questions, each answer written from the computed numbers.
import { type Fact, type Facts, LESSON_TITLES, type LessonName } from '../lessons/lesson.ts'
import { toUnit } from '../quantity.ts'
import { brief, duration, NBSP, percent, ratioText, told } from './number.ts'
import type { Units } from './units.ts'

export interface Question {
  readonly ask: string
  readonly answer: string
}

export interface LessonSheet {
  readonly title: string
  readonly lead: readonly string[]
  /** Columns are the job as found and its variants; a row is a label and one text each. */
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly questions: readonly Question[]
}

type Say = (fact: Fact) => string

const spoken =
  (units: Units): Say =>
  ({ value, dimension, unit }) => {
    if (unit) return `${brief(toUnit(value, unit))}${NBSP}${unit}`
    if (dimension === 'share') return percent(value)
    if (dimension === 'number') return brief(value)
    if (dimension === 'time') return Number.isFinite(value) ? duration(value) : 'as long as you like'
    if (dimension === 'temperature' && !Number.isFinite(value)) return 'burns out'
    return told(value, dimension, units)
  }

interface Lesson {
  readonly lead: readonly string[]
  readonly rows: Readonly<Record<string, string>>
  questions(columns: readonly Facts[], say: Say): readonly Question[]
}

/** How many times one is the other. */
const times = (a: Fact, b: Fact): string => brief(a.value / b.value)

const LESSONS: Readonly<Record<LessonName, Lesson>> = {
  gearing: {
    lead: [
      'A speed knob makes a motor slow; it does not make it strong. The torque a cut takes has to come from amps, and amps are heat.',
      'Here one cut is made at one spindle speed through three pulleys, everything cold. Only the reduction differs.',
    ],
    rows: {
      ratio: 'Reduction',
      motor: 'Motor speed in the cut',
      amps: 'Amps in the cut',
      load: 'Amps that the cut adds',
      copper: 'Heat of those amps in the copper',
      sag: 'Speed lost in the cut',
      air: 'Heat the air carries, against full speed',
    },
    questions: ([one, two, four], say) => [
      {
        ask: 'Twice the reduction: how many amps does the same cut add?',
        answer: `Half: ${say(one.load)} becomes ${say(two.load)}, and ${say(four.load)} at four times. The pulley multiplies the torque, and amps go with torque.`,
      },
      {
        ask: 'And how much heat do those amps make in the copper?',
        answer: `A quarter: ${say(one.copper)} becomes ${say(two.copper)}, then ${say(four.copper)}. Heat goes with the square of amps: ${times(one.copper, two.copper)} and ${times(one.copper, four.copper)} times less.`,
      },
      {
        ask: 'Why does the spindle sag less?',
        answer: `The motor loses speed by its amps, and the spindle sees that divided by the ratio too: ${say(one.sag)} becomes ${say(two.sag)}, then ${say(four.sag)}. Twice the reduction, about a quarter of the sag.`,
      },
      {
        ask: 'What does the fan have to do with it?',
        answer: `It turns with the motor. At 1 : 1 the air carries ${say(one.air)} of the heat it would at full speed, at 4 : 1 ${say(four.air)}: less heat and more air at once.`,
      },
      {
        ask: 'What is the price?',
        answer:
          'Top speed. What the pulley gives in torque it takes in speed: choose it so that the motor is near its plate’s speed where you work most.',
      },
    ],
  },
  horsepower: {
    lead: [
      'Power is torque times speed. Two plates can say one horsepower, and one motor turn twice as fast: then it has half the torque.',
      'The machine does not ask for horsepower. It asks for torque, at its own speed.',
    ],
    rows: {
      power: 'Power on the plate',
      speed: 'Speed on the plate',
      torque: 'Torque at the shaft, power over speed',
      ratio: 'Reduction',
      spindle: 'The same at the spindle, losses left out',
      allDay: 'What it holds all day at this spindle speed',
      asked: 'What the cut asks',
    },
    questions: ([slow, fast, geared], say) => [
      {
        ask: 'Both plates say the same power. How do their torques compare?',
        answer: `${say(slow.torque)} against ${say(fast.torque)}: the faster one has ${times(fast.torque, slow.torque)} times the torque of the slower.`,
      },
      {
        ask: 'Both hang on the same pulleys. Which one holds the cut all day?',
        answer: `It asks for ${say(slow.asked)}. The slower holds ${say(slow.allDay)}, the faster ${say(fast.allDay)}.`,
      },
      {
        ask: 'What makes them equal?',
        answer: `Twice the reduction for the motor that turns twice as fast: ${ratioText(geared.ratio.value)} in place of ${ratioText(fast.ratio.value)}. Then it holds ${say(geared.allDay)}, as the other does.`,
      },
      {
        ask: 'So what is to be compared when a motor is replaced?',
        answer:
          'Torque at the spindle, speed by speed, through each one’s own pulleys. Never horsepower against horsepower.',
      },
    ],
  },
  fan: {
    lead: [
      'A fan on the shaft slows down with the motor. It is said to blow almost nothing then: a fan’s power goes with the cube of its speed.',
      'But its air goes with speed itself, and the heat that air carries with a power under one. A fan that is gone is another matter.',
    ],
    rows: {
      speed: 'Motor speed against the plate’s',
      carried: 'Heat carried from the winding, against full speed',
      allDay: 'Torque held all day at the spindle',
      asked: 'What the cut asks',
      winding: 'Winding, settled',
    },
    questions: ([own, gone, blown], say) => [
      {
        ask: 'At this speed, how much air does the fan still give? And the cube of that?',
        answer: `About ${say(own.speed)} of the air: air goes with speed. Its cube, ${brief(own.speed.value ** 3 * 100)} %, is the power the fan takes, and no measure of cooling.`,
      },
      {
        ask: 'How much of the heat does that air carry?',
        answer: `${say(own.carried)} of what it carries at full speed, still air included. With the fan gone it is ${say(gone.carried)}, with a blower at full flow ${say(blown.carried)}.`,
      },
      {
        ask: 'What is left of the torque for the day?',
        answer: `${say(own.allDay)} with its own fan, ${say(gone.allDay)} without, ${say(blown.allDay)} with a blower: the missing fan costs ${percent(1 - gone.allDay.value / own.allDay.value)} of it.`,
      },
      {
        ask: 'Where does the winding settle under this cut?',
        answer: `With the fan ${say(own.winding)}, with a blower ${say(blown.winding)}; without either it ${Number.isFinite(gone.winding.value) ? `settles at ${say(gone.winding)}` : 'settles nowhere: hot copper has more resistance, hot magnets want more amps, and it runs away'}.`,
      },
    ],
  },
  peak: {
    lead: [
      'Many plates print the power a motor gives for a moment, large, and the power it gives for good, small or not at all.',
      'At one speed power goes with torque, torque with amps, and heat with amps squared.',
    ],
    rows: {
      peak: 'Power printed large',
      continuous: 'Power for good',
      share: 'One over the other',
      heat: 'That, as copper heat',
      torque: 'Torque asked at the spindle',
      lasts: 'From cold to the winding’s class limit',
    },
    questions: ([large, small], say) => [
      {
        ask: 'The large number is how many times the continuous one? And as heat?',
        answer: `${say(large.share)} times the power, ${say(large.heat)} times the heat: the square.`,
      },
      {
        ask: 'How long does it last from cold at the large number?',
        answer: `${say(large.lasts)}. From hot, far less.`,
      },
      {
        ask: 'And at the small one?',
        answer: `${Number.isFinite(small.lasts.value) ? say(small.lasts) : 'As long as you like'}: ${say(small.torque)} at the spindle in place of ${say(large.torque)}.`,
      },
      {
        ask: 'A plate says peak only. What is a careful guess at the rest?',
        answer:
          'Half to seven tenths of it (common practice, no source): plates show 1.67 to 2.5 times the continuous power.',
      },
    ],
  },
  fuse: {
    lead: [
      'A fuse ends a short before the wires burn. A winding dies of less, and slowly: of amps that any fuse carries for ever.',
      'What counts is how hot it gets in how much time, with the air it has.',
    ],
    rows: {
      rated: 'Amps on the plate',
      limit: 'Controller set to 1.5 times',
      limitHeat: 'Copper heat that lets through for good',
      fuse: 'Fuse of 1.7 times',
      amps: 'Amps of this cut',
      share: 'Against the plate',
      lasts: 'From cold to the winding’s class limit',
      opens: 'Before the cutoff opens',
      winding: 'The winding by then, or at its hottest',
    },
    questions: ([bare, guarded], say) => [
      {
        ask: 'How much heat does the usual current limit allow, against the plate’s amps?',
        answer: `${say(bare.limitHeat)} times, for ever: 1.5 squared. The fuse, at 1.7 times, comes later still.`,
      },
      {
        ask: 'This cut draws fewer amps than the plate allows. Does the fuse notice?',
        answer: `Never: ${say(bare.amps)} through a fuse of ${say(bare.fuse)}.`,
      },
      {
        ask: 'And the winding?',
        answer: `Slow and without its fan it passes ${say(bare.class)} after ${say(bare.lasts)}. The plate’s amps hold at the plate’s speed, with the plate’s air.`,
      },
      {
        ask: 'What does protect it?',
        answer: `Something that feels the heat: a cutoff in the motor, in the coil of a release. That it opens in time is to be checked for each job, since it sits beside the winding and not in it: here it opens after ${say(guarded.opens)}, with the winding at ${say(guarded.winding)}, ${guarded.winding.value > guarded.class.value ? 'and that is too late: less torque, a fan or more reduction has to help it' : 'and that is in time'}.`,
      },
    ],
  },
}

/** The sheet of a lesson from its facts, as found first; `names` are the columns’. */
export function lessonSheet(
  name: LessonName,
  columns: readonly Facts[],
  names: readonly string[],
  units: Units,
): LessonSheet {
  const { lead, rows, questions } = LESSONS[name]
  const say = spoken(units)
  return {
    title: LESSON_TITLES[name],
    lead,
    head: names,
    rows: Object.entries(rows).map(([key, label]) => [label, ...columns.map((facts) => say(facts[key]))]),
    questions: questions(columns, say),
  }
}
