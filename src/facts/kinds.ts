/** Which folder holds files of which kind. */
import type * as z from "zod";
import type { Kind } from "./values.ts";
import { adhesiveSchema } from "./build/adhesive.ts";
import { aircraftSchema } from "./build/aircraft.ts";
import { assemblySchema } from "./build/assembly.ts";
import { climateSchema } from "./build/climate-log.ts";
import { earlierHoursSchema } from "./build/earlier-hours.ts";
import { finishSchema } from "./build/finish.ts";
import { lotSchema } from "./build/lot.ts";
import { procedureSchema } from "./build/procedure.ts";
import { trialSchema } from "./build/trial.ts";
import { entrySchema } from "./entry/entry-form.ts";

export const SCHEMAS = {
  aircraft: aircraftSchema,
  assembly: assemblySchema,
  adhesive: adhesiveSchema,
  finish: finishSchema,
  procedure: procedureSchema,
  lot: lotSchema,
  trial: trialSchema,
  entry: entrySchema,
  climate: climateSchema,
  hours: earlierHoursSchema,
} as const;

export type FileKind = keyof typeof SCHEMAS;
export type Spec<K extends FileKind> = z.output<(typeof SCHEMAS)[K]>;

export const FOLDERS: { readonly [folder: string]: Exclude<FileKind, "aircraft"> } = {
  assemblies: "assembly",
  adhesives: "adhesive",
  finishes: "finish",
  procedures: "procedure",
  lots: "lot",
  trials: "trial",
  entries: "entry",
  climate: "climate",
  hours: "hours",
};

/** `an assembly` */
export function aKind(kind: Kind): string {
  return /^[aeiou]/.test(kind) ? `an ${kind}` : `a ${kind}`;
}
