/** What is raised in one entry and settled in another: open items and departures. */
import { placeInTime } from "../amend/amend.ts";
import { nearest } from "../../facts/nearest.ts";
import { meaning, onlyYouKnow } from "../../facts/reading.ts";
import { HOLD_KINDS } from "../../facts/build/hold-point.ts";
import type { Path } from "../text/yaml.ts";
import { type CheckContext, type EntryFile, expectId, report, soundOf, whereIs } from "./context.ts";

interface Settled {
  readonly filed: EntryFile;
  readonly path: Path;
}

export function checkOpenItems(context: CheckContext): void {
  const raisedIn = new Map<string, EntryFile>();
  const closed = new Map<string, Settled>();
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.open_items?.raise ?? []).forEach((item, index) => {
      const path = ["open_items", "raise", index];
      raisedIn.set(item.id, filed);
      expectId(context, filed, [...path, "assembly"], ["assembly"], item.assembly);
      if (item.before !== undefined && !isHoldKind(item.before))
        checkBefore(context, filed, [...path, "before"], item.before);
    });
  }
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.open_items?.close ?? []).forEach((id, index) => {
      const path = ["open_items", "close", index];
      if (!expectId(context, filed, path, ["open item"], id)) return;
      settled(context, filed, path, id, raisedIn.get(id), closed, { done: "closed", made: "raised", isAgain: false });
    });
  }
}

const isHoldKind = (word: string): boolean => HOLD_KINDS.some((kind) => kind === word);

function checkBefore(context: CheckContext, filed: EntryFile, path: Path, before: string): void {
  const fault = context.ids.fault(["hold point"], before);
  if (!fault) return;
  const kind = nearest(before, HOLD_KINDS);
  report(context, filed, path, {
    ...fault,
    message: `"${before}" is neither a hold point nor a kind of one`,
    expected: `${HOLD_KINDS.join(", ")}, or ${fault.expected ?? "the id of a hold point"}`,
    ...(kind !== undefined && meaning(kind)),
  });
}

export function checkDepartures(context: CheckContext): void {
  const raisedIn = new Map<string, EntryFile>();
  const accepted = new Map<string, Settled>();
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.departures ?? []).forEach((departure, index) => {
      const path = ["departures", index];
      raisedIn.set(departure.id, filed);
      expectId(context, filed, [...path, "assembly"], ["assembly"], departure.assembly);
      expectId(context, filed, [...path, "accepted_by"], ["person"], departure.accepted_by);
      const { accepted_by, reference, condition } = departure;
      if (accepted_by === undefined) acceptedByNobody(context, filed, path, { reference, condition });
      // The builder's word, or an acceptance on a condition, may be followed by one that settles it.
      if (accepted_by !== undefined && reference !== undefined && condition === undefined)
        accepted.set(departure.id, { filed, path: [...path, "accepted_by"] });
    });
  }
  for (const filed of soundOf(context, "entry")) {
    (filed.spec.accepts ?? []).forEach(({ departure, by, reference, condition }, index) => {
      const path = ["accepts", index, "departure"];
      expectId(context, filed, ["accepts", index, "by"], ["person"], by);
      if (!expectId(context, filed, path, ["departure"], departure)) return;
      settled(context, filed, path, departure, raisedIn.get(departure), accepted, {
        done: "accepted",
        made: "written down",
        isAgain: true,
      });
      if (condition !== undefined || reference === undefined) accepted.delete(departure);
    });
  }
}

/** A paper or a condition of an acceptance that is nobody's would be read and then told nowhere. */
function acceptedByNobody(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  said: { readonly [key in "reference" | "condition"]: string | undefined },
): void {
  for (const key of ["reference", "condition"] as const) {
    if (said[key] === undefined) continue;
    report(context, filed, [...path, key], {
      code: "accepted-by-nobody",
      message: `there is a ${key} of an acceptance, and nobody who accepted`,
      expected: `\`accepted_by\` with the id of a person, beside \`${key}\``,
      found: `${key}: ${said[key]}`,
      ...onlyYouKnow(`say who accepted it, or take \`${key}\` away and tell it under \`why\` or in the prose`),
    });
  }
}

function settled(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  id: string,
  raisedIn: EntryFile | undefined,
  before: Map<string, Settled>,
  said: { readonly done: string; readonly made: string; readonly isAgain: boolean },
): void {
  const first = before.get(id);
  // What was noted or amended since it was accepted takes an acceptance of its own.
  const isAgain = said.isAgain && first !== undefined && placeInTime(filed) > placeInTime(first.filed);
  if (first && !isAgain) {
    report(context, filed, path, {
      code: "settled-twice",
      message: `${id} is already ${said.done}`,
      found: `${id}, ${said.done} at ${whereIs(first.filed, first.path)}`,
      mend: "take one of the two away",
    });
    return;
  }
  before.set(id, { filed, path });
  if (raisedIn && placeInTime(raisedIn) > placeInTime(filed)) {
    report(context, filed, path, {
      code: "settled-too-early",
      message: `${id} is ${said.done} before it was ${said.made}`,
      found: `${id}, ${said.made} in ${raisedIn.file}`,
      mend: "correct the date of one of the two entries",
    });
  }
}
