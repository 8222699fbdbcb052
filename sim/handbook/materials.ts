// Copper and magnets: how resistance and flux follow temperature.
import type { Sourced } from './source.ts'

/** Copper: R(T) = R20 (235 + T)/255. */
export const COPPER: Sourced & { readonly zeroC: number } = {
  zeroC: 235,
  source: 'IEC 60034-1, constant for copper',
  standing: 'read',
}

export type Magnet = 'ferrite' | 'NdFeB' | 'AlNiCo'

/** Change of flux per kelvin. */
export const MAGNETS: Readonly<Record<Magnet, Sourced & { readonly perKelvin: number }>> = {
  ferrite: { perKelvin: -0.002, source: 'magnet maker’s table, Br −0.20 %/K', standing: 'read' },
  NdFeB: { perKelvin: -0.0011, source: 'magnet maker’s table, Br −0.09 to −0.12 %/K', standing: 'read' },
  AlNiCo: { perKelvin: -0.0002, source: 'from memory', standing: 'memory' },
}

/** Resistance at one temperature over that at 20 °C. */
export const copperRatio = (windingC: number): number => (COPPER.zeroC + windingC) / (COPPER.zeroC + 20)

/** Flux at one temperature over that at 20 °C. */
export const fluxRatio = (magnet: Magnet, frameC: number): number =>
  1 + MAGNETS[magnet].perKelvin * (frameC - 20)

/** Winding temperature by resistance, °C: cold and hot in the same unit, cold taken at coldC. */
export const temperatureByResistance = (cold: number, hot: number, coldC: number): number =>
  (hot / cold) * (COPPER.zeroC + coldC) - COPPER.zeroC
