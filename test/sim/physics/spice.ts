// A circuit simulator (ngspice, in the eecircuit-engine package) as a second opinion on the same equations.
import { Simulation } from 'eecircuit-engine'

/** Runs a netlist with one `.tran` and gives a reader of its vectors: name, time (s) → value, straight between points. */
export async function simulate(netlist: string): Promise<(name: string, t: number) => number> {
  const simulation = new Simulation()
  await simulation.start()
  simulation.setNetList(netlist)
  const result = await simulation.runSim()
  if (result.dataType !== 'real') throw new Error('a transient run gives real numbers')
  const vectors = new Map(result.data.map(({ name, values }) => [name, values]))
  const time = vectors.get('time') ?? []
  if (time.length < 2) throw new Error(`ngspice: ${simulation.getError().join('\n')}`)
  return (name, t) => {
    const values = vectors.get(name)
    if (!values) throw new Error(`no vector ${name} among ${[...vectors.keys()]}`)
    let next = time.findIndex((at) => at >= t)
    if (next < 0) throw new Error(`the simulation ends before ${t} s`)
    next = Math.max(1, next)
    const share = (t - time[next - 1]) / (time[next] - time[next - 1])
    return values[next - 1] + share * (values[next] - values[next - 1])
  }
}
