/**
 * Numbers of conversion that are exact by definition, each in this file and in no other: the international pound and
 * inch and standard gravity (NIST SP 811, appendix B), the scales of temperature (SI brochure, 9th ed., 2.3.1;
 * memory), the day.
 */

/** Kilograms in one pound. */
export const POUND = 0.45359237;
/** Metres in one inch. */
export const INCH = 0.0254;
/** m/s² */
const GRAVITY = 9.80665;

export const POUND_OUNCES = 16;
/** kg */
export const OUNCE = POUND / POUND_OUNCES;
/** m */
export const FOOT = 12 * INCH;
/** Cubic inches in a fluid ounce of the United States: 128 of them are a gallon of 231. */
export const FLUID_OUNCE_INCHES = 231 / 128;
/** m³ */
export const FLUID_OUNCE = FLUID_OUNCE_INCHES * INCH ** 3;
/** N */
export const POUND_FORCE = POUND * GRAVITY;
/** Pascals in one pound-force per square inch. */
export const PSI = POUND_FORCE / INCH ** 2;

/** Kelvin at 0 °C. */
export const KELVIN = 273.15;
/** Degrees Fahrenheit in one kelvin, and at 0 °C. */
export const FAHRENHEIT = { each: 1.8, atZero: 32 } as const;

export const toFahrenheit = (celsius: number): number => celsius * FAHRENHEIT.each + FAHRENHEIT.atZero;
export const fromFahrenheit = (fahrenheit: number): number => (fahrenheit - FAHRENHEIT.atZero) / FAHRENHEIT.each;

/** Seconds. */
export const HOUR_SECONDS = 3600;
/** A day without a change of clocks: minutes, seconds, milliseconds. */
export const DAY_MINUTES = 1440;
export const DAY_SECONDS = 86_400;
export const DAY_MS = 86_400_000;
