/** What the about page says of rules, sources, adhesives and procedures. */
import type { Source } from "../../evidence/types/source.ts";
import { type AdhesiveKind, MADE, partsNoted } from "../../facts/build/adhesive-kind.ts";
import type { Adhesive, Finish, Procedure, Quantity } from "../../facts/types.ts";
import { asksRows, methodRows } from "../evidence/glue-up.ts";
import { quantityWords } from "../../words/quantities.ts";

export const KNOWN_WORDS: { readonly [known in Source["known"]]: string } = {
  seen: "read in a copy of the document",
  "second-hand": "second-hand: quoted by others, not read itself",
  memory: "from memory, not checked against the document",
  "common practice": "common practice, no published source",
  record: "from this record",
};

export interface Limit {
  readonly word: string;
  readonly value: string;
}

type Units = "metric" | "imperial";

const limit = (word: string, value: string | undefined): Limit[] => (value === undefined ? [] : [{ word, value }]);

/** Two parts that are mixed go without saying. */
const KINDS: { readonly [kind in AdhesiveKind]: string | undefined } = {
  "two-part": undefined,
  "one-part": "one part; it has no ratio",
  "powder-and-water": "powder and water, mixed",
  "applied-apart": "two parts, each on a face of its own and not mixed",
};

export function limitsOfAdhesive(adhesive: Adhesive, units: Units): Limit[] {
  const { byMass, byVolume, density, temperature, humidity, woodMoisture, shelfLife, spread } = adhesive;
  const ratio = (mix: Adhesive["byMass"]): string | undefined =>
    mix &&
    `${mix.typed} (${MADE[adhesive.kind].pair?.join(" : ") ?? ""})${mix.tolerance === undefined ? ", no tolerance given" : `, within ${mix.tolerance.typed}`}`;
  return [
    ...limit("Made of", KINDS[adhesive.kind]),
    ...limit("Ratio by mass", ratio(byMass)),
    ...limit("Ratio by volume", ratio(byVolume)),
    ...limit(
      "Density",
      density &&
        partsNoted<Quantity>(density)
          .map(({ part, noted }) => `${part} ${quantityWords(noted, units)}`)
          .join(", "),
    ),
    ...limit("Shop temperature", temperature?.typed),
    ...limit("Humidity", humidity?.typed),
    ...limit("Storage", adhesive.storage?.typed),
    ...limit(
      "Heated after gluing",
      adhesive.postCure && `${adhesive.postCure.temperature.typed} for ${adhesive.postCure.time.typed}`,
    ),
    ...limit("Service", adhesive.service?.typed),
    ...limit("Moisture of the wood", woodMoisture?.typed),
    ...limit(
      "Full cure",
      adhesive.cure.length === 0
        ? undefined
        : adhesive.cure.map(({ time, temperature: warmth }) => `${time.typed} at ${warmth.typed}`).join("; "),
    ),
    ...limit("Shelf life", shelfLife?.typed),
    ...limit("Spread", spread && quantityWords(spread, units)),
    ...asksRows(adhesive.asks),
  ];
}

export function limitsOfFinish({ kind, temperature, humidity, coats, recoat, dry, shelfLife }: Finish): Limit[] {
  return [
    { word: "Kind", value: kind },
    ...limit("Temperature of the air", temperature?.typed),
    ...limit("Humidity", humidity?.typed),
    ...limit("Coats", coats === undefined ? undefined : `at least ${coats}`),
    ...limit("Next coat no sooner than", recoat?.after?.typed),
    ...limit("Next coat no later than", recoat?.within?.typed),
    ...limit("Dries for", dry?.typed),
    ...limit("Shelf life", shelfLife?.typed),
  ];
}

const FORMS: { readonly [form in Procedure["form"]]: string } = {
  "three-leg": "three legs, the middle one pressed",
  "single-lap": "single lap, pulled",
  "block-shear": "block, sheared",
  "glue-up": "no test piece: how joints are glued",
};

export function limitsOfProcedure(procedure: Procedure, units: Units): Limit[] {
  const { leastCure, leastTemperature, woodFailure, stress, wood } = procedure;
  return [
    { word: "Form", value: FORMS[procedure.form] },
    ...limit("Overlap", procedure.overlap?.typed),
    ...limit("Pieces from each batch", procedure.pieces === undefined ? undefined : String(procedure.pieces)),
    ...limit(
      "Least cure before breaking",
      leastCure &&
        `${leastCure.time.typed}${leastCure.temperature === undefined ? "" : ` at ${leastCure.temperature.typed}`}`,
    ),
    ...limit("Temperature where none was noted", leastTemperature?.typed),
    ...limit("Wood failure", woodFailure && `at least ${woodFailure.typed}`),
    ...limit("Break in a face veneer of plywood", procedure.facePlyCounts ? "counts as one in the wood" : undefined),
    ...limit("Stress", stress && `at least ${quantityWords(stress, units)}`),
    ...limit(
      "Strength of the wood",
      wood && `crushing ${quantityWords(wood.crushing, units)}, shear ${quantityWords(wood.shear, units)}`,
    ),
    ...methodRows(procedure.method),
    ...asksRows(procedure.asks),
  ];
}
