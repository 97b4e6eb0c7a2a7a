/** Pascals in one pound-force per square inch, exact by definition. */
import { GRAVITY, INCH, POUND } from "../facts/quantity/conversions.ts";

export const PSI = (POUND * GRAVITY) / INCH ** 2;
