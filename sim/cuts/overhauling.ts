// Loads that can drive the motor: what is said of them, in one place.

/** Why such a load is refused. */
export const NEEDS_BRAKE = 'Needs a brake; this drive cannot hold or lower.'

/** Standard fall, m/s² (exact by definition, 1901). */
export const FALL = 9.80665
