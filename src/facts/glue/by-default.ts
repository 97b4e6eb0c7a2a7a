/** What of a batch was typed nowhere in it, and stands as it was in use then. */
import { LOT_PARTS, type LotPart } from "../build/adhesive-kind.ts";
import { type Decisions, ifShown, show } from "../decisions.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Path } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export interface ByDefault {
  /** What stands by default, in the words of the trade, and of which piece. */
  readonly what: "adhesive" | `lot of ${LotPart}` | "scale" | "thickness" | "width" | "overlap";
  readonly piece?: string;
  /** The lot, where it is one. */
  readonly lot?: string;
  /** The entry that says it is in use. */
  readonly entry: string;
}

const SIZES = ["thickness", "width", "overlap"] as const;

type Glued = { readonly [part in LotPart]?: { readonly lot?: string | undefined } | undefined } & {
  readonly pieces?: readonly { readonly id: string }[] | undefined;
};

/** Undefined where all was typed. */
export function byDefaultOf(spec: Glued, path: Path, { usualFrom }: InEntry): readonly ByDefault[] | undefined {
  const found = (what: ByDefault["what"], at: Path, rest: Pick<ByDefault, "piece" | "lot">): ByDefault[] => {
    const entry = usualFrom([...path, ...at]);
    return entry === undefined ? [] : [factOf<ByDefault>({ what, entry, piece: rest.piece, lot: rest.lot })];
  };
  const lotOf = (part: { readonly lot?: string | undefined } | undefined) =>
    part?.lot === undefined ? {} : { lot: part.lot };
  const all = [
    ...found("adhesive", ["adhesive"], {}),
    ...LOT_PARTS.flatMap((part) => found(`lot of ${part}`, [part, "lot"], lotOf(spec[part]))),
    ...found("scale", ["scale"], {}),
    ...(spec.pieces ?? []).flatMap(({ id: piece }, at) =>
      SIZES.flatMap((size) => found(size, ["pieces", at, size], { piece })),
    ),
  ];
  return all.length === 0 ? undefined : all;
}

export const byDefaultShown: Decisions<ByDefault> = {
  what: show,
  piece: ifShown("pieces"),
  lot: ifShown("lots"),
  entry: show,
};

/** Goes with its lot and its piece. An entry that says what is in use is for everyone. */
export const isByDefaultShown = ({ lot, piece, entry }: ByDefault, seer: Visibility): boolean =>
  seer.entries.has(entry) &&
  (lot === undefined || seer.lots.has(lot)) &&
  (piece === undefined || seer.pieces.has(piece));
