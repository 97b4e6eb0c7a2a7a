/** Glue-ups: the procedure they name, the lots they name, and their times in order. */
import type { Clock } from "../../../facts/time/clock.ts";
import { Zone } from "../../../facts/time/zone.ts";
import type { Path } from "../../text/yaml.ts";
import { type BatchSpec, type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "../context.ts";
import { checkClock, isBefore } from "../days.ts";
import { checkWoodLot, type Lots } from "../lots.ts";

type GlueUpSpec = NonNullable<BatchSpec["glue_up"]>;

export function checkGlueUps(context: CheckContext): void {
  const timeZone = soundOf(context, "aircraft")[0]?.spec.time_zone;
  const zone = timeZone === undefined ? undefined : Zone.of(timeZone);
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.batches ?? []).forEach((batch, index) => {
      const path = ["batches", index];
      (batch.pieces ?? []).forEach(({ procedure }, at) =>
        checkForm(context, filed, [...path, "pieces", at, "procedure"], procedure, false),
      );
      if (batch.glue_up === undefined) return;
      checkOne(context, filed, [...path, "glue_up"], batch.glue_up, lots);
      checkTimes(context, filed, [...path, "glue_up"], batch.glue_up, zone);
    });
  }
}

function checkOne(context: CheckContext, filed: EntryFile, path: Path, said: GlueUpSpec, lots: Lots): void {
  if (expectId(context, filed, [...path, "by"], ["procedure"], said.by))
    checkForm(context, filed, [...path, "by"], said.by, true);
  for (const key of ["drop", "beaded"] as const)
    (said[key] ?? []).forEach((lot, at) => checkWoodLot(context, filed, [...path, key, at], lot, lots));
  (said.parts ?? []).forEach(({ lot }, at) => checkWoodLot(context, filed, [...path, "parts", at, "lot"], lot, lots));
}

/** A procedure of test pieces says nothing of a glue-up, and one of a glue-up makes no pieces. */
function checkForm(context: CheckContext, filed: EntryFile, path: Path, id: string, isGlueUp: boolean): void {
  const procedure = soundOf(context, "procedure").find((one) => one.id === id);
  if (procedure === undefined || (procedure.spec.form === "glue-up") === isGlueUp) return;
  report(context, filed, path, {
    code: "wrong-procedure",
    message: isGlueUp ? `${id} says how test pieces are made, not how joints are glued` : `${id} makes no test pieces`,
    expected: isGlueUp ? "a procedure with `form: glue-up`" : "a procedure of test pieces",
    found: `form: ${procedure.spec.form} (${whereIs(procedure, ["form"])})`,
    mend: "name the procedure that was followed",
  });
}

/** Times that clocks showed, in the order in which they must have happened. */
function checkTimes(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  said: GlueUpSpec,
  zone: Zone | undefined,
): void {
  const { date } = filed.spec;
  const steps: readonly (readonly [key: string, day: string, clock: Clock | undefined])[] = [
    ["prepared", said.prepared_on ?? date, said.prepared],
    ["spread", date, said.spread],
    ["spread_to", date, said.spread_to],
    ["on", date, said.on],
    ["off", said.off_on ?? date, said.off],
  ];
  const noted = steps.flatMap(([key, day, clock]) => (clock ? [{ key, day, clock }] : []));
  for (const { key, day, clock } of noted) checkClock(context, filed, [...path, key], clock, zone, day);
  noted.forEach((step, at) => {
    const before = noted[at - 1];
    if (before === undefined || !isBefore(step, before, zone)) return;
    report(context, filed, [...path, step.key], {
      code: "glue-up-out-of-order",
      message: `\`${step.key}\` is before \`${before.key}\``,
      expected: `a time from ${before.day} ${before.clock.typed} on`,
      found: `${step.day} ${step.clock.typed}`,
      mend: "correct one of the two, or say on which day it was (`prepared_on`, `off_on`)",
    });
  });
}
