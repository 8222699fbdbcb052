// scratch
import { expect, it } from 'vitest'
import { references } from '../../checks/files.ts'
import { onePage } from '../../onePagePlant.ts'

it('x', () => {
  for (const r of references.runs) {
    const t0 = performance.now()
    const times = [...r.samples, r.seconds].filter((t,i,a)=>a.indexOf(t)===i)
    const run = onePage({ ...references.base, ...r.plant }, r.phases, r.seconds, times)
    let worst = 0
    times.forEach((t, n) => { const e = r.expected.samples[String(t)] ?? r.expected.end; [e.Tw,e.Tm,e.Ts].forEach((v,j)=> { worst=Math.max(worst, Math.abs(run.samples[n][3+j]-v)) }) })
    const pk = ['Tw','Tm','Ts'].map((k,j)=> run.peak[j]-(r.expected.peak as any)[k])
    console.log(r.name, worst, pk.map(v=>v.toExponential(1)), run.events.length, r.expected.events.length, run.events.map(([,t],j)=> ((t-r.expected.events[j]?.[1])/t).toExponential(1)), Math.round(performance.now()-t0))
  }
})
