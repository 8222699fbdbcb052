// Zone A's drawing: every machine, every cooling, one stage and two, ratios and sizes at their ends, cold and hot.
import { html } from 'lit'
import { read } from '../../../sim/read.ts'
import { AS_FOUND } from '../../store.ts'
import { formOf } from '../../view.ts'
import '../../zone/driveLine.ts'
import type { Case, Group } from '../case.ts'
import { scenarioOf, stateOf } from '../data.ts'

type Changes = Readonly<Record<string, string | null>>

/** The mill with changes, at a moment of its run; none: not answered yet. */
const drive = (id: string, title: string, changes: Changes, at: number | null = 1400): Case => ({
  ...{ id, title },
  draw(units) {
    const state = stateOf('mill', units)
    const { variants: _, ...scenario } = scenarioOf('mill', changes)
    const readings = new Map([[AS_FOUND, read(scenario)]])
    const form = formOf({ ...state, scenario, variants: [], readings })
    const result = at === null ? null : (state.results.get(AS_FOUND) ?? null)
    return html`<drive-line .form=${form} .result=${result} .at=${at ?? 0}></drive-line>`
  },
})

const pulleys = (motor: string | null, machine: string | null, centres: string | null): Changes => ({
  'belt.motorPulley': motor,
  'belt.machinePulley': machine,
  'belt.centreDistance': centres,
})
const twoStages: Changes = {
  ...pulleys('2 in', '9 in', '12 in'),
  'belt.jackshaftLarge': '9 in',
  'belt.jackshaftSmall': '2 in',
  'belt.jackshaftCentres': '14 in',
}
const kind = (name: string) => ({ 'machine.kind': name })
const cooling = (name: string) => ({ 'heat.cooling': name })

export const drives: Group = {
  title: 'Drive line',
  cases: [
    drive('drive-mill', 'Mill, warm, fan removed', {}),
    drive('drive-cold', 'Cold, nothing answered yet', {}, null),
    drive('drive-start', 'At the start of the job', {}, 0),
    drive('drive-hot', 'At its hottest', {}, 1860),
    drive('drive-lathe', 'Lathe', { ...kind('lathe'), ...pulleys('2 in', '6 in', '14 in') }),
    drive('drive-saw', 'Saw', { ...kind('saw'), ...pulleys('3 in', '14 in', '20 in') }),
    drive('drive-grinder', 'Grinder', { ...kind('grinder'), ...pulleys('5 in', '3 in', '16 in') }),
    drive('drive-wheel', 'Potter’s wheel', { ...kind('wheel'), ...pulleys('1.5 in', '16 in', '18 in') }),
    drive('drive-drill', 'Drill press', { ...kind('drill'), ...pulleys('2 in', '5 in', '15 in') }),
    drive('drive-other', 'Another machine', kind('other')),
    drive('drive-fan', 'Shaft fan', cooling('shaft fan')),
    drive('drive-blower', 'Blower', cooling('blower')),
    drive('drive-enclosed', 'Closed frame', cooling('enclosed')),
    drive('drive-outer-fan', 'Closed frame, fan outside', cooling('enclosed, outer fan')),
    drive('drive-shell', 'Cutoff on the shell', { 'cutoff.place': 'shell' }),
    drive('drive-magnet', 'Cutoff beside a magnet', { 'cutoff.place': 'magnet' }),
    drive('drive-two-stages', 'Two stages', { ...twoStages, ...kind('saw') }),
    drive('drive-1-to-1', 'Ratio 1 : 1', pulleys('4 in', '4 in', '16 in')),
    drive('drive-12-to-1', 'Ratio 12 : 1', pulleys('1.5 in', '18 in', '30 in')),
    drive('drive-up', 'Geared up', pulleys('10 in', '2.5 in', '23 in')),
    drive('drive-tiny', 'Very small', { ...pulleys('8 mm', '24 mm', '60 mm'), 'plate.mass': '0.2 kg' }),
    drive('drive-huge', 'Very large', { ...pulleys('0.5 m', '3 m', '5 m'), 'plate.mass': '400 kg' }),
    drive('drive-far', 'A tiny pulley on a huge one', pulleys('8 mm', '3 m', '5 m')),
    drive('drive-apart', 'Very far apart', pulleys('2 in', '3 in', '10 m')),
    drive('drive-open', 'Pulleys not given', pulleys(null, null, null), null),
    drive('drive-refused', 'A pulley that is refused', pulleys('-3 in', '10 in', '23 in')),
  ],
}
