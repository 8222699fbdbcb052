// When the samples are clear enough for a verdict.

/** From this share on that lasts the answer is yes; up to one less it, no. */
export const SURE = 0.9
