/** The breaking of a test piece. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, openFile, person, show } from "../decisions.ts";
import { foundBy } from "../entry/amending.ts";
import { block, choice, clock, noted, notedShare, words } from "../field.ts";
import { file, idOf, pieceIdOf } from "../id.ts";
import { factOf, type InEntry, maybeNoted } from "../typing.ts";
import type { Day, FilePath, Moment, Noted, Path } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const FAILURE_MODES = ["wood", "glue line", "mixed", "crushed", "face ply", "not opened"] as const;

export const testSchema = block({
  piece: pieceIdOf("Which piece was broken."),
  at: clock("When.").optional(),
  failure: choice(
    FAILURE_MODES,
    "Where it broke: crushed where a leg gave way by pressure, face ply where the veneer of plywood did, not opened where nobody has looked into it.",
  ),
  wood_failure: notedShare("Percentage of the glued area that broke in the wood.", "100 %").optional(),
  judged_by: idOf("person", "Whose estimate that percentage is.", "builder").optional(),
  load: noted({ dimension: "force" }, "The load at which it broke.").optional(),
  photo: file("A picture of it.", "../photos/b014-1.jpg").optional(),
  witness: idOf("person", "Who watched.", "helper").optional(),
  note: words("What else was seen.", "Broke along the grain").optional(),
});

export type FailureMode = (typeof FAILURE_MODES)[number];

export interface PieceTest {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly piece: string;
  readonly at?: Moment;
  readonly failure: FailureMode;
  readonly woodFailure?: Noted;
  /** Whose estimate the percentage is. */
  readonly judgedBy?: string;
  readonly load?: Noted;
  readonly photo?: FilePath;
  readonly witness?: string;
  readonly note?: string;
}

export function testOf(spec: z.output<typeof testSchema>, path: Path, of: InEntry): PieceTest {
  return factOf<PieceTest>({
    place: of.at(path),
    entry: of.entry,
    day: of.day,
    piece: spec.piece,
    at: spec.at && of.moment(spec.at, "earlier"),
    failure: spec.failure,
    woodFailure: maybeNoted(spec.wood_failure),
    judgedBy: spec.judged_by,
    load: maybeNoted(spec.load),
    photo: spec.photo === undefined ? undefined : of.path(spec.photo),
    witness: spec.witness,
    note: spec.note,
  });
}

export const testShown: Decisions<PieceTest> = {
  place: show,
  entry: show,
  day: show,
  piece: show,
  at: show,
  failure: show,
  woodFailure: show,
  judgedBy: person,
  load: show,
  photo: openFile,
  witness: person,
  note: show,
};

/** Goes with its piece. */
export const isTestShown = ({ piece }: PieceTest, seer: Visibility): boolean => seer.pieces.has(piece);

export const testAmended = foundBy({
  keys: ["piece"],
  kind: "piece",
  named: false,
  word: "Test of",
  several: "Tests",
  ofTheDay: true,
});
