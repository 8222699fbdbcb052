// A turning rim pulls itself apart: stress and the speed that a stress allows.

/** Hoop stress of a thin rim, Pa: ρ v² (density kg/m³, rim speed m/s). Closed form; Khurmi & Gupta, Theory of Machines. */
export const rimStress = (density: number, v: number): number => density * v * v

/** Rim speed at which a thin rim reaches a stress (Pa), m/s. */
export const rimSpeedFor = (stress: number, density: number): number => Math.sqrt(stress / density)
