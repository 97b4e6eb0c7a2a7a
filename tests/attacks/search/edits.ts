/** One edit of a record, as someone might make it who wants a better verdict. */
import type { Texts } from "../workbench.ts";
import type { Chance } from "./chance.ts";
import { changedAt, frontOf, kindOf, type Site, textOf, type Value } from "./sites.ts";
import { Values } from "./values.ts";

export const KINDS = ["delete", "alter", "add", "amend", "strike", "reorder", "blur"] as const;
export type EditKind = (typeof KINDS)[number];

export interface Edit {
  readonly kind: EditKind;
  /** The field or fact that it is about. */
  readonly name: string;
  readonly says: string;
  readonly texts: Texts;
}

/** Undefined where chance found nothing to edit. Places are sought in the files `near`, and at times in all. */
export function edited(
  chance: Chance,
  texts: Texts,
  kind: EditKind,
  near: ReadonlySet<string> = new Set(),
): Edit | undefined {
  const values = new Values(texts, chance.below(4) === 0 ? new Set() : near);
  switch (kind) {
    case "delete":
      return chance.below(12) === 0 ? withoutPart(chance, texts) : deleted(chance, texts, values);
    case "alter":
      return chance.below(16) === 0 ? alteredRows(chance, texts) : altered(chance, texts, values);
    case "add":
      return added(chance, texts, values);
    case "amend":
    case "strike":
      return amended(chance, texts, values, kind);
    case "reorder":
      return reordered(chance, texts, values);
    case "blur":
      return blurred(chance, texts, values);
  }
}

function at(texts: Texts, kind: EditKind, { file, name, path }: Site, value: Value | undefined): Edit {
  const text = texts.get(file) ?? "";
  const front = changedAt(frontOf(file, text), path, value);
  const says = `${file} ${path.join(".")}: ${value === undefined ? "gone" : JSON.stringify(value)}`;
  return { kind, name, says, texts: new Map(texts).set(file, textOf(front, text)) };
}

function deleted(chance: Chance, texts: Texts, values: Values): Edit | undefined {
  const site = chance.of(values.sites.filter(({ value, optional }) => value !== undefined && optional));
  return site && at(texts, "delete", site, undefined);
}

/** Without a file, or without some rows of the logger. */
function withoutPart(chance: Chance, texts: Texts): Edit | undefined {
  if (chance.below(2) === 0) return alteredRows(chance, texts, "delete");
  const file = chance.of([...texts.keys()].filter((one) => one !== "aircraft.md"));
  if (file === undefined) return undefined;
  const left = new Map(texts);
  left.delete(file);
  return { kind: "delete", name: `${kindOf(file) ?? "rows"} file`, says: `${file}: gone`, texts: left };
}

const WARMTHS = ["4.0", "12.0", "15.9", "20.0", "27.9", "45.0"];
const DAMPS = ["30", "50", "69", "92"];

function alteredRows(chance: Chance, texts: Texts, kind: "delete" | "alter" = "alter"): Edit | undefined {
  const file = [...texts.keys()].find((one) => one.endsWith(".csv"));
  const rows = texts
    .get(file ?? "")
    ?.trimEnd()
    .split("\n");
  if (file === undefined || rows === undefined || rows.length < 3) return undefined;
  const from = 1 + chance.below(rows.length - 1);
  const n = chance.of([1, 2, 6, 40]) ?? 1;
  const some = rows.slice(from, from + n);
  const put = some.map((row) => [row.split(";")[0], chance.of(WARMTHS), chance.of(DAMPS)].join(";"));
  const now = [...rows.slice(0, from), ...(kind === "delete" ? [] : put), ...rows.slice(from + n)];
  const says = `${file} ${some[0]} and ${some.length - 1} more rows: ${kind === "delete" ? "gone" : put[0]}`;
  return { kind, name: "climate rows", says, texts: new Map(texts).set(file, `${now.join("\n")}\n`) };
}

function altered(chance: Chance, texts: Texts, values: Values): Edit | undefined {
  const site = chance.of(values.sites.filter(({ value }) => typeof value === "string"));
  const value = site && values.for(chance, site);
  return site && value !== undefined && value !== site.value ? at(texts, "alter", site, value) : undefined;
}

/** A field that was left out, or one more item of a list. */
function added(chance: Chance, texts: Texts, values: Values): Edit | undefined {
  const site = chance.of(values.sites.filter(({ value }) => value === undefined || Array.isArray(value)));
  if (site === undefined) return undefined;
  if (Array.isArray(site.value)) {
    const item = { ...site, form: site.form.items ?? {}, value: undefined, path: [...site.path, 0] };
    const value = values.for(chance, item);
    return value === undefined
      ? undefined
      : { ...at(texts, "add", site, [...site.value, value]), name: `${site.name}[]` };
  }
  const value = values.for(chance, site);
  return value === undefined ? undefined : at(texts, "add", site, value);
}

