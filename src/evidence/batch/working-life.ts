/** Whether the joint was closed within the working life of the mix. */
import { atMost } from "../../reckoning/compare.ts";
import { figure, span } from "../../words/figure.ts";
import { sheetOf } from "../sources.ts";
import type { Finding } from "../types.ts";
import type { BatchCase } from "./case.ts";

export function workingLifeRule(c: BatchCase): Finding[] {
  const {
    batch: { mixed, closed, temperature },
    facts: { mass, openFor, life },
  } = c;
  const unproven = (sentence: string): Finding[] => [c.find("working-life", "unproven", { sentence })];
  if (!mixed || !closed || openFor === undefined)
    return unproven(`${absent(mixed, closed)}, so the time it stood is not known.`);
  const stood = `Mixed at ${mixed.typed} and closed at ${closed.typed}`;
  if (openFor < 0) return unproven(`${stood}: closed before it was mixed.`);
  if (!temperature)
    return unproven(`${stood}, ${span(openFor)}; without a temperature no working life can be looked up.`);
  if (mass === undefined)
    return unproven(
      `${stood}, ${span(openFor)}; the mass of the mix is not known, so no working life can be looked up.`,
    );
  if (!life)
    return unproven(
      `${stood}, ${span(openFor)}; the data sheet gives no working life for ${grams(mass)} at ${temperature.typed}.`,
    );
  const limit = {
    text: `closed within ${life.row.time.typed}, as for ${life.row.mass.typed} at ${life.row.temperature.typed}`,
    from: sheetOf(c.adhesive),
  };
  if (atMost(openFor, life.time))
    return [
      c.find("working-life", "meets", { sentence: `${stood}: ${span(openFor)} of ${life.row.time.typed}.`, limit }),
    ];
  return [
    c.find("working-life", "rejects", {
      sentence: `${stood}: ${span(openFor)}, more than ${life.row.time.typed}.`,
      limit,
    }),
  ];
}

function absent(mixed: unknown, closed: unknown): string {
  if (!mixed && !closed) return "Neither when it was mixed nor when the joint was closed is noted";
  return mixed ? "When the joint was closed is not noted" : "When it was mixed is not noted";
}

const grams = (kilograms: number): string => `${figure(kilograms * 1000, 1)} g`;
