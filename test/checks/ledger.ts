// The ledger of outside checks: every case of published.json, oracles.json and measured.json, and what became of it.

/** Capabilities still to come, in whose tests a planned case belongs. */
export const capabilities = ['know the motor', 'fit the drive', 'advice and safety'] as const
export type Capability = (typeof capabilities)[number]

/** Used: the test file that names it. Planned: what will use it. Left out: why the product has no such function. */
export type Standing =
  | { readonly used: string }
  | { readonly planned: Capability }
  | { readonly leftOut: string }

const used = (file: string): Standing => ({ used: `test/sim/${file}.test.ts` })
const leftOut = (why: string): Standing => ({ leftOut: why })

const rectifier = leftOut(
  'mean volts from a firing angle: the supply is declared by its steady DC ceiling, read on a meter, not by an angle',
)
const convection = leftOut(
  'heat transfer from the shape of a body: conductances are inputs, later fitted, and not computed from dimensions',
)

export const ledger: Readonly<Record<string, Standing>> = {
  O00: used('quantity/factors'),
  O01: used('physics/motorForms'),
  O02: used('physics/heatForms'),
  O03: used('cycles/steady'),
  O04: used('physics/heatForms'),
  O05: used('physics/tripForms'),
  O06: used('steady'),
  O07: used('physics/motorForms'),
  O08: used('physics/motorForms'),
  O09: used('belting/geometry'),
  O10: used('steady/shortTime'),
  O11: used('handbook/formFactor'),
  O12: convection,
  O13: used('belting/geometry'),
  O14: used('advise/discharge'),
  O15: used('studies/heatingCurves'),
  O16: used('identify/bench'),
  O17: used('studies/heatingCurves'),
  O18: used('studies/meanSquare'),
  O19: used('physics/heatForms'),
  O20: used('physics/tripForms'),

  P01: used('physics/published'),
  P03: used('physics/published'),
  P04: used('physics/dataSheets'),
  P06: used('physics/dataSheets'),
  P07: used('physics/dataSheets'),
  P08: used('physics/dataSheets'),
  P09: used('physics/dataSheets'),
  P10: used('physics/dataSheets'),
  P11: used('studies/dutyTypes'),
  P12: used('cycles/steady'),
  P14: used('studies/dutyTypes'),
  P16: used('studies/heatingCurves'),
  P17: used('studies/dutyTypes'),
  P18: used('studies/dutyTypes'),
  P19: used('studies/heatingCurves'),
  P20: used('studies/heatingCurves'),
  P22: used('studies/dutyTypes'),
  P23: used('studies/dutyTypes'),
  P25: used('studies/meanSquare'),
  P26: used('studies/dutyTypes'),
  P27: used('studies/dutyTypes'),
  P29: used('studies/heatingCurves'),
  P30: used('studies/heatingCurves'),
  P31: used('studies/heatingCurves'),
  P32: used('studies/heatingCurves'),
  P34: used('studies/meanSquare'),
  P35: used('studies/meanSquare'),
  P36: used('studies/meanSquare'),
  P37: used('studies/meanSquare'),
  P38: leftOut(
    'loads and times of Theraja Ex 45.8 are not on file, and its printed 505 is 502.8 recomputed: nothing to run',
  ),
  P39: used('studies/meanSquare'),
  P40: used('judgeOdd'),
  P41: leftOut('braking through a resistor: the drive of the model has one quadrant and cannot brake, i ≥ 0'),
  P42: used('physics/published'),
  P43: used('cuts/published'),
  P45: used('identify/platePublished'),
  P46: used('identify/platePublished'),
  P47: rectifier,
  P48: rectifier,
  P49: rectifier,
  P50: used('handbook/formFactor'),
  P51: used('physics/published'),
  P52: convection,
  P53: convection,
  P56: used('belting/geometry'),
  P57: used('cuts/published'),
  P58: used('belting/geometry'),
  P59: used('belting/geometry'),
  P60: used('belting/geometry'),
  P61: used('belting/geometry'),
  P62: used('belting/geometry'),
  P63: used('cuts/published'),
  P65: used('cuts/published'),
  P66: used('cuts/published'),
  P67: used('cuts/published'),
  P68: used('cuts/published'),
  P71: used('physics/published'),
  P73: used('cuts/castIron'),
  P74: used('cuts/published'),
  P75: used('physics/published'),
  P77: used('handbook/necAmperes'),

  M1: used('identify/measured'),
  M2: used('identify/measured'),
}

/** Where the ledger and the cases disagree, one line each; `textOf` gives a file's text, or null where there is none. */
export function complaints(
  entries: Readonly<Record<string, Standing>>,
  ids: readonly string[],
  textOf: (file: string) => string | null,
): string[] {
  const found = ids.filter((id) => !Object.hasOwn(entries, id)).map((id) => `${id} is not in the ledger`)
  for (const [id, standing] of Object.entries(entries)) {
    if (!ids.includes(id)) found.push(`${id} is in the ledger, and there is no such case`)
    if ('planned' in standing && !capabilities.includes(standing.planned))
      found.push(`${id} is planned for “${standing.planned}”, which is no capability`)
    if ('leftOut' in standing && standing.leftOut.length < 20)
      found.push(`${id} is left out without a reason`)
    if (!('used' in standing)) continue
    const text = textOf(standing.used)
    if (text === null) found.push(`${id} is used by ${standing.used}, which does not exist`)
    else if (!new RegExp(`\\b${id}(?![0-9])`).test(text)) found.push(`${id} is not named in ${standing.used}`)
  }
  return found
}
