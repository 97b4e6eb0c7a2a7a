/**
 * Every kind of problem that can be told of a record, with what is told of it. A problem whose code is not in this
 * table does not compile. Codes are stable once published: they may be added to, and are never given another meaning.
 */
import { AMENDS } from "./amends.ts";
import { CLIMATE } from "./climate.ts";
import { DAYS } from "./days.ts";
import type { Explanation } from "./explained.ts";
import { EARLIER } from "./earlier.ts";
import { FILES } from "./files.ts";
import { FORM } from "./form.ts";
import { GLUE } from "./glue.ts";
import { JOINTS } from "./joints.ts";
import { OWN } from "./own.ts";
import { PAPER } from "./paper.ts";
import { SESSION } from "./session.ts";
import { MATERIALS } from "./materials.ts";
import { TEXT } from "./text.ts";
import { VALUES } from "./values.ts";
import { WORK } from "./work.ts";

const TABLE = {
  ...TEXT,
  ...FORM,
  ...VALUES,
  ...FILES,
  ...GLUE,
  ...JOINTS,
  ...SESSION,
  ...DAYS,
  ...WORK,
  ...AMENDS,
  ...CLIMATE,
  ...EARLIER,
  ...MATERIALS,
  ...PAPER,
  ...OWN,
} as const;

export type ProblemCode = keyof typeof TABLE;

export const EXPLANATIONS: { readonly [code in ProblemCode]: Explanation } = TABLE;

export const PROBLEM_CODES = Object.keys(TABLE) as ProblemCode[];

export function isProblemCode(word: string): word is ProblemCode {
  return Object.hasOwn(TABLE, word);
}
