/** What is raised in one entry and settled in another: open items and departures. */
import { placeInTime } from "../amend/amend.ts";
import { nearest } from "../nearest.ts";
import type { Path } from "../text/yaml.ts";
import { type Desk, type EntryFile, expectId, report, soundOf, whereIs } from "./desk.ts";

const HOLD_KINDS = ["close-up", "covering", "flight"];

interface Settled {
  readonly filed: EntryFile;
  readonly path: Path;
}

export function checkOpenItems(desk: Desk): void {
  const raisedIn = new Map<string, EntryFile>();
  const closed = new Map<string, Settled>();
  for (const filed of soundOf(desk, "entry")) {
    (filed.spec.open_items?.raise ?? []).forEach((item, index) => {
      const path = ["open_items", "raise", index];
      raisedIn.set(item.id, filed);
      expectId(desk, filed, [...path, "assembly"], ["assembly"], item.assembly);
      if (item.before !== undefined && !HOLD_KINDS.includes(item.before))
        checkBefore(desk, filed, [...path, "before"], item.before);
    });
  }
  for (const filed of soundOf(desk, "entry")) {
    (filed.spec.open_items?.close ?? []).forEach((id, index) => {
      const path = ["open_items", "close", index];
      if (!expectId(desk, filed, path, ["open item"], id)) return;
      settled(desk, filed, path, id, raisedIn.get(id), closed, { done: "closed", made: "raised" });
    });
  }
}

function checkBefore(desk: Desk, filed: EntryFile, path: Path, before: string): void {
  const fault = desk.ids.fault(["hold point"], before);
  if (!fault) return;
  const kind = nearest(before, HOLD_KINDS);
  report(desk, filed, path, {
    ...fault,
    message: `"${before}" is neither a hold point nor a kind of one`,
    expected: `${HOLD_KINDS.join(", ")}, or ${fault.expected ?? "the id of a hold point"}`,
    ...(kind !== undefined && { mend: `did you mean ${kind}?` }),
  });
}

export function checkDepartures(desk: Desk): void {
  const raisedIn = new Map<string, EntryFile>();
  const accepted = new Map<string, Settled>();
  for (const filed of soundOf(desk, "entry")) {
    (filed.spec.departures ?? []).forEach((departure, index) => {
      const path = ["departures", index];
      raisedIn.set(departure.id, filed);
      expectId(desk, filed, [...path, "assembly"], ["assembly"], departure.assembly);
      expectId(desk, filed, [...path, "accepted_by"], ["person"], departure.accepted_by);
      if (departure.accepted_by !== undefined) accepted.set(departure.id, { filed, path: [...path, "accepted_by"] });
    });
  }
  for (const filed of soundOf(desk, "entry")) {
    (filed.spec.accepts ?? []).forEach(({ departure, by }, index) => {
      const path = ["accepts", index, "departure"];
      expectId(desk, filed, ["accepts", index, "by"], ["person"], by);
      if (!expectId(desk, filed, path, ["departure"], departure)) return;
      settled(desk, filed, path, departure, raisedIn.get(departure), accepted, {
        done: "accepted",
        made: "written down",
      });
    });
  }
}

function settled(
  desk: Desk,
  filed: EntryFile,
  path: Path,
  id: string,
  raisedIn: EntryFile | undefined,
  before: Map<string, Settled>,
  said: { readonly done: string; readonly made: string },
): void {
  const first = before.get(id);
  if (first) {
    report(desk, filed, path, {
      code: "twice",
      message: `${id} is already ${said.done}`,
      found: `${id}, ${said.done} at ${whereIs(first.filed, first.path)}`,
      mend: "take one of the two away",
    });
    return;
  }
  before.set(id, { filed, path });
  if (raisedIn && placeInTime(raisedIn) > placeInTime(filed)) {
    report(desk, filed, path, {
      code: "order",
      message: `${id} is ${said.done} before it was ${said.made}`,
      found: `${id}, ${said.made} in ${raisedIn.file}`,
      mend: "correct the date of one of the two entries",
    });
  }
}
