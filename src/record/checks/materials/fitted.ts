/** Parts bought in: of lots of parts, each place with one part at a time. */
import type { Path } from "../../text/yaml.ts";
import { shown } from "../../../facts/reading.ts";
import { checkReceived, type Lots } from "../lots.ts";
import { type CheckContext, doubtful, type EntryFile, expectId, report, soundOf, whereIs } from "../context.ts";

type Line = NonNullable<EntryFile["spec"]["fitted"]>[number];

interface Standing {
  readonly filed: EntryFile;
  readonly path: Path;
  readonly line: Line;
  /** How many of them nothing took the place of. */
  left: number;
}

/** In the order of days: what stands where, as far as the lines tell. */
export function checkFitted(context: CheckContext): void {
  const lots: Lots = new Map(soundOf(context, "lot").map((filed) => [filed.id, filed]));
  const standing = new Map<string, readonly Standing[]>();
  for (const filed of inOrder(soundOf(context, "entry"))) {
    (filed.spec.fitted ?? []).forEach((line, index) => {
      const path = ["fitted", index];
      checkLot(context, filed, path, line, lots);
      expectId(context, filed, [...path, "assembly"], ["assembly"], line.assembly);
      if (line.replaces !== undefined) expectId(context, filed, [...path, "replaces"], ["lot"], line.replaces);
      const place = `${line.assembly ?? filed.spec.assembly} ${line.where}`;
      const there = standing.get(place) ?? [];
      checkPlace(context, filed, path, line, there);
      takeOut(filed, line, there);
      standing.set(place, [...there, { filed, path, line, left: line.count ?? 1 }]);
    });
  }
}

const inOrder = (entries: readonly EntryFile[]): EntryFile[] =>
  [...entries].sort((a, b) => (`${a.spec.date} ${a.id}` < `${b.spec.date} ${b.id}` ? -1 : 1));

function checkLot(context: CheckContext, filed: EntryFile, path: Path, { lot: id }: Line, lots: Lots): void {
  const at = [...path, "lot"];
  if (!expectId(context, filed, at, ["lot"], id)) return;
  const lot = lots.get(id);
  if (lot && lot.spec.material !== "part")
    report(context, filed, at, {
      code: "wrong-lot",
      message: `${id} is a lot of ${lot.spec.material}`,
      expected: "a lot of parts bought in: `material: part`",
      found: id,
      mend: `write the lot that the part came in, or correct \`material\` in ${lot.file}`,
    });
  checkReceived(context, filed, at, id, lots);
}

function checkPlace(context: CheckContext, filed: EntryFile, path: Path, line: Line, there: readonly Standing[]): void {
  const before = there.at(-1);
  if (line.replaces === undefined ? before === undefined : there.some((one) => isTakenOut(one, filed, line))) return;
  if (before === undefined) {
    if (doubtful(context, line.where)) return;
    report(context, filed, [...path, "replaces"], {
      code: "nothing-to-replace",
      message: "nothing is noted to stand there before this day",
      expected: "`where` in the words of the earlier line, and the lot that it names",
      found: shown(line.replaces ?? ""),
      mend: "give the words of the earlier line, or take `replaces` away if nothing stood there",
    });
    return;
  }
  const at = `${before.line.lot} at ${whereIs(before.filed, before.path)}`;
  report(context, filed, [...path, line.replaces === undefined ? "where" : "replaces"], {
    code: "fitted-over",
    message: `${before.line.lot} stands there, and nothing says that it was taken out`,
    expected: "one part at a place: a later day's line with `replaces` and the lot of what stood there",
    found: `${shown(line.replaces ?? line.lot)} here, ${at}`,
    mend: "say under `replaces` which lot was taken out there, or call the place by words of its own",
  });
}

const isTakenOut = ({ filed: before, line, left }: Standing, filed: EntryFile, { replaces }: Line): boolean =>
  left > 0 && before !== filed && line.lot === replaces;

/** A line takes out no more than it fits, the oldest first. */
function takeOut(filed: EntryFile, line: Line, there: readonly Standing[]): void {
  let more = line.count ?? 1;
  for (const one of there) {
    if (!isTakenOut(one, filed, line)) continue;
    const out = Math.min(one.left, more);
    one.left -= out;
    more -= out;
  }
}
