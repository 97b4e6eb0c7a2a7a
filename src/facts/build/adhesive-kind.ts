/** What kinds of adhesive there are, and which parts each has. */

/** `applied-apart`: one part on each face, such as resin on the one and hardener on the other, never mixed in a cup. */
export const ADHESIVE_KINDS = ["two-part", "one-part", "powder-and-water", "applied-apart"] as const;
export type AdhesiveKind = (typeof ADHESIVE_KINDS)[number];

/** A part that comes in lots, and water, which comes from the tap. */
export const LOT_PARTS = ["resin", "hardener", "glue", "powder"] as const;
export type LotPart = (typeof LOT_PARTS)[number];
export const ADHESIVE_PARTS = [...LOT_PARTS, "water"] as const;
export type AdhesivePart = (typeof ADHESIVE_PARTS)[number];

/** Those of which a ratio is the second over the first; an adhesive of one part has none. */
export type PartPair = readonly [AdhesivePart, AdhesivePart];

interface Made {
  readonly parts: readonly AdhesivePart[];
  readonly pair?: PartPair;
  /** In a cup: its working life begins with mixing, that of another when it is spread. */
  readonly mixed: boolean;
}

export const MADE: { readonly [kind in AdhesiveKind]: Made } = {
  "two-part": { parts: ["resin", "hardener"], pair: ["resin", "hardener"], mixed: true },
  "one-part": { parts: ["glue"], mixed: false },
  "powder-and-water": { parts: ["powder", "water"], pair: ["powder", "water"], mixed: true },
  "applied-apart": { parts: ["resin", "hardener"], pair: ["resin", "hardener"], mixed: false },
};

export const isLotPart = (name: string): name is LotPart => LOT_PARTS.some((part) => part === name);

/** What a batch notes of the parts of an adhesive, in the order of {@link ADHESIVE_PARTS}. */
export function partsNoted<C>(
  batch: { readonly [part in AdhesivePart]?: C | undefined },
): { part: AdhesivePart; noted: C }[] {
  const all: { part: AdhesivePart; noted: C }[] = [];
  for (const part of ADHESIVE_PARTS) {
    const noted = batch[part];
    if (noted !== undefined) all.push({ part, noted });
  }
  return all;
}
