/** A part bought in, where it was fitted: it stays in the aircraft until another is said to be in its place. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, orWithheld, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, count, words, note } from "../field.ts";
import { idOf } from "../id.ts";
import { assemblyIn, factOf, type InEntry } from "../typing.ts";
import type { Day, Path } from "../values.ts";

export const fittingSchema = block({
  where: words("Where it was fitted; in the same words where another takes its place.", "Hinge bolt, left inner"),
  lot: idOf("lot", "The lot of parts that it came in.", "BO-1"),
  serial: words("The serial number of this one.", "SN 1182").optional(),
  count: count("How many, if not one.", "4").optional(),
  assembly: idOf("assembly", "In which assembly, if not the entry's.", "aileron").optional(),
  replaces: idOf("lot", "The lot of what stood there before and was taken out.", "BO-0").optional(),
  why: words("Why that was replaced.", "Recalled by its maker").optional(),
  note: note(),
});

export interface Fitting {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly where: string;
  readonly lot: string;
  readonly serial?: string;
  readonly count: number;
  /** The lot of what was taken out there. */
  readonly replaces?: string;
  readonly why?: string;
  readonly note?: string;
}

export function fittingOf(spec: z.output<typeof fittingSchema>, path: Path, of: InEntry): Fitting {
  return factOf<Fitting>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    assembly: assemblyIn(spec.assembly, of),
    where: spec.where,
    lot: spec.lot,
    serial: spec.serial,
    count: spec.count ?? 1,
    replaces: spec.replaces,
    why: spec.why,
    note: spec.note,
  });
}

export const fittingShown: Decisions<Fitting> = {
  place: show,
  entry: show,
  day: show,
  assembly: show,
  where: show,
  lot: orWithheld("lots"),
  // It names the very part, as its lot does.
  serial: (serial, { lots }, { lot }) => (lots.has(lot) ? serial : undefined),
  count: show,
  replaces: orWithheld("lots"),
  why: show,
  note: show,
};

export const fittingAmended = foundBy({
  keys: ["where", "assembly"],
  named: false,
  word: "Fitted:",
  several: "Parts fitted",
});
