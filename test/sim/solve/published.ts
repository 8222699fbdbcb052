// Stiff problems with published reference values.
import type { System } from '../../../sim/solve/system.ts'
import { system } from './problems.ts'

/**
 * F. Mazzia, C. Magherini, F. Iavernaro, Test Set for IVP Solvers, release 2.3 (Report 43/2006): the values are in
 * its own Fortran sources (vdpol.F 1.2, hires.F 1.2, rober.F), computed there by RADAU at 1.1e-18. Read in public
 * copies of those files.
 */
export interface Published {
  readonly name: string
  readonly problem: System
  readonly y0: number[]
  readonly tEnd: number
  readonly reference: number[]
}

const robertson: Published = {
  name: 'Robertson',
  problem: system(
    3,
    (_, y, out) => {
      out[0] = -0.04 * y[0] + 1e4 * y[1] * y[2]
      out[2] = 3e7 * y[1] * y[1]
      out[1] = -out[0] - out[2]
    },
    { typical: Float64Array.of(1e-8, 1e-14, 1) },
  ),
  y0: [1, 0, 0],
  tEnd: 1e11,
  reference: [0.2083340149701255e-7, 0.8333360770334713e-13, 0.999999979166505],
}

const vanDerPol: Published = {
  name: 'Van der Pol, 1/ε = 1e6',
  problem: system(2, (_, y, out) => {
    out[0] = y[1]
    out[1] = ((1 - y[0] * y[0]) * y[1] - y[0]) / 1e-6
  }),
  y0: [2, 0],
  tEnd: 2,
  reference: [1.706167732170483, -0.8928097010247975],
}

/** With its Jacobian, so that the analytic road is driven too. */
const hires: Published = {
  name: 'HIRES',
  problem: system(
    8,
    (_, y, out) => {
      const bind = 280 * y[5] * y[7]
      out[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007
      out[1] = 1.71 * y[0] - 8.75 * y[1]
      out[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4]
      out[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3]
      out[4] = -1.745 * y[4] + 0.43 * (y[5] + y[6])
      out[5] = -bind + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6]
      out[6] = bind - 1.81 * y[6]
      out[7] = -out[6]
    },
    {
      jacobian(_, y, out) {
        const by5 = 280 * y[7]
        const by7 = 280 * y[5]
        out.set(
          [
            [-1.71, 0.43, 8.32, 0, 0, 0, 0, 0],
            [1.71, -8.75, 0, 0, 0, 0, 0, 0],
            [0, 0, -10.03, 0.43, 0.035, 0, 0, 0],
            [0, 8.32, 1.71, -1.12, 0, 0, 0, 0],
            [0, 0, 0, 0, -1.745, 0.43, 0.43, 0],
            [0, 0, 0, 0.69, 1.71, -by5 - 0.43, 0.69, -by7],
            [0, 0, 0, 0, 0, by5, -1.81, by7],
            [0, 0, 0, 0, 0, -by5, 1.81, -by7],
          ].flat(),
        )
      },
    },
  ),
  y0: [1, 0, 0, 0, 0, 0, 0, 0.0057],
  tEnd: 321.8122,
  reference: [
    0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
    0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2,
  ],
}

export const published = [robertson, vanDerPol, hires]
