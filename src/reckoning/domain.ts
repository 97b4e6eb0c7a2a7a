/**
 * How the reckoning treats values it cannot reckon with: a function whose argument lies outside the domain its
 * comment names, or is
 * not a finite number, returns undefined. It never throws, clamps or guesses, and the type makes every caller say
 * what follows.
 */
export const positive = (...values: readonly number[]): boolean => values.every((v) => Number.isFinite(v) && v > 0);

export const notNegative = (...values: readonly number[]): boolean => values.every((v) => Number.isFinite(v) && v >= 0);

/** A whole number from 0 that binary arithmetic holds exactly. */
export const isCount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

/** A level of confidence or of chance: between 0 and 1, neither of them. */
export const isLevel = (value: number): boolean => value > 0 && value < 1;
