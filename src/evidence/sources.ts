/** Where limits come from. `known` says how the authors of this program knew the text: seen, second-hand, from memory, or common practice. */
import type { Adhesive, Finish, Procedure } from "../facts/types.ts";
import type { Source } from "./types/source.ts";

export const FROM_RECORD: Source = { code: "source/record", values: {}, known: "record" };
export const FROM_SHEET: Source = { code: "source/any-sheet", values: {}, known: "record" };
export const FROM_FINISH_SHEET: Source = { code: "source/any-finish-sheet", values: {}, known: "record" };
export const FROM_PROCEDURE: Source = { code: "source/any-procedure", values: {}, known: "record" };
export const AC_43_13_SAMPLE: Source = { code: "source/ac-43-13-sample", values: {}, known: "seen" };
export const AC_43_13_GLUING: Source = { code: "source/ac-43-13-gluing", values: {}, known: "seen" };
export const AC_43_13_TIMBER: Source = { code: "source/ac-43-13-timber", values: {}, known: "seen" };
export const HANDBOOK_MOISTURE: Source = { code: "source/handbook-moisture", values: {}, known: "seen" };
export const GUARDED_ACCEPTANCE: Source = { code: "source/guarded-acceptance", values: {}, known: "memory" };
export const PAINT_RULE: Source = { code: "source/paint-rule", values: {}, known: "common practice" };
export const USUAL_CURE_SOURCE: Source = { code: "source/usual-cure", values: {}, known: "common practice" };
export const USUAL_ROOM: Source = { code: "source/usual-room", values: {}, known: "common practice" };
export const EQUIVALENT_AGE: Source = { code: "source/equivalent-age", values: {}, known: "second-hand" };
export const DOUBLING: Source = { code: "source/doubling", values: {}, known: "common practice" };
export const USUAL_OVERLAP_SOURCE: Source = { code: "source/usual-overlap", values: {}, known: "common practice" };
export const USUAL_SCARF_SOURCE: Source = { code: "source/usual-scarf", values: {}, known: "common practice" };
export const STATICS: Source = { code: "source/statics", values: {}, known: "common practice" };
export const TRACE: Source = { code: "source/trace", values: {}, known: "common practice" };
export const AC_20_27_TASKS: Source = { code: "source/ac-20-27-tasks", values: {}, known: "second-hand" };
export const AC_20_27_TOTAL: Source = { code: "source/ac-20-27-total", values: {}, known: "memory" };
export const BY_COUNTRY: Source = { code: "source/by-country", values: {}, known: "seen" };
export const FAA_SCALES: Source = { code: "source/faa-scales", values: {}, known: "second-hand" };
export const BARE_FACES: Source = { code: "source/bare-faces", values: {}, known: "memory" };
export const MOMENTS: Source = { code: "source/moments", values: {}, known: "common practice" };

export const sheetOf = ({ sheet }: Pick<Adhesive | Finish, "sheet">): Source => ({
  code: "source/sheet",
  values: { sheet },
  known: "record",
});
export const procedureOf = ({ title }: Procedure): Source => ({
  code: "source/procedure",
  values: { title },
  known: "record",
});
