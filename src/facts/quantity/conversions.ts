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
export const GRAVITY = 9.80665;
/** Kelvin at 0 °C. */
export const KELVIN = 273.15;
/** Degrees Fahrenheit in one kelvin, and at 0 °C. */
export const FAHRENHEIT = { each: 1.8, atZero: 32 } as const;

export const toFahrenheit = (celsius: number): number => celsius * FAHRENHEIT.each + FAHRENHEIT.atZero;
export const fromFahrenheit = (fahrenheit: number): number => (fahrenheit - FAHRENHEIT.atZero) / FAHRENHEIT.each;

/** A day without a change of clocks: minutes, seconds, milliseconds. */
export const DAY_MINUTES = 1440;
export const DAY_SECONDS = 86_400;
export const DAY_MS = 86_400_000;
