/** What is in use from a day on: it stands where a batch of that entry or a later one says nothing else. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, each, ifShown, show } from "../decisions.ts";
import { exempt } from "../entry/amending.ts";
import { block, choice, either, list, quantity } from "../field.ts";
import { idOf } from "../id.ts";
import { factOf, type InEntry, maybe } from "../typing.ts";
import type { Path, Quantity } from "../values.ts";

export const inUseSchema = block({
  ended: choice(["all"], "Nothing that was in use before is any more: an odd day, or a tin that is empty.").optional(),
  adhesive: idOf("adhesive", "The adhesive that is mixed, unless a batch says another.", "epoxy-a").optional(),
  resin: idOf("lot", "The open lot of its resin.", "R-3").optional(),
  hardener: idOf("lot", "The open lot of its hardener.", "H-3").optional(),
  glue: idOf("lot", "The open lot of it, where it is of one part.", "G-1").optional(),
  powder: idOf("lot", "The open lot of its powder.", "U-1").optional(),
  scale: either(["mass", "volume"], "Reading step of the scale or the measure on the bench.", [
    "0.1 g",
    "1 ml",
  ]).optional(),
  pieces: list(
    block({
      procedure: idOf("procedure", "Of the pieces made by this procedure,", "three-leg"),
      thickness: quantity(
        { dimension: "length", example: "1/4 in" },
        "the thickness that its stock is planed to,",
      ).optional(),
      width: quantity({ dimension: "length", example: "1/4 in" }, "its width,").optional(),
      overlap: quantity({ dimension: "length", example: "5/8 in" }, "and the overlap that its jig sets.").optional(),
    }),
    "The sizes that stock and jig of a procedure make.",
  ).optional(),
});

export interface InUse {
  readonly place: Place;
  /** Whether nothing that was in use before is any more. */
  readonly ended?: boolean;
  readonly adhesive?: string;
  readonly resin?: string;
  readonly hardener?: string;
  /** Of an adhesive of one part. */
  readonly glue?: string;
  readonly powder?: string;
  readonly scale?: Quantity;
  readonly pieces?: readonly StockOfPieces[];
}

/** The sizes that stock and jig of a procedure make. */
interface StockOfPieces {
  readonly procedure: string;
  readonly thickness?: Quantity;
  readonly width?: Quantity;
  readonly overlap?: Quantity;
}

export function inUseOf(spec: z.output<typeof inUseSchema>, path: Path, of: InEntry): InUse {
  return factOf<InUse>({
    place: of.at(path),
    ended: spec.ended && true,
    adhesive: spec.adhesive,
    resin: spec.resin,
    hardener: spec.hardener,
    glue: spec.glue,
    powder: spec.powder,
    scale: maybe(spec.scale),
    pieces: spec.pieces?.map(({ procedure, thickness, width, overlap }) =>
      factOf<StockOfPieces>({ procedure, thickness: maybe(thickness), width: maybe(width), overlap: maybe(overlap) }),
    ),
  });
}

const stockShown: Decisions<StockOfPieces> = { procedure: show, thickness: show, width: show, overlap: show };

export const inUseShown: Decisions<InUse> = {
  place: show,
  ended: show,
  adhesive: show,
  resin: ifShown("lots"),
  hardener: ifShown("lots"),
  glue: ifShown("lots"),
  powder: ifShown("lots"),
  scale: show,
  pieces: each(stockShown),
};

export const inUseAmended = exempt(
  "what earlier entries said must not change by it: a batch for which it was wrong is amended itself, and another is in use from a new entry on",
);
