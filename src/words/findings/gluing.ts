/** The glue-up: what was asked, what was found, and what tells against a glue line by itself. */
import type { GlueUpFound, GlueUpValues } from "../../evidence/codes/gluing.ts";
import type { Ask } from "../../facts/types.ts";
import { span } from "../durations.ts";
import { ended, listed } from "../lists.ts";
import { percent } from "../numbers.ts";
import type { Sentences } from "./catalogue.ts";

/** Each thing that can be asked, and how what was asked of it is read. */
export const ASKS: { readonly [ask in Ask]: readonly [thing: string, asked: (typed: string) => string] } = {
  preparedWithin: ["From finished surfaces to the last one spread", (typed) => `at most ${typed}`],
  openTime: ["From the first face spread to the last, and the last joint closed", (typed) => `at most ${typed}`],
  assemblyTime: ["From the first face spread to the last clamp tight", (typed) => `at most ${typed}`],
  clamped: ["Under clamps, as far as the record goes", (typed) => `at least ${typed}`],
  mixing: ["Mixed for", (typed) => `at least ${typed}`],
  gap: ["Greatest gap when tried dry", (typed) => `at most ${typed}`],
  moistureDifference: ["Moistures of the parts apart by", (typed) => `at most ${typed}`],
  fillerMass: ["Filler, of the mass of the mix", (typed) => `at most ${typed}`],
  fillers: ["Filler", (typed) => `none, or ${typed}`],
  pressure: ["Pressure", (typed) => typed],
  resin: ["Warmth of the resin", (typed) => typed],
  faces: ["Faces wetted", (typed) => typed],
  endGrain: ["End grain wetted", (typed) => typed],
  squeezeOut: ["Adhesive squeezed out", (typed) => typed],
  staples: ["Staples", (typed) => typed],
  waterDrop: ["A drop of water on each lot of plywood that day", () => "it spreads"],
  overCured: ["Cured adhesive bonded again", () => "washed and abraded before"],
  scraped: ["Sides and bottom of the cup scraped while mixing", (typed) => typed],
  secondCup: ["Mixed again in a second cup", (typed) => typed],
};

export const GLUING: Sentences<GlueUpValues> = {
  "glue-up/as-asked": (v) => `${found(v)}${v.by === undefined ? "" : `, as ${v.by} says`}; asked: ${asked(v)}.`,
  "glue-up/not-as-asked": (v) => `${found(v)}${v.by === undefined ? "" : `, as ${v.by} says`}, and not ${asked(v)}.`,
  "glue-up/not-noted": (v) => `${ASKS[v.ask][0]} is not noted; asked: ${asked(v)}.`,
  "glue-up/estimate": (v) =>
    `${ASKS[v.ask][0]} is only estimated (${v.found}), which shows nothing; asked: ${asked(v)}.`,
  "glue-up/dry-spots": ({ where }) => `Dry spots seen: ${ended(where)}`,
  "glue-up/little-squeezed": ({ squeezeOut }) =>
    `Adhesive was seen to be squeezed out ${squeezeOut === "none" ? "nowhere" : "in part only"}.`,
  "glue-up/beaded": ({ lots }) => `A drop of water stood in a bead on ${listed(lots)}: adhesive may not wet it.`,
  "glue-up/one-face": () => "Only one face of the joint was wetted with adhesive.",
  "glue-up/over-cured": () => "Cured adhesive was bonded again, neither washed nor abraded.",
};

const asked = (v: GlueUpValues["glue-up/not-noted"]): string => ASKS[v.ask][1](v.asked);

const found = (v: GlueUpValues["glue-up/as-asked"]): string => `${ASKS[v.ask][0]}: ${foundWords(v.found)}`;

function foundWords(of: GlueUpFound): string {
  if ("typed" in of) return of.typed;
  if ("seconds" in of) return span(of.seconds);
  if ("share" in of) return percent(of.share, 1);
  return `${of.beaded ? "a bead on" : "it spread on"} ${listed(of.lots)}`;
}