/** An entry of a later day that amends one, seen by nobody else or by the builder only. */
function amended(chance: Chance, texts: Texts, values: Values, kind: "amend" | "strike"): Edit | undefined {
  const file = chance.of(values.sites.filter((site) => site.file.startsWith("entries/")))?.file;
  if (file === undefined) return undefined;
  const own = values.sites.filter((site) => site.file === file && !site.name.startsWith("entry amends"));
  const stated = kind === "strike" ? struckIn(chance, own) : statedIn(chance, own, values);
  if (stated === undefined) return undefined;
  const { name, facts } = stated;
  const entry = file.slice(file.indexOf("/") + 1, -3);
  const day = lastDay(texts);
  const seen = chance.below(3) === 0 ? { seen_by: "me" } : {};
  const front = { date: day, assembly: "spar", title: "Wrong", amends: [{ entry, why: "wrong", ...seen, ...facts }] };
  const says = `${entry} amended: ${JSON.stringify(facts)}`;
  const path = `entries/${day}-zz-wrong.md`;
  return texts.has(path)
    ? undefined
    : { kind, name, says, texts: new Map(texts).set(path, `---\n${JSON.stringify(front)}\n---\n`) };
}

/** That of the last entry: an entry of a later day would let time pass, and glue cure. */
const lastDay = (texts: Texts): string =>
  [...texts.keys()].reduce(
    (last, file) => (/^entries\/\d/.test(file) && file.slice(8, 18) > last ? file.slice(8, 18) : last),
    "",
  );

interface Stated {
  readonly name: string;
  readonly facts: { readonly [key: string]: Value };
}

/** A value of the entry, stated anew within the fact it belongs to. */
function statedIn(chance: Chance, own: readonly Site[], values: Values): Stated | undefined {
  const site = chance.of(own.filter(({ path }) => path.length > 0));
  const value = site && values.for(chance, site);
  if (site === undefined || value === undefined) return undefined;
  return { name: site.name, facts: nested(own, site.path, value) as Stated["facts"] };
}

/** The value within its lists and blocks, each fact with the words by which it is found. */
function nested(own: readonly Site[], path: Site["path"], value: Value): Value {
  let made = value;
  for (let depth = path.length - 1; depth >= 0; depth -= 1) {
    const step = path[depth];
    if (typeof step === "string") made = { ...keysOf(own, path.slice(0, depth)), [step]: made };
    else made = [made];
  }
  return made;
}

const KEYS = ["id", "piece", "lot", "batch", "hold_point", "departure", "what", "part"];

function keysOf(own: readonly Site[], path: Site["path"]): { readonly [key: string]: Value } {
  const fact = own.find((site) => site.path.length === path.length && site.path.every((step, at) => step === path[at]));
  if (typeof path.at(-1) !== "number" || typeof fact?.value !== "object" || Array.isArray(fact.value)) return {};
  const found = KEYS.map((key) => [key, (fact.value as { [key: string]: Value })[key]] as const).find(
    ([, key]) => key !== undefined,
  );
  return found?.[1] === undefined ? {} : { [found[0]]: found[1] };
}

/** A whole fact or one of its values taken back. */
function struckIn(chance: Chance, own: readonly Site[]): Stated | undefined {
  const fact = chance.of(own.filter(({ path, value }) => typeof path.at(-1) === "number" && typeof value === "object"));
  if (fact === undefined) return undefined;
  const keys = own.filter(
    ({ path, value }) =>
      path.length > fact.path.length && value !== undefined && fact.path.every((step, at) => step === path[at]),
  );
  const key = chance.below(3) === 0 ? undefined : chance.of(keys)?.path.slice(fact.path.length);
  const struck = key === undefined || key.some((step) => typeof step === "number") ? "all" : key.join(".");
  return { name: `${fact.name} ${struck}`, facts: nested(own, [...fact.path, "struck"], [struck]) as Stated["facts"] };
}

/** Of a piece's legs the first is the one that is pressed: in another order they state something else. */
const TOLD_IN_ORDER: ReadonlySet<string> = new Set(["entry batches[].pieces[].legs"]);

const READING = /^(\d+(?:\.\d+)?)(\s*[^\d\s:].*)$/;

/** What was read of an entry, as an estimate or as a range that it lies in. */
function blurred(chance: Chance, texts: Texts, values: Values): Edit | undefined {
  const readings = values.sites.filter(
    ({ file, value }) => file.startsWith("entries/") && typeof value === "string" && READING.test(value),
  );
  const site = chance.of(readings);
  const [typed, number = "", unit = ""] = READING.exec(String(site?.value)) ?? [];
  if (site === undefined || typed === undefined) return undefined;
  const less = chance.of([0, 0.01, 0.05, 0.3]) ?? 0;
  const more = chance.of([0, 0.01, 0.05, 0.3]) ?? 0;
  const end = (times: number): string => (Number(number) * times).toFixed(3);
  const range = `${end(1 - less)} to ${end(1 + more)}${unit}`;
  return at(texts, "blur", site, chance.of([`about ${typed}`, range, `about ${range}`]));
}

/** Keys of a block or items of a list in another order. */
function reordered(chance: Chance, texts: Texts, values: Values): Edit | undefined {
  const site = chance.of(
    values.sites.filter(({ value }) => typeof value === "object" && Object.keys(value).length > 1),
  );
  if (site?.value === undefined || typeof site.value === "string") return undefined;
  const value = Array.isArray(site.value)
    ? chance.shuffled(site.value)
    : Object.fromEntries(chance.shuffled(Object.entries(site.value)));
  return at(texts, TOLD_IN_ORDER.has(site.name) ? "alter" : "reorder", site, value);
}
