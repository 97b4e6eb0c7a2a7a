/** Where limits come from. `known` says how the authors of this program knew the text: seen, from memory, or common practice. */
import type { Adhesive, Procedure } from "../facts/types.ts";
import type { Source } from "./types.ts";

export const FROM_RECORD: Source = { text: "the record itself", known: "record" };
export const FROM_SHEET: Source = { text: "the adhesive's data sheet", known: "record" };
export const FROM_PROCEDURE: Source = { text: "the test procedure", known: "record" };

export const AC_43_13_SAMPLE: Source = {
  text: "FAA AC 43.13-1B, para 1-29h: a sample joint from the same batch, tested to destruction after full cure",
  known: "seen",
};
export const AC_43_13_MIXING: Source = {
  text: "FAA AC 43.13-1B, para 1-4: the ratio is not to be varied to change the time of cure",
  known: "seen",
};
export const HANDBOOK_MOISTURE: Source = {
  text: "FAA-H-8083-31, chapter 6: wood at 8 % to 12 % moisture for gluing",
  known: "seen",
};
export const GUARDED_ACCEPTANCE: Source = {
  text: "guarded acceptance as in JCGM 106:2012; doubt of readings as in JCGM 100:2008",
  known: "memory",
};
export const PAINT_RULE: Source = {
  text: "a painters' rule, borrowed: surfaces at least 3 K above the dew point",
  known: "common practice",
};
export const USUAL_CURE_SOURCE: Source = {
  text: "this program's default, for want of a time in the procedure: three full days",
  known: "common practice",
};
export const USUAL_ROOM: Source = {
  text: "this program's default, for want of a temperature in the procedure and the data sheet: 20 °C",
  known: "common practice",
};
export const EQUIVALENT_AGE: Source = {
  text: "Arrhenius maturity in the form of EN 1992-1-1, eq. B.10, which is for concrete; used here for adhesive by analogy",
  known: "seen",
};
export const DOUBLING: Source = {
  text: "a rule of thumb, for want of cure times at several temperatures in the data sheet: the rate of cure doubles every 10 K",
  known: "common practice",
};
export const USUAL_OVERLAP_SOURCE: Source = {
  text: "this program's default, for want of a limit in the procedure: 2 to 3 thicknesses for a three-leg piece",
  known: "common practice",
};
export const STATICS: Source = { text: "statics of the test piece", known: "common practice" };
export const TRACE: Source = {
  text: "traceability of materials: what is recalled is found again by lot",
  known: "common practice",
};

export const AC_20_27_TASKS: Source = {
  text: "FAA AC 20-27G, amateur-built fabrication and assembly checklist: each task one point in tenths; more than 50 % is the major portion",
  known: "seen",
};
export const AC_20_27_TOTAL: Source = { text: "the same checklist, the line that adds the tasks up", known: "memory" };
export const BY_COUNTRY: Source = {
  text: "rules of several countries: France counts time, others tasks or parts",
  known: "seen",
};
export const FAA_SCALES: Source = {
  text: "FAA-H-8083-1, weighing the aircraft: centre of gravity at D ± F·L/W",
  known: "seen",
};
export const MOMENTS: Source = { text: "mass times arm, by definition", known: "common practice" };

export const sheetOf = (adhesive: Adhesive): Source => ({ text: adhesive.sheet, known: "record" });
export const procedureOf = (procedure: Procedure): Source => ({
  text: `procedure: ${procedure.title}`,
  known: "record",
});
