/** The sizes of pieces as they were cut last, and how their overlap stands to what the procedure asks. */
import type { Procedure } from "../facts/types.ts";
import { readQuantity } from "../facts/quantity/quantity.ts";
import { isFault } from "../facts/reading.ts";
import { against } from "../reckoning/compare.ts";
import { overlapRatio } from "../reckoning/pieces/overlap.ts";
import { figure } from "../words/numbers.ts";
import type { Sizes } from "./snapshot.ts";

export function overlapWords({ thickness, width, overlap }: Sizes, procedure: Procedure | undefined): string {
  const sizes = [thickness, width, overlap].filter((size) => size !== undefined);
  if (sizes.length === 0) return "no sizes known: write them at the desk";
  const [least, long] = [lengthOf(thickness), lengthOf(overlap)];
  const ratio = least === undefined || long === undefined ? undefined : overlapRatio(long, least);
  const asked = procedure?.overlap;
  if (ratio === undefined || asked === undefined) return `as cut last: ${sizes.join(" × ")}`;
  const where = against(ratio, asked);
  const told = where === "within" ? "as asked" : `${where} the ${asked.typed} asked`;
  return `as cut last: ${sizes.join(" × ")}, overlap ${figure(ratio, 1)} thicknesses, ${told}`;
}

function lengthOf(typed: string | undefined): number | undefined {
  const read = typed === undefined ? undefined : readQuantity(typed, { dimensions: ["length"] });
  return read === undefined || isFault(read) ? undefined : read.value.value;
}
