/** What is said of one test piece. */
import { defined } from "../../defined.ts";
import type { PieceFile } from "../../evidence/types.ts";
import type { Cure, Warmth } from "../../evidence/types/cure.ts";
import { dateWords } from "../../words/dates.ts";
import { reached, span } from "../../words/durations.ts";
import { grouped, percent } from "../../words/numbers.ts";
import { inUnits, quantityWords } from "../../words/quantities.ts";
import type { Leg } from "../../facts/glue/leg.ts";
import type { Photo, Piece } from "../../facts/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { byDefault } from "./by-default.ts";
import { NOT_NOTED, type FactRow } from "./batch-page.ts";
import type { Shown } from "../../editions/shown.ts";
import { traceIndex } from "./trace-index.ts";
import { FAILURE_WORDS } from "./verdict-words.ts";

export function pieceFacts(shown: Shown, file: PieceFile): FactRow[] {
  const { note } = file.piece;
  const noted = note === undefined ? [] : [{ word: "Note", noted: note }];
  return [...geometry(shown, file), ...breaking(shown, file), ...noted];
}

/** The photograph of the broken piece, with the words its entry has for it. */
export function piecePhoto(
  shown: Shown,
  { test, piece }: PieceFile,
): Pick<Photo, "file" | "alt" | "caption"> | undefined {
  if (test?.photo === undefined) return undefined;
  return traceIndex(shown).photos.get(test.photo) ?? { file: test.photo, alt: `Test piece ${piece.id}, broken` };
}

/** How a piece broke in a few words, for tables: `in the wood, 95 % wood`. */
export function brokeWords({ test, verdict }: PieceFile): string {
  if (test === undefined) return verdict === "not broken" ? "not broken" : "noted where this edition does not show it";
  return (
    FAILURE_WORDS[test.failure] + (test.woodFailure === undefined ? "" : `, ${test.woodFailure.typed} wood failure`)
  );
}

function geometry(shown: Shown, { piece, overlapRatio, atMost: revealing }: PieceFile): FactRow[] {
  const { units } = shown.record.aircraft;
  const procedure = shown.record.procedures.get(piece.procedure);
  const batch = shown.evidence.batches.get(piece.batch)?.batch;
  const sizes = [
    ["thickness", piece.thickness],
    ["width", piece.width],
    ["overlap", piece.overlap],
  ] as const;
  const rows: FactRow[] = [
    {
      word: "Size",
      noted: sizes
        .map(
          ([word, size]) =>
            `${word} ${size === undefined ? NOT_NOTED : quantityWords(size, units)}${byDefault(shown, batch, word, piece.id)}`,
        )
        .join(", "),
    },
    defined({
      word: "Overlap over thickness",
      noted: overlapRatio === undefined ? "cannot be reckoned" : grouped(overlapRatio, 2),
      limit: procedure?.overlap === undefined ? undefined : procedure.overlap.typed,
    }),
  ];
  if (piece.glued !== undefined) rows.push({ word: "Glued", noted: `at ${piece.glued.typed}` });
  rows.push(...wood(shown, piece));
  if (revealing !== undefined) {
    rows.push({
      word: "Could have let pass",
      noted: `a glue line with ${percent(revealing)} of the wood’s own shear strength, and nothing weaker`,
    });
  }
  return rows;
}

/** Of what its legs are, where they are of several lots, and whether it was made from scraps. */
function wood({ record }: Shown, { legs, scraps }: Piece): FactRow[] {
  const { units } = record.aircraft;
  const leg = ({ lot, thickness }: Leg): string =>
    (lot === WITHHELD ? "a lot that this edition does not show" : `lot ${lot}`) +
    (thickness === undefined ? "" : `, ${quantityWords(thickness, units)} thick`);
  return [
    ...(legs === undefined ? [] : [{ word: "Legs", noted: legs.map(leg).join("; ") }]),
    ...(scraps === true ? [{ word: "Made from", noted: "scraps of the joint’s own parts" }] : []),
  ];
}

function breaking(shown: Shown, { piece, test, curedFor, cure, stress, verdict }: PieceFile): FactRow[] {
  const { units } = shown.record.aircraft;
  const procedure = shown.record.procedures.get(piece.procedure);
  if (test === undefined)
    return verdict === "not broken" ? [] : [{ word: "Broken", noted: "noted where this edition does not show it" }];
  const rows: FactRow[] = [
    { word: "Broken", noted: dateWords(test.day) + (test.at === undefined ? "" : ` at ${test.at.typed}`) },
    defined({
      word: "Cured for",
      noted: curedFor === undefined ? "not known" : `${span(curedFor)}, as the record proves`,
      limit: procedure?.leastCure === undefined ? undefined : `at least ${procedure.leastCure.time.typed}`,
    }),
    ...worth(shown, cure),
    { word: "Failed", noted: FAILURE_WORDS[test.failure] },
    defined({
      word: "Wood failure",
      noted: test.woodFailure?.typed ?? NOT_NOTED,
      limit: procedure?.woodFailure === undefined ? undefined : `at least ${procedure.woodFailure.typed}`,
    }),
  ];
  if (test.judgedBy !== undefined) rows.push({ word: "Estimated by", noted: shown.nameOf(test.judgedBy) });
  if (test.load !== undefined) rows.push({ word: "Load", noted: quantityWords(test.load, units) });
  if (stress !== undefined)
    rows.push(
      defined({
        word: "Stress on the glue faces",
        noted: inUnits(stress, "Pa", units),
        limit: procedure?.stress === undefined ? undefined : `at least ${quantityWords(procedure.stress, units)}`,
      }),
    );
  if (test.witness !== undefined) rows.push({ word: "Seen by", noted: shown.nameOf(test.witness) });
  if (test.note !== undefined) rows.push({ word: "Note", noted: test.note });
  return rows;
}

const BY: { readonly [warmth in Warmth]: string } = {
  logged: "by the shop’s logger",
  "logged in part": "by the shop’s logger and, in its gaps, by no more than was noted",
  assumed: "by the temperature noted",
  unknown: "",
};

/** What its days of cure are worth at the temperature that the least cure is counted at; never rounded up. */
function worth(shown: Shown, { age, reference, least, warmth }: Cure): FactRow[] {
  if (age === undefined || warmth === undefined) return [];
  const at = inUnits(reference, "°C", shown.record.aircraft.units);
  return [{ word: `Worth at ${at}`, noted: `${reached(age)}, ${BY[warmth]}`, limit: `at least ${span(least)}` }];
}
