/**
 * Draws the loads at which the demonstration record's pieces broke and writes them into its entries: `npm run demo:loads`.
 * All of it is invented, and always the same: by the lot of the wood, its moisture, where the piece broke, and the piece itself.
 *
 * Clear wood in shear scatters by some 14 % about its mean (Wood Handbook, FPL-GTR-190, table 5-6; from memory), and gains some 3 % for
 * each per cent of moisture that it loses (the same, chapter 5; from memory). Means lie below the handbook's: a small piece is not
 * sheared alone (common practice, no source).
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { randomOf } from "./ink/random.ts";

const folder = fileURLToPath(new URL("../../content/entries/", import.meta.url));

interface Strength {
  /** MPa on the glued faces at 12 % moisture, or of a leg that is crushed. */
  readonly mean: number;
  readonly scatter: number;
  /** To how many newtons the load is read. */
  readonly step: number;
}

const STRENGTHS: { readonly [kind: string]: Strength } = {
  "three-leg wood": { mean: 6.6, scatter: 0.13, step: 5 },
  "three-leg crushed": { mean: 38.7, scatter: 0.08, step: 5 },
  "ply-between wood": { mean: 6.5, scatter: 0.13, step: 5 },
  "ply-between face ply": { mean: 5.7, scatter: 0.13, step: 5 },
  "block-shear wood": { mean: 11.4, scatter: 0.13, step: 100 },
  "ply-lap wood": { mean: 3.3, scatter: 0.12, step: 10 },
  "ply-lap face ply": { mean: 3.1, scatter: 0.12, step: 10 },
};
const MOISTURE_GAIN = 0.03;
const LOT_SCATTER = 0.03;

/** Read wrong on the day, and amended later: these stand as they were typed. */
const AS_TYPED: readonly string[] = ["B-019/3", "B-024/2"];
/** A pitch pocket, and a lean cup. */
const ODD: { readonly [piece: string]: number } = {
  "B-045/2": 0.66,
  "B-008/1": 0.94,
  "B-008/2": 0.94,
  "B-008/3": 0.94,
};

interface Made {
  readonly procedure: string;
  readonly lot: string;
  readonly moisture: number;
  /** mm */
  readonly sizes: { readonly thickness: number; readonly width: number; readonly overlap: number };
}

function normal(name: string): number {
  const random = randomOf(name);
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function millimetres(text: string): number {
  const [, whole = "0", numerator, denominator = "1", unit] =
    /^(\d+)?\s?(?:(\d+)\/(\d+) )?\s?(mm|in)$/u.exec(text) ?? [];
  const value = Number(whole) + (numerator === undefined ? 0 : Number(numerator) / Number(denominator));
  return unit === "in" ? value * 25.4 : value;
}

function sizeOf(line: string, key: string): number {
  const text = new RegExp(`[ {]${key}: ([^,}\\]]+)[,}]`, "gu");
  return millimetres([...line.matchAll(text)].at(-1)?.[1]?.trim() ?? "");
}

function made(text: string): [string, Made][] {
  let moisture = 10.5;
  return text.split("\n").flatMap((line): [string, Made][] => {
    moisture = Number(/^ {4}moisture: ([\d.]+) %/u.exec(line)?.[1] ?? moisture);
    const [, id, procedure] = /^ +- \{ id: (B-\d+\/\d+), procedure: ([a-z-]+)/u.exec(line) ?? [];
    if (id === undefined || procedure === undefined) return [];
    const sizes = {
      thickness: sizeOf(line, "thickness"),
      width: sizeOf(line, "width"),
      overlap: sizeOf(line, "overlap"),
    };
    return [[id, { procedure, lot: /lot: ([A-Z]+-\d+)/u.exec(line)?.[1] ?? "", moisture, sizes }]];
  });
}

function loadOf(id: string, { procedure, lot, moisture, sizes }: Made, failure: string): string | undefined {
  const strength = STRENGTHS[`${procedure} ${failure}`];
  if (strength === undefined || AS_TYPED.includes(id)) return undefined;
  const { thickness, width, overlap } = sizes;
  const faces = procedure === "three-leg" || procedure === "ply-between" ? 2 : 1;
  const area = failure === "crushed" ? width * thickness : faces * width * overlap;
  const ofLot = 1 + LOT_SCATTER * normal(`lot ${lot}`);
  const dry = 1 + MOISTURE_GAIN * (12 - moisture);
  const drawn = strength.mean * ofLot * dry * (1 + strength.scatter * normal(`load ${id}`)) * (ODD[id] ?? 1) * area;
  const newtons = Math.round(drawn / strength.step) * strength.step;
  return strength.step === 100 ? `${(newtons / 1000).toFixed(1)} kN` : `${newtons} N`;
}

const texts = new Map(
  readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .map((name) => [name, readFileSync(folder + name, "utf8")]),
);
const pieces = new Map([...texts.values()].flatMap(made));

for (const [name, text] of texts) {
  const drawn = text.replace(
    /^( {2}- \{ piece: (B-\d+\/\d+), .*?failure: ([a-z ]+),.*? load: )([^,}]+?)(?= ?[,}])/gmu,
    (whole, before: string, id: string, failure: string) => {
      const piece = pieces.get(id);
      const load = piece && loadOf(id, piece, failure);
      return load === undefined ? whole : before + load;
    },
  );
  if (drawn !== text) writeFileSync(folder + name, drawn);
}
