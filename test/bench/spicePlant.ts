// The one-minute cycle of the reference run "shaft-fan" as a circuit: the same equations for a circuit simulator.

/** Names as in test/checks/runs.json. */
type Numbers = Readonly<Record<string, number>>

/**
 * The netlist over `seconds`: speed is asked by a ramp to 380 rad/s and held for 40 of 60 s, the cut comes from 5 to
 * 29 s. A volt stands for each state's own unit; node names: i, w, x, tw, tm, ts.
 */
export function plantNetlist(p: Numbers, seconds: number): string {
  const inertia = p.Jm + p.Jfly + p.Jsp / p.N ** 2
  const proportional = (p.R20 * inertia) / (p.k20 * p.tauCl)
  const integral = p.k20 / p.tauCl
  const R = `(${p.R20}*(235+v(tw))/255)`
  const k = `(${p.k20}*(1+(${p.kTempCoeff})*(v(tm)-20)))`
  const wish = `(${p.k20}*v(asked)+${proportional}*(v(asked)-v(w))+v(x))`
  const spindle = `(v(w)/${p.N})`
  const load = `(v(cut)*tanh${spindle}+${p.Td}*tanh(${spindle}/0.5)+${p.Bs}*${spindle})`
  const flow = `(v(w)*v(w)*pow(v(w)*v(w)+1,${p.m / 2 - 1})/${p.wRef ** p.m})`
  const copper = `${p.FF ** 2}*${R}*v(i)*v(i)`
  const rubbing = `v(lost)*v(w)`
  const brushes = `${p.Vb}*abs(v(i))`
  return `the plant
.options reltol=1e-3 abstol=1e-6 vntol=1e-5
vask asked 0 pulse(0 380 0 ${380 / p.accel} 1m ${40 - 380 / p.accel} 60)
von on 0 pulse(0 1 0 1m 1m 40 60)
vcut cut 0 pulse(0 8 5 1m 1m 24 60)
bvolts volts 0 v=min(max(${wish},0),${p.Vmax})
bfree free 0 v=(v(volts)-${R}*v(i)-${k}*v(w)-${p.Vb}*tanh(v(i)/${p.ib}))/${p.L}
brate rate 0 v=v(on)*min(max(v(free),-v(i)/${p.tc}),(${p.Imax}-v(i))/${p.tc})-(1-v(on))*v(i)/${p.tc}
blost lost 0 v=${p.Tc}*tanh(v(w)/0.5)+${p.B}*v(w)
bi 0 i i=v(rate)
ci i 0 1 ic=0
bw 0 w i=${k}*v(i)-v(lost)-${load}/${p.N * p.eta}
cw w 0 ${inertia} ic=0
bx 0 x i=v(on)*(${integral}*(v(asked)-v(w))+(v(volts)+${p.L}*(v(rate)-v(free))-${wish})/${p.Tt})-(1-v(on))*v(x)/${p.Tt}
cx x 0 1 ic=0
btw 0 tw i=${copper}+${p.rotToW}*${rubbing}+${p.brushToW}*${brushes}-${p.Gwm}*(v(tw)-v(tm))-(${p.Ga0}+${p.Gfan}*${flow})*(v(tw)-${p.Ta})
ctw tw 0 ${p.Cw} ic=${p.Ta}
btm 0 tm i=${1 - p.rotToW}*${rubbing}+${1 - p.brushToW}*${brushes}+${p.Gwm}*(v(tw)-v(tm))-(${p.Gc0}+${p.GcFan}*${flow})*(v(tm)-${p.Ta})
ctm tm 0 ${p.Cm} ic=${p.Ta}
bts 0 ts i=(${p.blend}*v(tw)+${1 - p.blend}*v(tm)-v(ts))/${p.ts}
cts ts 0 1 ic=${p.Ta}
.save v(tw) v(w) v(i)
.tran 1 ${seconds} 0 1 uic
.end
`
}
