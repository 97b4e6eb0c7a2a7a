/** Of what wood a piece is, and whether its lots can give its legs. */
import type { Lot, Quantity } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import type { Check, PieceCase } from "./case.ts";

/** How far a leg of plywood may differ from its sheet: this program's own measure of sanding and of rounded sizes. */
const SHEET_TOLERANCE = 0.1;

/** A leg that its lot cannot give shows nothing: plywood is as thick as its sheet, and no leg is thicker than its plank. */
export function legsOfLots(c: PieceCase): Check | undefined {
  const wrong = legsOf(c).filter(({ lot, thickness }) => !canGive(lot, thickness));
  const [first] = wrong;
  if (first === undefined) return undefined;
  const { lot, thickness } = first;
  const values = { lot: lot.id, leg: thickness?.typed, of: lot.thickness?.typed, material: lot.material };
  const beside = { alsoOn: [{ kind: "lot", id: lot.id }] } as const;
  const finding = c.find("piece-wood/leg-of-lot", c.test ? "unproven" : "caution", values, beside);
  return c.test ? { finding, verdict: "inconclusive" } : { finding };
}

function legsOf({ index, piece, lots }: PieceCase): { readonly lot: Lot; readonly thickness?: Quantity | undefined }[] {
  if (piece.legs !== undefined)
    return piece.legs.map((leg) => ({
      lot: lookUp(index.record.lots, leg.lot),
      thickness: leg.thickness ?? piece.thickness,
    }));
  return piece.lot === undefined ? [] : lots.map((lot) => ({ lot, thickness: piece.thickness }));
}

function canGive(lot: Lot, thickness: Quantity | undefined): boolean {
  if (thickness === undefined) return true;
  const most = lot.thickness?.value;
  if (lot.material === "plywood")
    return most !== undefined && Math.abs(thickness.value / most - 1) <= SHEET_TOLERANCE + 1e-9;
  return most === undefined || thickness.value <= most * (1 + 1e-9);
}
