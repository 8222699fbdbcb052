// Text from strangers without what steers the text around it: controls, and marks that turn the reading direction.

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out.
const STEERS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g

/** The text with a box in the place of each such character. Line ends and tabs stay; so do all letters. */
export const harmless = (text: string): string => text.replace(STEERS, '□')
