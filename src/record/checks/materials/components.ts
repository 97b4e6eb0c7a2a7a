/** The parts of an adhesive in its batches, its lots and its sheet: those that it is made of, and measured in one way. */
import {
  type AdhesiveKind,
  type AdhesivePart,
  isLotPart,
  type LotPart,
  MADE,
  type PartPair,
  partsNoted,
} from "../../../facts/build/adhesive-kind.ts";
import { DIMENSIONS } from "../../../facts/quantity/units.ts";
import type { Spec } from "../../../facts/kinds.ts";
import type { Filed } from "../../filed.ts";
import type { Path } from "../../text/yaml.ts";
import { type BatchSpec, type CheckContext, type EntryFile, report, soundOf, whereIs } from "../context.ts";

/** How much of a part, as it was noted. */
export type Amount = Pick<NonNullable<BatchSpec["resin"]>, "mass" | "volume">;

const listed = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(" and ");

const MADE_OF: { readonly [kind in AdhesiveKind]: string } = {
  "two-part": "is of two parts",
  "one-part": "is of one part",
  "powder-and-water": "is powder and water",
  "applied-apart": "is of two parts, applied apart",
};

export function checkComponents(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  kind: AdhesiveKind | undefined,
): void {
  const { parts, pair } = MADE[kind ?? "two-part"];
  for (const { part } of partsNoted<unknown>(batch)) {
    if (kind === undefined || parts.includes(part)) continue;
    report(context, filed, [...path, part], {
      code: "no-such-part",
      message: `${batch.adhesive} ${MADE_OF[kind]}, and this batch has ${part}`,
      expected: `${listed(parts)} of ${batch.adhesive}`,
      found: `\`${part}\``,
      mend: `write what went into it as ${listed(parts)}, or name the adhesive that was used; what ${batch.adhesive} is made of is \`kind\` in its file`,
    });
  }
  const used = pair
    ? oneWay(context, filed, path, batch, pair)
    : oneWayOf(context, filed, path, batch, parts[0] ?? "glue");
  if (used === undefined) return;
  for (const key of ["scale", "waste"] as const) checkMeasure(context, filed, path, batch, key, used);
}

/** A lot in use of a part that its adhesive has not. */
export function checkPartInUse(
  context: CheckContext,
  filed: EntryFile,
  part: LotPart,
  { adhesive, kind }: { readonly adhesive: string; readonly kind: AdhesiveKind | undefined },
): void {
  if (kind === undefined || MADE[kind].parts.includes(part)) return;
  report(context, filed, ["in_use", part], {
    code: "no-such-part",
    message: `${adhesive} ${MADE_OF[kind]}, and a lot of ${part} is said to be in use`,
    expected: `${listed(MADE[kind].parts.filter(isLotPart))} of ${adhesive}`,
    found: `\`${part}\``,
    mend: `say which part it is, or name the adhesive that is in use; what ${adhesive} is made of is \`kind\` in its file`,
  });
}

type Way = "mass" | "volume";

const wayOf = (component: Amount | undefined): Way | undefined =>
  component?.mass ? "mass" : component?.volume ? "volume" : undefined;

/** The way in which both parts were measured. */
function oneWay(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  [one, other]: PartPair,
): Way | undefined {
  const expected = `${one} and ${other} both by mass, or both by volume`;
  for (const part of [one, other]) if (isTwoWays(context, filed, path, batch, part, expected)) return undefined;
  const [first, second] = [wayOf(batch[one]), wayOf(batch[other])];
  if (first === undefined || second === undefined || first === second) return first ?? second;
  report(context, filed, [...path, other, second], {
    code: "mix-two-ways",
    message: `the ${one} is given by ${first} and the ${other} by ${second}`,
    expected,
    found: batch[other]?.[second]?.typed ?? "",
    mend: `give the ${first} of the ${other}, or the ${second} of the ${one}`,
  });
  return undefined;
}

function oneWayOf(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  part: AdhesivePart,
): Way | undefined {
  return isTwoWays(context, filed, path, batch, part, `${part} by mass or by volume`) ? undefined : wayOf(batch[part]);
}

function isTwoWays(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  part: AdhesivePart,
  expected: string,
): boolean {
  const { mass, volume } = batch[part] ?? {};
  if (mass === undefined || volume === undefined) return false;
  report(context, filed, [...path, part, "volume"], {
    code: "mix-two-ways",
    message: `the ${part} is given by mass and by volume`,
    expected,
    found: `${mass.typed} and ${volume.typed}`,
    mend: "keep the one by which it was measured",
  });
  return true;
}

