/** What hold points ask of what is put on: that each coat there is as its sheet asks, has dried, and that as many are there as are planned. */
import { HOLD_KINDS, type HoldKind } from "../../facts/build/hold-point.ts";
import type { Coat, FinishKind, Ref } from "../../facts/types.ts";
import { coatAnswered } from "../coats/coat.ts";
import { distinct } from "../finding.ts";
import { indexBy, lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { CoatFile, Finding, Need } from "../types.ts";
import { acceptedBefore, isAnswered } from "./answering.ts";
import { openFindings } from "./needs.ts";
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
  readonly key: string;
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

const keyOf = ({ assembly, where, finish }: Pick<Coat, "assembly" | "where" | "finish">): string =>
  JSON.stringify([assembly, where, finish]);

/** Coats by the key of their stack. */
type Coats = ReadonlyMap<string, readonly Coat[]>;

const byStack = (index: RecordIndex, files: readonly CoatFile[]): Coats =>
  indexBy(
    files.map(({ coat }) => coat),
    (coat) => index.memo.once(coat, keyOf),
  );

/** Planned ones first; of the others those of which a coat is there. */
function stacksOf(index: RecordIndex, { assemblies, kind }: Coated, there: Coats): Stack[] {
  const planned = assemblies.flatMap((assembly) =>
    lookUp(index.record.assemblies, assembly).coats.map(({ where, finish, coats = 1, before }): Stack => {
      const key = keyOf({ assembly, where, finish });
      return { key, assembly, where, finish, planned: coats, before };
    }),
  );
  const isPlanned = new Set(planned.map(({ key }) => key));
  const others = [...there].flatMap(([key, [coat]]): Stack[] => {
    if (coat === undefined || isPlanned.has(key)) return [];
    const { assembly, where, finish } = coat;
    return [{ key, assembly, where, finish, before: BEFORE[finishOf(index, coat).kind] }];
  });
  return [...planned, ...others].filter(({ before }) => rank(before) <= rank(kind));
}

const finishOf = (index: RecordIndex, { finish }: Pick<Coat, "finish">) => lookUp(index.record.finishes, finish);

interface Missing {
  readonly stack: Stack;
  readonly asked: number;
}

/** Places with fewer coats than are planned, than the sheet asks, or than the number of one that is there. */
function missingOf(index: RecordIndex, stacks: readonly Stack[], all: Coats): Missing[] {
  return stacks.flatMap((stack) => {
    const there = all.get(stack.key) ?? [];
    const { coats = 1 } = finishOf(index, stack);
    const asked = there.reduce((most, { coat }) => Math.max(most, coat), Math.max(stack.planned ?? 1, coats));
    return numbersOf(there, asked) < asked ? [{ stack, asked }] : [];
  });
}

/** How many of the first so many coats there are. */
const numbersOf = (coats: readonly Coat[], asked: number): number =>
  new Set(coats.map(({ coat }) => coat).filter((coat) => coat <= asked)).size;

/** A departure answers for a coat that is not as its sheet asks; for a recall that came to light only later it does not. */
function isOpen(
  index: RecordIndex,
  { coat, findings }: CoatFile,
  isSaid: (finding: Finding) => boolean = () => true,
): boolean {
  const bad = findings.filter(({ severity }) => severity === "rejects" || severity === "unproven").filter(isSaid);
  return isAnswered(index, coatAnswered(coat)) ? bad.some(({ code }) => code === "coat-lots/recalled") : bad.length > 0;
}

const placeOf = (index: RecordIndex, coat: Coat) => ({
  coat: coat.coat,
  where: coat.where,
  finish: finishOf(index, coat).title,
});

/** `signed`: the place of the signature in the order of the record; what was put on after it is asked by what comes later. */
export function coatNeeds(index: RecordIndex, coated: Coated, signed: number | undefined): Need[] {
  const there = coated.files.filter(({ off }) => off === undefined);
  const looked = there.filter(({ coat }) => signed === undefined || orderOf(index, coat.entry) <= signed);
  const [all, then] = [byStack(index, there), byStack(index, looked)];
  const stacks = stacksOf(index, coated, then);
  const isAsked = askedBy(index, stacks);
  return [
    ...there.filter((file) => isOpen(index, file)).map((file) => badNeed(index, file)),
    ...looked
      .filter((file) => !isOpen(index, file) && isDrying(file) && isAsked(file))
      .map((file): Need => ({ ...saidOf(index, file), takes: takes("take/let-dry"), blocks: false })),
    ...missingOf(index, stacks, then).flatMap((one) => stillMissing(index, one, all.get(one.stack.key) ?? [])),
  ];
}

function askedBy(index: RecordIndex, stacks: readonly Stack[]): (file: CoatFile) => boolean {
  const keys = new Set(stacks.map(({ key }) => key));
  return ({ coat }) => keys.has(index.memo.once(coat, keyOf));
}

const isDrying = ({ findings }: CoatFile): boolean => findings.some(({ severity }) => severity === "waits");

/** One that was put on after the signature is there. */
function stillMissing(index: RecordIndex, { stack, asked }: Missing, coats: readonly Coat[]): Need[] {
  const there = numbersOf(coats, asked);
  if (there >= asked) return [];
  const { about, values, restsOn } = missingSaid(index, stack, asked, coats);
  const told = { code: "need/coats-missing", takes: takes("take/put-on"), blocks: false } as const;
  return [{ about, restsOn, values: { ...values, there }, ...told }];
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
  const about = entry(coat.entry);
  const { told, restsOn } = openFindings(about, findings);
  const departures = [acceptedBefore(index, coatAnswered(coat)) ?? []].flat();
  const values = { ...placeOf(index, coat), verdict, told, departures };
  const rests = distinct([...restsOn, ...departures.map((id): Ref => ({ kind: "departure", id }))]);
  return { code: "need/coat", about, values, restsOn: rests } as const;
}

/** What was not as it should be when it was signed: a need where that was settled since, nothing where it has its own. `day`: when that day began, s. */
export function coatsThen(
  index: RecordIndex,
  coated: Coated,
  { at, day }: { readonly at: number; readonly day: number },
): { readonly need?: Need }[] {
  const isSeen = ({ entry: id }: { readonly entry: string }): boolean => orderOf(index, id) <= at;
  const then = coated.files.filter(({ coat, off }) => isSeen(coat) && (off === undefined || !isSeen(off)));
  const isSaid = ({ code, restsOn }: Finding): boolean =>
    code !== "coat-lots/recalled" || restsOn.every(({ kind, id }) => kind !== "entry" || isSeen({ entry: id }));
  const seen = byStack(index, then);
  const stacks = stacksOf(index, coated, seen);
  const isAsked = askedBy(index, stacks);
  const now = byStack(
    index,
    coated.files.filter(({ off }) => off === undefined),
  );
  return [
    ...then
      .filter((file) => isOpen(index, file, isSaid))
      .map((file) => (file.off === undefined ? {} : { need: settled(index, "then/coat", file) })),
    ...then
      .filter((file) => !isOpen(index, file, isSaid) && (file.dryFrom ?? day) > day && isAsked(file))
      .map((file) =>
        isDrying(file) && file.off === undefined ? {} : { need: settled(index, "then/coat-drying", file) },
      ),
    ...missingOf(index, stacks, seen).map(({ stack, asked }) => {
      const there = now.get(stack.key) ?? [];
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
    if (!isOpen(index, file)) return [];
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
