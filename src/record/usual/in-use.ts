/**
 * Puts what is in use into batches that say nothing else. It comes before amendments, so that these find a batch as it
 * stood; each value keeps its place in the entry that says it is in use.
 *
 * Only the adhesive, its lots, the scale and the sizes of pieces: never an amount, a time, a reading, the wood, or that
 * anything was done.
 */
import { ADHESIVE_PARTS, LOT_PARTS } from "../../facts/build/adhesive-kind.ts";
import type { Measured } from "../../facts/quantity/quantity.ts";
import { SCHEMAS, type Spec } from "../../facts/kinds.ts";
import { frontOf, textIn, type Tree, treeAt, treeOf } from "../amend/tree.ts";
import type { Draft, Filed } from "../filed.ts";
import { parse } from "../schema/parse.ts";
import type { Path } from "../text/yaml.ts";

type EntryFile = Filed<Spec<"entry">>;
type Said = NonNullable<Spec<"entry">["in_use"]>;

const SIZES = ["thickness", "width", "overlap"] as const;

/** In the order of the files as written: an entry counts for itself and for those after it, and for none before. */
export function withUsual(draft: Draft): Draft {
  if (!draft.files.entry.some(({ spec }) => spec?.in_use !== undefined)) return draft;
  const usual = new Usual();
  const unsound: string[] = [];
  const inOrder = [...draft.files.entry].sort((a, b) => (a.id < b.id ? -1 : 1));
  const made = new Map(
    inOrder.map((filed) => {
      if (filed.spec?.in_use) usual.take(filed, filed.spec.in_use);
      const filled = usual.into(filed);
      if (filed.whole && !filled.whole) unsound.push(filed.source.text);
      return [filed.file, filled];
    }),
  );
  const entry = draft.files.entry.map((filed) => made.get(filed.file) ?? filed);
  return { ...draft, files: { ...draft.files, entry }, unsound: [...draft.unsound, ...unsound] };
}

class Usual {
  #adhesive: Tree | undefined;
  /** By adhesive and part. */
  readonly #lots = new Map<string, Tree>();
  readonly #scales = new Map<string, Tree>();
  /** By procedure and size. */
  readonly #sizes = new Map<string, Tree>();

  take({ id, front, data }: EntryFile, said: Said): void {
    const root = treeOf(front, data, []);
    const at = (...path: Path): Tree | undefined => {
      const tree = treeAt(root, ["in_use", ...path]);
      return tree && { ...tree, usual: id };
    };
    if (said.ended) this.#end();
    if (said.adhesive !== undefined) this.#adhesive = at("adhesive");
    for (const part of LOT_PARTS)
      put(this.#lots, `${this.#adhesive?.text ?? ""} ${part}`, said[part] === undefined ? undefined : at(part));
    put(this.#scales, dimensionOf(said.scale), said.scale && at("scale"));
    said.pieces?.forEach((stock, index) => {
      for (const size of SIZES) {
        this.#sizes.delete(`${stock.procedure} ${size}`);
        put(this.#sizes, `${stock.procedure} ${size}`, stock[size] && at("pieces", index, size));
      }
    });
  }

  into(filed: EntryFile): EntryFile {
    if (filed.spec?.batches === undefined && filed.whole) return filed;
    const root = treeOf(filed.front, filed.data, []);
    const batches = treeAt(root, ["batches"])?.items ?? [];
    const puts = batches.map((batch) => this.#batch(batch));
    if (!puts.includes(true)) return filed;
    const front = frontOf(root);
    const parsed = parse(SCHEMAS.entry, front, { date: filed.id.slice(0, 10), title: "-" });
    const { spec, placeOf: at, typedAt, usualFrom } = parsed;
    const whole = filed.whole && parsed.problems.length === 0;
    return { ...filed, front, data: front.data, spec, whole, at, rawAt: front.placeOf, typedAt, usualFrom };
  }

  #end(): void {
    this.#adhesive = undefined;
    for (const all of [this.#lots, this.#scales, this.#sizes]) all.clear();
  }

  #batch({ fields: batch }: Tree): boolean {
    if (batch === undefined) return false;
    const own = [fill(batch, "adhesive", this.#adhesive)];
    const adhesive = batch.get("adhesive")?.text ?? "";
    for (const part of LOT_PARTS) own.push(fill(batch.get(part)?.fields, "lot", this.#lots.get(`${adhesive} ${part}`)));
    const measures = new Set(
      ADHESIVE_PARTS.map((part) => batch.get(part)?.fields).flatMap((part) =>
        part?.has("mass") ? ["mass"] : part?.has("volume") ? ["volume"] : [],
      ),
    );
    const [measure] = measures;
    if (measures.size === 1) own.push(fill(batch, "scale", this.#scales.get(measure ?? "")));
    for (const piece of batch.get("pieces")?.items ?? []) own.push(this.#piece(piece));
    return own.includes(true);
  }

  /** Where a leg has a thickness of its own, stock of another is at hand, and the jig's says nothing. */
  #piece(piece: Tree): boolean {
    const procedure = textIn(piece, "procedure") ?? "";
    const legs = piece.fields?.get("legs")?.items ?? [];
    const isOther = legs.some((leg) => leg.fields?.has("thickness") === true);
    return SIZES.filter((size) => size !== "thickness" || !isOther)
      .map((size) => fill(piece.fields, size, this.#sizes.get(`${procedure} ${size}`)))
      .includes(true);
  }
}

const dimensionOf = (scale: Measured | undefined): string => scale?.dimension ?? "";

function put(all: Map<string, Tree>, key: string, tree: Tree | undefined): void {
  if (tree !== undefined) all.set(key, tree);
}

/** What was typed stands, be it empty. */
function fill(fields: Map<string, Tree> | undefined, key: string, tree: Tree | undefined): boolean {
  if (fields === undefined || tree === undefined || fields.has(key)) return false;
  fields.set(key, tree);
  return true;
}
