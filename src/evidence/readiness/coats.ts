/** What hold points ask of what is put on: that each coat there is as its sheet asks, has dried, and that as many are there as are planned. */
import { HOLD_KINDS, type HoldKind } from "../../facts/build/hold-point.ts";
import type { Coat, FinishKind, Ref } from "../../facts/types.ts";
import type { Coded } from "../codes/coded.ts";
import type { FindingValues } from "../codes/findings.ts";
import { distinct } from "../finding.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { CoatFile, Finding, Need } from "../types.ts";
import { takes } from "./takes.ts";
import { type Told, told } from "./told.ts";

/** What a hold point looks at: of its assembly and all within it. */
export interface Coated {
  readonly kind: HoldKind;
  readonly assemblies: readonly string[];
  readonly files: readonly CoatFile[];
}

/** A product at a place: what is planned of it there, and what is there. */
interface Stack {
  readonly assembly: string;
  readonly where: string;
  readonly finish: string;
  readonly planned?: number | undefined;
  readonly before: HoldKind;
}

/** Before what it is asked where nothing is planned: what protects the structure before it is closed in, the rest before it is loaded. */
const BEFORE: { readonly [kind in FinishKind]: HoldKind } = {
  primer: "next skin",
  varnish: "next skin",
  fabric: "first load",
  tape: "first load",
  dope: "first load",
  paint: "first load",
};

const rank = (kind: HoldKind): number => HOLD_KINDS.indexOf(kind);
const entry = (id: string): Ref => ({ kind: "entry", id });

const isAt = ({ assembly, where, finish }: Stack, coat: Coat): boolean =>
  coat.assembly === assembly && coat.where === where && coat.finish === finish;

/** Planned ones first; of the others those of which a coat is there. */
function stacksOf(index: RecordIndex, { assemblies, kind }: Coated, there: readonly CoatFile[]): Stack[] {
  const planned = assemblies.flatMap((assembly) =>
    lookUp(index.record.assemblies, assembly, "assembly").coats.map(
      ({ where, finish, coats = 1, before }): Stack => ({ assembly, where, finish, planned: coats, before }),
    ),
  );
  const found = [...planned];
  for (const { coat } of there) {
    if (found.some((one) => isAt(one, coat))) continue;
    const { assembly, where, finish } = coat;
    found.push({ assembly, where, finish, before: BEFORE[finishOf(index, coat).kind] });
  }
  return found.filter(({ before }) => rank(before) <= rank(kind));
}

const finishOf = (index: RecordIndex, { finish }: Pick<Coat, "finish">) =>
  lookUp(index.record.finishes, finish, "finish");

interface Missing {
  readonly stack: Stack;
  readonly asked: number;
  readonly there: readonly Coat[];
}

/** Places with fewer coats than are planned, than the sheet asks, or than the number of one that is there. */
function missingOf(index: RecordIndex, coated: Coated, files: readonly CoatFile[]): Missing[] {
  return stacksOf(index, coated, files).flatMap((stack) => {
    const there = coatsAt(stack, files);
    const { coats = 1 } = finishOf(index, stack);
    const asked = Math.max(stack.planned ?? 1, coats, ...there.map(({ coat }) => coat));
    return numbersOf(there, asked) < asked ? [{ stack, asked, there }] : [];
  });
}

const coatsAt = (stack: Stack, files: readonly CoatFile[]): Coat[] =>
  files.map(({ coat }) => coat).filter((coat) => isAt(stack, coat));

/** How many of the first so many coats there are. */
const numbersOf = (coats: readonly Coat[], asked: number): number =>
  new Set(coats.map(({ coat }) => coat).filter((coat) => coat <= asked)).size;

/** A departure answers for a coat that is not as its sheet asks; for a recall that came to light only later it does not. */
function isOpen({ coat, findings }: CoatFile, isSaid: (finding: Finding) => boolean = () => true): boolean {
  const bad = findings.filter(({ severity }) => severity === "rejects" || severity === "unproven").filter(isSaid);
  return coat.departure === undefined ? bad.length > 0 : bad.some(({ code }) => code === "coat-lots/recalled");
}

const coded = ({ code, values }: Finding): Coded<FindingValues>[] =>
  code === "withheld" ? [] : [{ code, values } as Coded<FindingValues>];

const placeOf = (index: RecordIndex, { coat, where, finish }: Coat) => ({
  coat,
  where,
  finish: lookUp(index.record.finishes, finish, "finish").title,
});

/** `signed`: the place of the signature in the order of the record; what was put on after it is asked by what comes later. */
export function coatNeeds(index: RecordIndex, coated: Coated, signed: number | undefined): Need[] {
  const there = coated.files.filter(({ off }) => off === undefined);
  const looked = there.filter(({ coat }) => signed === undefined || orderOf(index, coat.entry) <= signed);
  const stacks = stacksOf(index, coated, looked);
  const isAsked = ({ coat }: CoatFile): boolean => stacks.some((stack) => isAt(stack, coat));
  return [
    ...there.filter((file) => isOpen(file)).map((file) => badNeed(index, file)),
    ...looked
      .filter((file) => !isOpen(file) && isDrying(file) && isAsked(file))
      .map((file): Need => ({ ...saidOf(index, file), takes: takes("take/let-dry"), blocks: false })),
    ...missingOf(index, coated, looked).flatMap((one) => stillMissing(index, one, there)),
  ];
}

const isDrying = ({ findings }: CoatFile): boolean => findings.some(({ severity }) => severity === "waits");

