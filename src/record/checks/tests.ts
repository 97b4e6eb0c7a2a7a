/** Tests of pieces. */
import { saidEnds } from "../../facts/quantity/ends.ts";
import { DAY_MINUTES } from "../../facts/quantity/conversions.ts";
import { Zone } from "../../facts/time/zone.ts";
import { checkClock } from "./days.ts";
import {
  type BatchSpec,
  type CheckContext,
  type EntryFile,
  expectId,
  expectPicture,
  type PieceSpec,
  report,
  soundOf,
  whereIs,
} from "./context.ts";

interface Glued {
  readonly filed: EntryFile;
  readonly batch: BatchSpec;
  readonly piece: PieceSpec;
}

type TestSpec = NonNullable<EntryFile["spec"]["tests"]>[number];

export function checkTests(context: CheckContext): void {
  const pieces = gluedPieces(context);
  const trials = new Map(soundOf(context, "trial").map((filed) => [filed.id, filed]));
  const timeZone = soundOf(context, "aircraft")[0]?.spec.time_zone;
  const zone = timeZone === undefined ? undefined : Zone.of(timeZone);
  const broken = new Map<string, () => string>();
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.tests ?? []).forEach((test, index) => {
      const path = ["tests", index];
      expectId(context, filed, [...path, "witness"], ["person"], test.witness);
      expectId(context, filed, [...path, "judged_by"], ["person"], test.judged_by);
      expectPicture(context, filed, [...path, "photo"], test.photo);
      checkClock(context, filed, [...path, "at"], test.at, zone);
      checkWoodFailure(context, filed, index, test);
      if (!expectId(context, filed, [...path, "piece"], ["piece"], test.piece)) return;
      checkOnce(context, filed, index, test, broken);
      const glued = pieces.get(test.piece);
      if (glued) checkOrder(context, filed, index, test, glued);
      const trial = glued?.piece.trial === undefined ? undefined : trials.get(glued.piece.trial);
      if (trial && trial.spec.stated > filed.spec.date) {
        report(context, filed, [...path, "piece"], {
          code: "broken-before-stated",
          message: `this piece was broken before trial ${trial.id} said what was expected`,
          expected: `a day from ${trial.spec.stated} on`,
          found: `${test.piece}, broken ${filed.spec.date}`,
          mend: `correct \`stated\` in ${trial.file}, or take the piece out of the trial`,
        });
      }
    });
  }
}

function gluedPieces(context: CheckContext): Map<string, Glued> {
  const batches = soundOf(context, "entry").flatMap((filed) =>
    (filed.spec.batches ?? []).map((batch) => ({ filed, batch })),
  );
  return new Map(
    batches.flatMap(({ filed, batch }) =>
      (batch.pieces ?? []).map((piece) => [piece.id, { filed, batch, piece }] as const),
    ),
  );
}

function checkWoodFailure(context: CheckContext, filed: EntryFile, index: number, test: TestSpec): void {
  const share = test.wood_failure;
  const against =
    (test.failure === "wood" && share && saidEnds(share).most === 0) ||
    (test.failure === "glue line" && share && saidEnds(share).least === 1);
  if (!against || !share) return;
  report(context, filed, ["tests", index, "wood_failure"], {
    code: "failure-contradiction",
    message: `a failure in the ${test.failure} with ${share.typed} wood failure contradicts itself`,
    expected: "a percentage that goes with where it broke",
    found: share.typed,
    mend: "correct `failure` or `wood_failure`",
  });
}

function checkOnce(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  test: TestSpec,
  broken: Map<string, () => string>,
): void {
  const before = broken.get(test.piece);
  if (before === undefined) broken.set(test.piece, () => whereIs(filed, ["tests", index]));
  else
    report(context, filed, ["tests", index, "piece"], {
      code: "broken-twice",
      message: `${test.piece} is already broken`,
      expected: "each piece once",
      found: `${test.piece}, broken at ${before()}`,
      mend: "write the piece that was broken, or take one of the two away; to correct an earlier entry, state it under `amends`",
    });
}

function checkOrder(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  test: TestSpec,
  { filed: gluedIn, batch, piece }: Glued,
): void {
  const glued = piece.glued ?? batch.closed ?? batch.mixed;
  const earlierDay = filed.spec.date < gluedIn.spec.date;
  const pastMidnight = glued !== undefined && glued.minutes >= DAY_MINUTES;
  const sameDay = filed.spec.date === gluedIn.spec.date;
  const earlierTime =
    sameDay && (pastMidnight || (glued !== undefined && test.at !== undefined && test.at.minutes < glued.minutes));
  if (!earlierDay && !earlierTime) return;
  const when = glued === undefined ? gluedIn.spec.date : `${gluedIn.spec.date} ${glued.typed}`;
  const path = ["tests", index, test.at !== undefined && sameDay ? "at" : "piece"];
  report(context, filed, path, {
    code: "broken-before-glued",
    message: `${test.piece} was broken before it was glued`,
    expected: `a time after ${when}, when batch ${batch.id} was glued`,
    found: test.at !== undefined ? `${filed.spec.date} ${test.at.typed}` : filed.spec.date,
    mend: `correct this entry or ${whereIs(gluedIn, ["date"])}`,
  });
}
