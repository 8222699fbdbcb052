// The table of Rodas4: six stages, order 4 with an embedded 3, L-stable and stiffly accurate.
// E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., section IV.7 (RODAS).

/** Stages of the method. */
export const stages = 6

/** The diagonal coefficient: every stage shares W = I/(hγ) − J. */
export const gamma = 0.25

/** Stage s is taken at t + c[s] h. */
export const c = [0, 0.386, 0.21, 0.63, 1, 1]

/** Stage s adds h d[s] ∂f/∂t. */
export const d = [0.25, -0.1043, 0.1035, -0.0362, 0, 0]

/** Stage s looks at u_s = y + Σ a[s][j] k_j. The last row says u6 = u5 + k5. */
export const a = [
  [],
  [1.544],
  [0.9466785280815826, 0.2557011698983284],
  [3.314825187068521, 2.896124015972201, 0.9986419139977817],
  [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895],
  [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895, 1],
]

/** Stage s adds Σ C[s][j] k_j / h to its right-hand side. */
export const C = [
  [],
  [-5.6688],
  [-2.430093356833875, -0.2063599157091915],
  [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
  [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616],
  [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
]

/** Dense output: y0 (1 − s) + s (y1 + (1 − s) (c3 + s c4)) with c3 = Σ h3[j] k_j, c4 = Σ h4[j] k_j. */
export const h3 = [
  10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662,
]
export const h4 = [
  -0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872,
]
