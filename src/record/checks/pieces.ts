/** Test pieces of a batch, and what a trial's piece belongs to. */
import { defined } from "../../defined.ts";
import type { Path } from "../text/yaml.ts";
import { type BatchSpec, type CheckContext, type EntryFile, expectId, type PieceSpec, report } from "./context.ts";
import { checkWoodLot, type Lots } from "./lots.ts";

export function checkPiece(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  piece: PieceSpec,
  lots: Lots,
  preparations: ReadonlyMap<string, readonly string[]>,
): void {
  const owner = piece.id.slice(0, piece.id.lastIndexOf("/"));
  if (owner !== batch.id) {
    report(context, filed, [...path, "id"], {
      code: "piece-of-other-batch",
      message: `this piece stands in batch ${batch.id} but has another batch's id`,
      expected: `${batch.id}/ and a number`,
      found: piece.id,
      mend: "correct the piece's id, or move the piece to its own batch",
    });
  }
  expectId(context, filed, [...path, "procedure"], ["procedure"], piece.procedure);
  checkWoodLot(context, filed, [...path, "lot"], piece.lot, lots);
  (piece.legs ?? []).forEach(({ lot }, at) => checkWoodLot(context, filed, [...path, "legs", at, "lot"], lot, lots));
  if (piece.trial !== undefined)
    checkTrialPiece(context, filed, path, piece, piece.trial, preparations.get(piece.trial));
  else if (piece.preparation !== undefined && filed.whole) {
    report(context, filed, [...path, "preparation"], {
      code: "preparation-without-trial",
      message: "a preparation belongs to a trial, which is missing",
      expected: "`trial:` beside `preparation:`",
      found: piece.preparation,
      mend: "add `trial:` with the trial's id",
    });
  }
}

function checkTrialPiece(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  piece: PieceSpec,
  trial: string,
  known: readonly string[] | undefined,
): void {
  if (!expectId(context, filed, [...path, "trial"], ["trial"], trial) || known === undefined) return;
  if (piece.preparation !== undefined && known.includes(piece.preparation)) return;
  if (piece.preparation === undefined && !filed.whole) return;
  const at = piece.preparation === undefined ? [...path, "trial"] : [...path, "preparation"];
  const message =
    piece.preparation === undefined
      ? `the piece does not say which preparation of ${trial} it had`
      : `${trial} has no such preparation`;
  report(
    context,
    filed,
    at,
    defined({
      code: "unknown-id",
      message,
      expected: `one of ${known.join(", ")}`,
      found: piece.preparation,
      mend:
        piece.preparation === undefined
          ? `add \`preparation: ${known[0] ?? "…"}\``
          : `use one of these, or add it to the trial`,
    }),
  );
}
