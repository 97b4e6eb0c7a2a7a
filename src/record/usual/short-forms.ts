/**
 * Short forms of an entry, spelled out before anything else reads it: `mix` of a batch, its `glue_up` in a line, and
 * pieces of which everything but the id is said once. Every value keeps the place where it was typed.
 */
import { ADHESIVE_PARTS } from "../../facts/build/adhesive-kind.ts";
import { glueUpSchema } from "../../facts/glue/glue-up.ts";
import { readNoted } from "../../facts/quantity/noted.ts";
import { isFault } from "../../facts/reading.ts";
import { frontOf, type Tree, treeAt, treeOf } from "../amend/tree.ts";
import type { Data, FrontMatter } from "../text/yaml.ts";

export function spelledOut(front: FrontMatter): FrontMatter {
  if (!isShort(front.data)) return front;
  const root = treeOf(front, front.data, []);
  for (const batch of treeAt(root, ["batches"])?.items ?? []) {
    spellMix(batch);
    spellPieces(batch);
    spellGlueUp(batch);
  }
  for (const amended of treeAt(root, ["amends"])?.items ?? [])
    for (const batch of treeAt(amended, ["batches"])?.items ?? []) {
      spellMix(batch);
      spellGlueUp(batch);
    }
  return frontOf(root);
}

/** Whether anything in it may be short. */
function isShort(data: Data): boolean {
  if (typeof data === "string" || Array.isArray(data)) return false;
  const { batches, amends } = data as { readonly [key: string]: Data | undefined };
  return [batches, ...listOf(amends).map((one) => (isBlock(one) ? one["batches"] : undefined))]
    .flatMap(listOf)
    .some(
      (batch) =>
        isBlock(batch) && (["mix", "glue_up"].some((key) => batch[key] !== undefined) || isBlock(batch["pieces"])),
    );
}

const listOf = (data: Data | undefined): readonly Data[] => (Array.isArray(data) ? (data as readonly Data[]) : []);
const isBlock = (data: Data | undefined): data is { readonly [key: string]: Data } =>
  typeof data === "object" && !Array.isArray(data);

/** What the batch says beside `mix` stays there, and what `mix` says of the same stays in it: that is a problem. */
function spellMix({ fields: batch }: Tree): void {
  const mix = batch?.get("mix");
  if (batch === undefined || mix?.fields === undefined) return;
  for (const [key, said] of [...mix.fields]) {
    const to = key === "at" ? "mixed" : key;
    if (batch.has(to) || said.text === undefined || said.text === "") continue;
    if (key === "at") batch.set(to, said);
    else if (ADHESIVE_PARTS.some((part) => part === key))
      batch.set(to, { origin: said.origin, fields: new Map([[measureOf(said.text), said]]) });
    else continue;
    mix.fields.delete(key);
  }
  if (mix.fields.size === 0) batch.delete("mix");
}

function measureOf(typed: string): "mass" | "volume" {
  const read = readNoted(typed, { dimensions: ["mass", "volume"] });
  return !isFault(read) && read.value.dimension === "volume" ? "volume" : "mass";
}

function spellPieces({ fields: batch }: Tree): void {
  const several = batch?.get("pieces");
  const ids = several?.fields?.get("ids")?.items;
  if (batch === undefined || several?.fields === undefined || ids === undefined || ids.length === 0) return;
  const said = [...several.fields].filter(([key]) => key !== "ids");
  const items = ids.map((id): Tree => ({ origin: id.origin, fields: new Map([["id", id], ...said]) }));
  batch.set("pieces", { origin: several.origin, items });
}

/** Words that begin a phrase, and name no procedure. */
const KEYS: ReadonlySet<string> = new Set([...Object.keys(glueUpSchema.shape), "mixed", "squeeze-out"]);

const ALONE: { readonly [phrase: string]: readonly [key: string, value: string] } = {
  "squeeze-out": ["squeeze_out", "all along"],
  scraped: ["scraped", "yes"],
  "second cup": ["second_cup", "yes"],
};

/** `std 09:30, spread 14:25 to 14:40, gap 0.2 mm`: the procedure and the time first, then phrases of a key and its value. */
function spellGlueUp({ fields: batch }: Tree): void {
  const line = batch?.get("glue_up");
  if (batch === undefined || line?.text === undefined || line.text.trim() === "") return;
  const { origin } = line;
  const fields = new Map<string, Tree>();
  const put = (key: string, text: string): void =>
    void fields.set(fields.has(key) ? `${key} again` : key, { origin, text });
  line.text.split(",").forEach((part, at) => {
    const phrase = part.trim().replace(/\s+/g, " ");
    const [head = "", ...rest] = phrase.split(" ");
    const value = rest.join(" ");
    const alone = ALONE[phrase];
    if (alone) return put(...alone);
    if (at === 0 && !KEYS.has(head) && (value === "" || /^\d{1,2}:\d{2}$/.test(value))) {
      put("by", head);
      if (value !== "") put("prepared", value);
    } else if (head === "spread")
      value.split(" to ").forEach((time, end) => put(end === 0 ? "spread" : "spread_to", time));
    else if (head === "drop" || head === "beaded")
      fields.set(fields.has(head) ? `${head} again` : head, { origin, items: rest.map((text) => ({ origin, text })) });
    else put(head === "mixed" ? "mixed_for" : head.replaceAll("-", "_"), value);
  });
  batch.set("glue_up", { origin, fields });
}