/** What must be in the measure of the mix. */
const MEASURES = {
  scale: {
    of: "the step of ",
    such: { mass: "0.1 g", volume: "1 ml" },
    mend: "write the reading step of what the mix was measured with",
  },
  waste: {
    of: "",
    such: { mass: "12 g", volume: "10 ml" },
    mend: "measure what was left as the mix was measured, or tell of it in the prose",
  },
} as const;

function checkMeasure(
  context: CheckContext,
  filed: EntryFile,
  path: Path,
  batch: BatchSpec,
  key: keyof typeof MEASURES,
  used: "mass" | "volume",
): void {
  const given = batch[key];
  if (given === undefined || given.dimension === used) return;
  const { of, such, mend } = MEASURES[key];
  report(context, filed, [...path, key], {
    code: "wrong-dimension",
    message: `the mix is by ${used}, but this is ${of}${DIMENSIONS[given.dimension].name}`,
    expected: `${DIMENSIONS[used].name}, such as ${such[used]}`,
    found: given.typed,
    mend,
  });
}

/** What the sheets as entered, and the lots, say of parts. */
export function checkParts(context: CheckContext): void {
  const kinds = new Map<string, { readonly kind: AdhesiveKind; readonly filed: Filed<unknown> }>();
  for (const filed of soundOf(context, "adhesive")) {
    const kind = filed.spec.kind ?? "two-part";
    kinds.set(filed.id, { kind, filed });
    checkSheet(context, filed, filed.spec, kind);
  }
  for (const filed of soundOf(context, "lot")) {
    const { material, adhesive } = filed.spec;
    const of = adhesive === undefined ? undefined : kinds.get(adhesive);
    if (of === undefined || !isLotPart(material) || MADE[of.kind].parts.includes(material)) continue;
    const lots = MADE[of.kind].parts.filter(isLotPart);
    report(context, filed, ["material"], {
      code: "no-such-part",
      message: `${adhesive} ${MADE_OF[of.kind]}, and this is a lot of ${material}`,
      expected: `${listed(lots)} of ${adhesive}`,
      found: `${material}; \`kind\` of ${adhesive} at ${whereIs(of.filed, ["kind"])}`,
      mend: "write what came in the lot, or the adhesive that it is a part of",
    });
  }
}

function checkSheet(context: CheckContext, filed: Filed<unknown>, spec: Spec<"adhesive">, kind: AdhesiveKind): void {
  const { parts, pair } = MADE[kind];
  for (const key of ["by_mass", "by_volume"] as const) {
    if (pair !== undefined || spec[key] === undefined) continue;
    report(context, filed, [key], {
      code: "no-such-part",
      message: `${filed.id} ${MADE_OF[kind]}, and this is a ratio of two`,
      expected: "no ratio of an adhesive of one part",
      found: spec[key].ratio.typed,
      mend: "correct `kind`, or take the ratio away if its sheet gives none",
    });
  }
  const given = partsNoted<unknown>(spec.density ?? {}).map(({ part }) => part);
  for (const part of given.filter((one) => !parts.includes(one)))
    report(context, filed, ["density", part], {
      code: "no-such-part",
      message: `${filed.id} ${MADE_OF[kind]}, and this is the density of ${part}`,
      expected: `the density of ${listed(parts)}`,
      found: `\`${part}\``,
      mend: "correct `kind`, or the part that the density is of",
    });
  checkWhole(context, filed, spec, kind, given);
}

/** A sheet's line without what its kind needs would be read as less strict than it is. */
function checkWhole(
  context: CheckContext,
  filed: Filed<unknown>,
  spec: Spec<"adhesive">,
  kind: AdhesiveKind,
  given: readonly AdhesivePart[],
): void {
  const missing = MADE[kind].parts.filter((part) => !given.includes(part));
  const known = given.filter((part) => MADE[kind].parts.includes(part));
  if (known.length > 0 && missing.length > 0)
    report(context, filed, ["density"], {
      code: "half-a-sheet",
      message: `the density of ${listed(missing)} is missing`,
      expected: `the density of ${listed(MADE[kind].parts)}`,
      found: given.join(", "),
      mend: "add what the sheet gives, or take `density` away where it does not give all",
    });
  if (kind !== "two-part") return;
  (spec.working_life ?? []).forEach((row, at) => {
    if (row.mass !== undefined) return;
    report(context, filed, ["working_life", at], {
      code: "half-a-sheet",
      message: "this working life says nothing of how much was mixed",
      expected: "`mass`, such as `mass: 100 g`: a big cup of two parts gets hot and is short-lived",
      found: `${row.time.typed} at ${row.temperature.typed}`,
      mend: "add the mass for which the sheet gives this time",
    });
  });
}