/** One that was put on after the signature is there. */
function stillMissing(index: RecordIndex, { stack, asked }: Missing, files: readonly CoatFile[]): Need[] {
  const coats = coatsAt(stack, files);
  const there = numbersOf(coats, asked);
  if (there >= asked) return [];
  const { about, values, restsOn } = missingSaid(index, stack, asked, coats);
  return [
    {
      about,
      restsOn,
      values: { ...values, there },
      code: "need/coats-missing",
      takes: takes("take/put-on"),
      blocks: false,
    },
  ];
}

function missingSaid(index: RecordIndex, { assembly, where, finish }: Stack, asked: number, there: readonly Coat[]) {
  const about: Ref = { kind: "assembly", id: assembly };
  const values = { where, finish: finishOf(index, { finish }).title, asked };
  return { about, values, restsOn: distinct([about, ...there.map((coat) => entry(coat.entry))]) };
}

const badNeed = (index: RecordIndex, file: CoatFile): Need => ({
  ...saidOf(index, file),
  takes: takes("take/coat-again"),
  blocks: true,
});

function saidOf(index: RecordIndex, { coat, verdict, findings }: CoatFile) {
  const told = findings.filter(({ severity }) => severity !== "meets" && severity !== "caution");
  const about = entry(coat.entry);
  const values = { ...placeOf(index, coat), verdict, told: told.flatMap(coded) };
  const restsOn = distinct([about, ...told.flatMap((finding) => finding.restsOn)]);
  return { code: "need/coat", about, values, restsOn } as const;
}

/** What was not as it should be when it was signed: a need where that was settled since, nothing where it has its own. `day`: when that day began, s. */
export function coatsThen(
  index: RecordIndex,
  coated: Coated,
  { at, day }: { readonly at: number; readonly day: number },
): { readonly need?: Need }[] {
  const isSeen = ({ entry: id }: { readonly entry: string }): boolean => orderOf(index, id) <= at;
  const then = coated.files.filter(({ coat, off }) => isSeen(coat) && (off === undefined || !isSeen(off)));
  const isSaid = ({ code, restsOn, about }: Finding): boolean =>
    code !== "coat-lots/recalled" ||
    restsOn.every((ref) => ref.kind !== "entry" || ref.id === about.id || isSeen({ entry: ref.id }));
  const stacks = stacksOf(index, coated, then);
  const isAsked = ({ coat }: CoatFile): boolean => stacks.some((stack) => isAt(stack, coat));
  const now = coated.files.filter(({ off }) => off === undefined);
  return [
    ...then
      .filter((file) => isOpen(file, isSaid))
      .map((file) => (file.off === undefined ? {} : { need: settled(index, "then/coat", file) })),
    ...then
      .filter((file) => !isOpen(file, isSaid) && (file.dryFrom ?? day) > day && isAsked(file))
      .map((file) =>
        isDrying(file) && file.off === undefined ? {} : { need: settled(index, "then/coat-drying", file) },
      ),
    ...missingOf(index, coated, then).map(({ stack, asked }) => {
      const there = coatsAt(stack, now);
      return numbersOf(there, asked) < asked ? {} : { need: putOnSince(index, stack, asked, there) };
    }),
  ];
}

function settled(index: RecordIndex, code: "then/coat" | "then/coat-drying", { coat, off }: CoatFile): Need {
  const about = entry(coat.entry);
  const restsOn = [about, ...(off ? [entry(off.entry)] : [])];
  return { about, code, values: placeOf(index, coat), takes: takes("take/look-again"), blocks: true, restsOn };
}

const putOnSince = (index: RecordIndex, stack: Stack, asked: number, there: readonly Coat[]): Need => ({
  ...missingSaid(index, stack, asked, there),
  code: "then/coats-missing",
  takes: takes("take/look-again"),
  blocks: true,
});

/** What was put on badly, recalled or taken off after the signature. */
export function coatsLater(
  index: RecordIndex,
  { files }: Coated,
  isLater: (fact: { readonly entry: string }) => boolean,
): Told[] {
  return files.flatMap((file) => [...putOnLater(index, file, isLater), ...takenOffLater(index, file, isLater)]);
}

function putOnLater(
  index: RecordIndex,
  file: CoatFile,
  isLater: (fact: { readonly entry: string }) => boolean,
): Told[] {
  const { coat, off } = file;
  if (off !== undefined) return [];
  const about = entry(coat.entry);
  if (isLater(coat)) {
    if (!isOpen(file)) return [];
    const { values, restsOn } = saidOf(index, file);
    return [told(about, coat, { code: "change/coat-out", values }, restsOn)];
  }
  return coat.lots
    .flatMap((lot) => index.recalls.get(lot) ?? [])
    .filter(isLater)
    .map((recall) => {
      const values = { ...placeOf(index, coat), lot: recall.lot, day: recall.day, why: recall.why };
      return told({ kind: "lot", id: recall.lot }, recall, { code: "change/coat-recalled", values }, [about]);
    });
}

function takenOffLater(
  index: RecordIndex,
  { coat, off }: CoatFile,
  isLater: (fact: { readonly entry: string }) => boolean,
): Told[] {
  if (off === undefined || isLater(coat) || !isLater(off)) return [];
  const values = { ...placeOf(index, coat), day: off.day, how: off.stripped ?? "" };
  return [told(entry(off.entry), off, { code: "change/coat-off", values }, [entry(coat.entry)])];
}
