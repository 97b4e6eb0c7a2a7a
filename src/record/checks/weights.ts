/** Parts weighed on the way, and the aircraft on its scales. */
import { nearest } from "../../facts/nearest.ts";
import { onlyYouKnow, shown } from "../../facts/reading.ts";
import { type CheckContext, doubtful, type EntryFile, expectId, report, soundOf } from "./context.ts";

type Weighing = NonNullable<EntryFile["spec"]["weighed"]>[number];

export function checkWeights(context: CheckContext): void {
  const weighed = new Set<string>();
  const datum = soundOf(context, "aircraft").every(({ spec, whole }) => spec.datum !== undefined || !whole);
  const asked = { told: datum };
  for (const filed of soundOf(context, "entry")) {
    const here = new Set<string>();
    (filed.spec.weighed ?? []).forEach((line, index) => {
      checkLine(context, filed, index, line, weighed, asked);
      if (here.has(line.part))
        report(context, filed, ["weighed", index, "part"], {
          code: "weighed-twice",
          message: "this part is weighed twice on one day",
          found: shown(line.part),
          mend: "keep the one that counts, or call them by names of their own",
        });
      here.add(line.part);
      weighed.add(line.part);
    });
    checkScales(context, filed, asked);
  }
}

/** Told once for the whole record, where the first arm stands. */
interface Datum {
  told: boolean;
}

function checkLine(
  context: CheckContext,
  filed: EntryFile,
  index: number,
  line: Weighing,
  known: ReadonlySet<string>,
  datum: Datum,
): void {
  const path = ["weighed", index];
  expectId(context, filed, [...path, "assembly"], ["assembly"], line.assembly);
  if (line.arm !== undefined) expectDatum(context, filed, [...path, "arm"], line.arm.typed, datum);
  (line.instead_of ?? []).forEach((part, at) => {
    const where = [...path, "instead_of", at];
    if (part === line.part) {
      report(context, filed, where, {
        code: "own-replacement",
        message: "a part stands in its own place without being told so",
        expected: "other parts, weighed before",
        found: shown(part),
        mend: "take it from the list",
      });
    } else if (!known.has(part) && !doubtful(context, part)) {
      const meant = nearest(
        part,
        [...known].filter((name) => name !== line.part),
      );
      report(context, filed, where, {
        code: "unknown-id",
        message: "no part of these words was weighed before",
        expected: "the words of a part in an earlier line or entry",
        found: shown(part),
        ...(meant === undefined
          ? onlyYouKnow("give the words of its `part:`, or take it from the list")
          : { mend: `did you mean "${meant}"?`, instead: meant }),
      });
    }
  });
}

function checkScales(context: CheckContext, filed: EntryFile, datum: Datum): void {
  const { scales } = filed.spec;
  if (scales === undefined) return;
  expectDatum(context, filed, ["scales", "mains"], scales.mains.typed, datum);
  if ((scales.nose === undefined) !== (scales.tail === undefined) || !filed.whole) return;
  const both = scales.nose !== undefined;
  report(context, filed, ["scales"], {
    code: "third-wheel",
    message: both ? "the third wheel is at the nose or at the tail" : "what the third wheel weighed is missing",
    expected: "`nose:` or `tail:`, one of the two",
    mend: both ? "take one of the two away" : "add `nose: …` or `tail: …`, with what it weighed",
  });
}

function expectDatum(
  context: CheckContext,
  filed: EntryFile,
  path: readonly (string | number)[],
  typed: string,
  datum: Datum,
): void {
  if (datum.told) return;
  datum.told = true;
  report(context, filed, [...path], {
    code: "no-datum",
    message: "arms are measured from a datum, which aircraft.md does not name",
    expected: "`datum:` in aircraft.md, such as Front face of the firewall",
    found: typed,
    mend: "add `datum:` to aircraft.md",
  });
}
