// The whole plant as a circuit: a volt stands for each state's own unit. Duty, cutoff and heat go with it.
import type { PageNumbers, PagePhase } from '../../onePagePlant.ts'

/** Time in which a switch, an edge or a held value gets there; the run has none. s */
const EDGE = 1e-3
/** Time constants of the limiter, and of the integrator's unwinding: PHYSICS.md §1. s */
const LIMITER = 0.002
const TRACKING = 0.1
/** Current over which the brush drop comes. A */
const KNEE = 0.05

/** Points of a value that jumps at times, for a PWL source. */
function pwl(name: string, steps: readonly (readonly [t: number, value: number])[]): string {
  const points: string[] = []
  let before = steps[0][1]
  // What is said last of a time holds.
  for (const [t, value] of new Map(steps)) {
    if (t === 0) points.push(`0 ${value}`)
    else if (value !== before) points.push(`${t} ${before}`, `${t + EDGE} ${value}`)
    before = value
  }
  // Lines of a netlist have an end: a plus goes on.
  return `v${name} ${name} 0 pwl(${points.join('\n+ ')})`
}

/** Every phase's beginning up to `seconds`, with the phase. */
function turns(phases: readonly PagePhase[], seconds: number): { start: number; phase: PagePhase }[] {
  const found: { start: number; phase: PagePhase }[] = []
  for (let start = 0, n = 0; start < seconds; start += phases[n++ % phases.length].seconds)
    found.push({ start, phase: phases[n % phases.length] })
  return found
}

/** A node's sum of flows into a capacitor is its state: what it holds, where it starts, its rate's flow. */
const state = (node: string, holds: number, from: number, flow: string): string =>
  `b${node} 0 ${node} i=${flow}\nc${node} ${node} 0 ${holds} ic=${from}`

/** The netlist of the page's plant over its phases for `seconds`. Nodes: i, w, x, tw, tm, ts; closed (1 or 0). */
export function plantNetlist(p: PageNumbers, phases: readonly PagePhase[], seconds: number): string {
  const inertia = p.Jm + p.Jfly + p.Jsp / p.N ** 2
  const all = turns(phases, seconds)
  const load = (kind: string) =>
    all.map(({ start, phase }) => [start, phase.load?.kind === kind ? phase.load.value : 0] as const)
  const surges = all.flatMap(({ start, phase: { seconds: length, surge } }) => {
    const list: (readonly [number, number])[] = [[start, 0]]
    for (let at = 0; surge && at < length; at += surge.every)
      list.push([start + at, surge.torque], [start + Math.min(at + surge.lasts, length), 0])
    return list
  })
  const slow = all.map(({ start, phase }) => [start, phase.load?.slow ?? p.wPower] as const)
  const target = all.map(({ start, phase }) => [start, phase.speed ?? 0] as const)

  const R = `(${p.R20}*(235+v(tw))/255)`
  const k = `(${p.k20}*(1+(${p.kTempCoeff})*(v(tm)-20)))`
  const on = '(v(closed)>0.5&&v(target)>0?1:0)'
  const wishes = {
    open: `${p.k20}*v(asked)`,
    sag: `${p.k20}*v(asked)+${p.Vb}+${p.Rc}*v(i)`,
    tach: `${p.k20}*v(asked)+${(p.R20 * inertia) / (p.k20 * p.tauCl)}*(v(asked)-v(w))+v(x)`,
  }
  const wound = `${p.k20 / p.tauCl}*(v(asked)-v(w))+(v(volts)+${p.L}*(v(rate)-v(free))-v(wish))/${TRACKING}`
  const spindle = `(v(w)/${p.N})`
  const cut = `(v(ltorque)+v(lsurge))*tanh${spindle}+v(lpower)*tanh${spindle}/max(${spindle},v(slow))+v(lsquare)*${spindle}*abs${spindle}`
  const drag = `${p.Td}*tanh(${spindle}/0.5)+${p.Bs}*${spindle}`

  const shaft = `(v(w)*v(w)*pow(v(w)*v(w)+1,${p.m / 2 - 1})/${p.wRef ** p.m})`
  const flow = p.fan === 'blower' ? `${p.blow ** p.m}` : p.fan === 'none' ? `(${p.stir}*${shaft})` : shaft
  const Ga = p.enclosed ? '0' : `(${p.dirt ?? 1}*(${p.Ga0}+${p.Gfan}*${flow}))`
  const Gc =
    p.enclosed === 'plain' ? `${p.Gc0}` : `(${p.Gc0}+${p.GcFan}*${p.enclosed === 'outer fan' ? shaft : flow})`
  const lumpy = p.lumpy
    ? `(1+${p.lumpy.FFp ** 2 - 1}*pow(${p.lumpy.Ip}/max(v(i),${p.lumpy.Ip / 5}),0.7)*min(1,1.1*v(w)/(v(w)+${0.07 * p.lumpy.wp})))`
    : `${p.FF ** 2}`
  const brush = `${p.Vb}*abs(v(i))`
  const inward = `${p.Gwm}*(v(tw)-v(tm))`
  const start = p.Tstart ?? p.Ta
  const opens = Number.isFinite(p.Topen) ? p.Topen : 1e6
  const closes = p.reset === 'self' ? p.Tclose : -1e6
  return `the plant
.options reltol=1e-4 abstol=1e-7 vntol=1e-6
${pwl('target', target)}
${pwl('ltorque', load('torque'))}
${pwl('lpower', load('power'))}
${pwl('lsquare', load('square'))}
${pwl('lsurge', surges)}
${pwl('slow', slow)}
${state('closed', EDGE, start < opens ? 1 : 0, `v(ts)>=${opens}?-max(v(closed),0):(v(ts)<=${closes}?max(1-v(closed),0):0)`)}
${state('asked', 1, 0, `${on}>0.5?max(${-p.accel},min(${p.accel},(v(target)-v(asked))/${EDGE})):(max(v(w),0)-v(asked))/${EDGE}`)}
bwish wish 0 v=${on}*(${wishes[p.mode]})
bvolts volts 0 v=max(0,min(v(wish),${p.Vmax}-${p.Rs}*v(i)))
bfree free 0 v=(v(volts)-${R}*v(i)-${k}*v(w)-${p.Vb}*tanh(v(i)/${KNEE}))/${p.L}
brate rate 0 v=${on}>0.5?max(-v(i)/${LIMITER},min(v(free),(${p.Imax}-v(i))/${LIMITER})):-v(i)/${LIMITER}
blost lost 0 v=${p.Tc}*tanh(v(w)/0.5)+${p.B}*v(w)
${state('i', 1, 0, 'v(rate)')}
${state('w', inertia, 0, `${k}*v(i)-v(lost)-(${cut}+${drag})/${p.N * p.eta}`)}
${state('x', 1, 0, `${on}>0.5?(${p.mode === 'tach' ? wound : '0'}):-v(x)/${TRACKING}`)}
${state('tw', p.Cw, start, `${lumpy}*${R}*v(i)*v(i)+${p.rotToW}*v(lost)*v(w)+${p.brushToW}*${brush}-${inward}-${Ga}*(v(tw)-${p.Ta})`)}
${state('tm', p.Cm, start, `${1 - p.rotToW}*v(lost)*v(w)+${1 - p.brushToW}*${brush}+${inward}-${Gc}*(v(tm)-${p.Ta})`)}
${state('ts', 1, start, `(${p.blend}*v(tw)+${1 - p.blend}*v(tm)-v(ts))/${p.ts}`)}
.save v(tw) v(tm) v(ts) v(w) v(i) v(closed)
.tran 0.5 ${seconds} 0 0.5 uic
.end
`
}
