// The study of work and rest: which step, which rest, its careful end, and readings that narrow it.
import { describe, expect, it } from 'vitest'
import { read } from '../../../sim/read.ts'
import { finish } from '../../../sim/run.ts'
import { type Scenario, withChange } from '../../../sim/scenario.ts'
import { steadyLimits, runLimits } from '../../../sim/studies/limits/alone.ts'
import { doubted } from '../../../sim/studies/limits/doubted.ts'
import { cold, held } from '../../../sim/studies/limits/held.ts'
import { type LimitsStudy, limitsStudy } from '../../../sim/studies/limits.ts'
import { demo, scenario } from '../../jobs.ts'
import { seeded } from '../../seeded.ts'
import { early, steps } from './limitsDuty.ts'

describe('the study', () => {
  const studyOf = (...asked: Parameters<typeof limitsStudy>): LimitsStudy => {
    const study = finish(limitsStudy(...asked))
    if (!study.ok) throw new Error(JSON.stringify(study.problems))
    return study
  }
  const saw = demo('bandSaw')
  const study = studyOf(saw)

  it('takes the hardest step and the rest of the cycle; its own limits are those of the job', () => {
    const reading = read(saw)
    if (!reading.ok) throw new Error()
    expect(study.phase.name).toBe('cutting')
    expect(study.cycleRest).toBe(120)
    const { cold: run, next } = finish(runLimits(reading.job, study.phase, 120))
    expect(study.asGiven).toMatchObject({ cold: run, next })
  })

  it('the careful end is the worse one, and the same again on a second asking', () => {
    const { asGiven, careful } = study
    expect(careful.allDay.torque).toBeLessThan(asGiven.allDay.torque)
    expect(careful.cold!.seconds).toBeLessThan(asGiven.cold!.seconds)
    expect(careful.again!.seconds).toBeLessThan(asGiven.again!.seconds)
    expect(careful.work).toBeLessThan(asGiven.work as number)
    expect(careful.cut).toBeLessThan(asGiven.cut as number)
    expect(studyOf(saw)).toEqual(study)
  })

  it('in one of ten motors that these readings allow it is worse still: by sampling', () => {
    const reading = read(saw)
    if (!reading.ok) throw new Error()
    const doubts = doubted(saw, reading, (job) => job)
    // A band of 8 in 10 is 1.28 standard deviations.
    const { normal } = seeded(2)
    const worse = { allDay: 0, cold: 0 }
    const N = 250
    for (let n = 0; n < N; n++) {
      const job = doubts.at(new Map(doubts.names.map((name) => [name, normal() / 1.2816])))
      if (!job) throw new Error('no motor')
      if (steadyLimits(job, study.phase).allDay.torque < study.careful.allDay.torque) worse.allDay++
      const most = study.careful.cold!.seconds
      if (finish(held(job, study.phase, cold(job), most)).ends !== null) worse.cold++
    }
    // 10 in 100; what bends does to it, and the samples’ own scatter of 2, aside.
    for (const count of Object.values(worse)) {
      expect(count / N).toBeGreaterThan(0.05)
      expect(count / N).toBeLessThan(0.16)
    }
  })

  /** Without the bands written beside its inputs. */
  const bare = (whole: Scenario): Scenario =>
    JSON.parse(JSON.stringify(whole, (key, value) => (key === 'low' || key === 'high' ? undefined : value)))

  it('a band written beside an input counts; a motor with every number given has no other doubt', () => {
    const sure = bare(scenario({ ...early, ...steps({ torque: '8 N·m' }) }))
    const none = studyOf(sure)
    expect(none.careful).toEqual(none.asGiven)
    const unsure = withChange(sure, 'duty.phases.1.torque', { value: '8 N·m', low: '6 N·m', high: '10 N·m' })
    // Only the torque is doubted: the careful job is that of 10 N·m.
    const heavy = studyOf(withChange(sure, 'duty.phases.1.torque', '10 N·m'))
    const found = studyOf(unsure)
    expect(found.asGiven).toEqual(none.asGiven)
    expect(found.careful.cold!.seconds).toBeCloseTo(heavy.asGiven.cold!.seconds, 6)
  })

  it('another step, another rest, a ready-made duty; and a step that is not there', () => {
    const light = studyOf(saw, { phase: 'setting up', rest: 900 })
    expect(light.phase.name).toBe('setting up')
    expect(light.asGiven.cold).toBeNull()
    // No work of its own lasts, since the other step opens the cutoff: the careful end is asked at the rest that does.
    expect(light.asGiven.work).toBe('none')
    expect(light.careful.rest).not.toBe(light.asGiven.rest)
    expect(light.slower).toBeNull()
    const stalled = studyOf(withChange(saw, 'duty.phases.1.torque', '80 N·m'))
    expect(stalled.slower).toBe(0)
    const { duty, phase } = studyOf(saw, {
      type: { name: '', about: '', work: 90, rest: 510, source: '', standing: 'memory' },
    })
    expect(duty.phases.map(({ seconds }) => seconds)).toEqual([90, 510])
    expect(phase.cut).toEqual(study.phase.cut)
    for (const name of ['cuting', 'rest']) {
      const refused = finish(limitsStudy(saw, { phase: name }))
      expect(refused.ok).toBe(false)
      if (!refused.ok) expect(refused.problems[0].wouldDo).toMatch(/cutting|runs/)
    }
  })
})
