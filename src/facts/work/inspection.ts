/** Someone looked at a hold point. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, person, show, where } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, choice, words } from "../field.ts";
import { file, idOf } from "../id.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Day, FilePath, Path } from "../values.ts";

export const inspectionSchema = block({
  hold_point: idOf("hold point", "Which hold point.", "TP-H1"),
  by: idOf("person", "Who looked.", "inspector-1"),
  result: choice(["signed", "not signed"], "Whether it was signed."),
  reference: words("Number of the paper it was signed on; word of mouth is none.", "form 12").optional(),
  scan: file("A scan of it.", "form-12.pdf").optional(),
  remarks: words("What was said.", "Clean the drain hole before closing").optional(),
});

/** Someone looked at a hold point. */
export interface Inspection {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly holdPoint: string;
  readonly by: string;
  readonly result: "signed" | "not signed";
  readonly reference?: string;
  readonly scan?: FilePath;
  readonly remarks?: string;
}

export function inspectionOf(spec: z.output<typeof inspectionSchema>, path: Path, of: InEntry): Inspection {
  return factOf<Inspection>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    holdPoint: spec.hold_point,
    by: spec.by,
    result: spec.result,
    reference: spec.reference,
    scan: spec.scan === undefined ? undefined : of.path(spec.scan),
    remarks: spec.remarks,
  });
}

export const inspectionShown: Decisions<Inspection> = {
  place: show,
  entry: show,
  day: show,
  holdPoint: show,
  by: person,
  result: show,
  reference: show,
  scan: where("attachments"),
  remarks: show,
};

export const inspectionAmended = foundBy({
  keys: ["hold_point"],
  kind: "hold point",
  named: false,
  word: "Inspection of",
  several: "Inspections",
});
