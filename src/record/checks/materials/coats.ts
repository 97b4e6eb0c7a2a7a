/** What is put on: of lots of the product that is named, each coat once at its place, and times in their order. */
import type { Path } from "../../text/yaml.ts";
import { Zone } from "../../../facts/time/zone.ts";
import { checkClock, isBefore, pastMidnight } from "../days.ts";
import { checkReceived, type Lots } from "../lots.ts";
import {
  type CheckContext,
  doubtful,
  type EntryFile,
  expectAttachment,
  expectId,
  report,
  soundOf,
  whereIs,
} from "../context.ts";

type Line = NonNullable<EntryFile["spec"]["coats"]>[number];

interface Standing {
  readonly filed: EntryFile;
  readonly path: Path;
  readonly line: Line;
}

export function checkCoats(context: CheckContext): void {
  checkFinishes(context);
  for (const filed of soundOf(context, "assembly"))
    (filed.spec.coats ?? []).forEach(({ finish }, index) =>
      expectId(context, filed, ["coats", index, "finish"], ["finish"], finish),
    );
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const timeZone = soundOf(context, "aircraft")[0]?.spec.time_zone;
  const zone = timeZone === undefined ? undefined : Zone.of(timeZone);
  const standing = new Map<string, readonly Standing[]>();
  for (const filed of inOrder(soundOf(context, "entry"))) {
    (filed.spec.coats ?? []).forEach((line, index) => {
      const path = ["coats", index];
      checkNames(context, filed, path, line);
      checkLots(context, filed, path, line, lots);
      checkTimes(context, filed, path, line, zone);
      const place = `${line.assembly ?? filed.spec.assembly} ${line.where}`;
      const there = (standing.get(place) ?? []).filter(
        (before) => line.stripped === undefined || before.filed === filed,
      );
      checkOnce(context, { filed, path, line }, there);
      standing.set(place, [...there, { filed, path, line }]);
    });
  }
}

const inOrder = (entries: readonly EntryFile[]): EntryFile[] =>
  [...entries].sort((a, b) => (`${a.spec.date} ${a.id}` < `${b.spec.date} ${b.id}` ? -1 : 1));

function checkFinishes(context: CheckContext): void {
  for (const filed of soundOf(context, "finish")) {
    expectAttachment(context, filed, ["sheet_file"], filed.spec.sheet_file);
    const { after, within } = filed.spec.recoat ?? {};
    if (after === undefined || within === undefined || after.value <= within.value) continue;
    report(context, filed, ["recoat", "within"], {
      code: "recoat-never",
      message: "the next coat could be put on at no time",
      expected: `no less than the ${after.typed} of \`after\``,
      found: within.typed,
      mend: "look at both times on the sheet",
    });
  }
}

function checkNames(context: CheckContext, filed: EntryFile, path: Path, line: Line): void {
  expectId(context, filed, [...path, "finish"], ["finish"], line.finish);
  expectId(context, filed, [...path, "assembly"], ["assembly"], line.assembly);
  expectId(context, filed, [...path, "departure"], ["departure"], line.departure);
}

function checkLots(context: CheckContext, filed: EntryFile, path: Path, line: Line, lots: Lots): void {
  const ids = line.lot ?? [];
  ids.forEach((id, index) => {
    const at = [...path, "lot", ...(ids.length > 1 ? [index] : [])];
    if (!expectId(context, filed, at, ["lot"], id)) return;
    const lot = lots.get(id);
    const is = lot && wrongLot(lot.spec, line.finish, context);
    if (is !== undefined)
      report(context, filed, at, {
        code: "wrong-lot",
        message: `${id} is ${is}`,
        expected: `a lot of ${line.finish}: \`material: finish\` and \`finish: ${line.finish}\``,
        found: id,
        mend: `write the lot that it came from, or correct what ${lot?.file} says that it is`,
      });
    checkReceived(context, filed, at, id, lots);
  });
}

function wrongLot(
  { material, finish }: { readonly material: string; readonly finish?: string | undefined },
  asked: string,
  context: CheckContext,
): string | undefined {
  if (material !== "finish") return `a lot of ${material}`;
  const isOther = finish !== undefined && finish !== asked && context.ids.has("finish", finish);
  return isOther ? `a lot of ${finish}, not of ${asked}` : undefined;
}

function checkTimes(context: CheckContext, filed: EntryFile, path: Path, line: Line, zone: Zone | undefined): void {
  const { at, dry } = line;
  checkClock(context, filed, [...path, "at"], at, zone);
  checkClock(context, filed, [...path, "dry"], dry, zone);
  const { date: day } = filed.spec;
  if (at === undefined || dry === undefined || !isBefore({ day, clock: dry }, { day, clock: at }, zone)) return;
  report(context, filed, [...path, "dry"], {
    code: "dry-before-coat",
    message: "found dry before it was put on",
    expected: `a time after ${at.typed}`,
    found: dry.typed,
    mend: pastMidnight(at, dry),
  });
}

function checkOnce(context: CheckContext, { filed, path, line }: Standing, there: readonly Standing[]): void {
  const alike = there.find(({ line: one }) => one.finish === line.finish && (one.coat ?? 1) === (line.coat ?? 1));
  if (alike === undefined || doubtful(context, line.where)) return;
  report(context, filed, [...path, line.coat === undefined ? "where" : "coat"], {
    code: "coat-twice",
    message: `coat ${line.coat ?? 1} of ${line.finish} is there already`,
    expected:
      "another number under `coat`, a place of its own words, or a later entry that says under `stripped` how all of it was taken off",
    found: `coat ${line.coat ?? 1} here and at ${whereIs(alike.filed, alike.path)}`,
    mend: "say which coat it was, or how what stood there was taken off before it",
  });
}
