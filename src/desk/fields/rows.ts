/** Every field of a kind of file, as the schemas and the decisions on who may see it have them. */
import * as z from "zod";
import { firstShowing } from "../../editions/visibility.ts";
import { shortFormOf, toldAs } from "../../facts/field.ts";
import { adhesiveShown } from "../../facts/build/adhesive.ts";
import { aircraftShown } from "../../facts/build/aircraft.ts";
import { assemblyShown } from "../../facts/build/assembly.ts";
import { climateLogShown } from "../../facts/build/climate-log.ts";
import { earlierHoursShown } from "../../facts/build/earlier-hours.ts";
import { finishShown } from "../../facts/build/finish.ts";
import { lotShown } from "../../facts/build/lot.ts";
import { procedureShown } from "../../facts/build/procedure.ts";
import { trialShown } from "../../facts/build/trial.ts";
import { entrySchema } from "../../facts/entry/entry-form.ts";
import { entryShown } from "../../facts/entry/entry.ts";
import { namedBy } from "../../facts/id.ts";
import { aKind, type FileKind, SCHEMAS } from "../../facts/kinds.ts";
import type { Audience, Withheld } from "../../facts/types.ts";
import { bare } from "../../record/schema/form.ts";

export interface FieldRow {
  /** `people[].role` */
  readonly path: string;
  /** Whether it must be there, where the block that it is in is. */
  readonly needed: boolean;
  /** What it is, in words. */
  readonly form: string;
  readonly example: string;
  readonly says: string;
  /** The widest edition that shows it by default, where that is not the public one. */
  readonly from?: Audience;
}

const SHOWN: { readonly [kind in FileKind]: object } = {
  aircraft: aircraftShown,
  assembly: assemblyShown,
  adhesive: adhesiveShown,
  finish: finishShown,
  procedure: procedureShown,
  lot: lotShown,
  trial: trialShown,
  entry: entryShown,
  climate: climateLogShown,
  hours: earlierHoursShown,
};

export const KINDS = Object.keys(SHOWN) as FileKind[];

/** An amendment takes the fields of the entry once more: they are told once. */
const AMENDS = "amends";
const AMENDED: FieldRow = {
  path: `${AMENDS}[]. …`,
  needed: false,
  form: "as above",
  example: "",
  says: "Whatever else stands above: what is right, beside what finds the fact; under `struck` the names of values that are taken back.",
};

export function fieldRows(kind: FileKind): FieldRow[] {
  return rowsIn(SCHEMAS[kind], SHOWN[kind], "", undefined);
}

/** A decision, as far as it says what it withholds. */
interface Decision {
  readonly fields?: object;
  readonly withheld?: Withheld;
  readonly isShown?: Decision;
}

function rowsIn(block: z.ZodType, fields: object | undefined, above: string, from: Audience | undefined): FieldRow[] {
  const decisions = fields as { readonly [key: string]: Decision | undefined } | undefined;
  return Object.entries(shapeOf(block)).flatMap(([key, form]) => {
    if (above === `${AMENDS}[].` && key in entrySchema.shape) return [];
    const decision = decisions?.[key.replaceAll(/_(\w)/g, (_, letter: string) => letter.toUpperCase())];
    const withheld = decision?.withheld ?? decision?.isShown?.withheld;
    const first = withheld === undefined ? from : firstShowing(withheld);
    const path = `${above}${key}`;
    return [rowOf(path, form, first), ...rowsWithin(form, decision?.fields, path, first)];
  });
}

function rowsWithin(form: z.ZodType, fields: object | undefined, path: string, from: Audience | undefined): FieldRow[] {
  const item = itemOf(form);
  if (path === AMENDS) return [...rowsIn(item ?? form, fields, `${path}[].`, from), AMENDED];
  if (item !== undefined) return rowsIn(item, fields, `${path}[].`, from);
  return rowsIn(form, fields, `${path}.`, from);
}

function rowOf(path: string, form: z.ZodType, from: Audience | undefined): FieldRow {
  return {
    path,
    needed: !z.safeParse(form, undefined).success,
    form: formWords(form),
    example: exampleOf(form),
    says: metaOf(form)?.description ?? metaOf(itemOf(form) ?? form)?.description ?? "",
    ...(from !== undefined && { from }),
  };
}

function formWords(form: z.ZodType): string {
  const inner = bare(form) ?? form;
  const item = itemOf(inner);
  const short = shortFormOf(inner);
  if (short !== undefined) return `${wholeWords(inner, item)}, or in short ${formWords(short as z.ZodType)}`;
  return wholeWords(inner, item);
}

function wholeWords(form: z.ZodType, item: z.ZodType | undefined): string {
  const kind = namedBy(form);
  if (item !== undefined) return Object.keys(shapeOf(item)).length > 0 ? "a list" : `a list: ${formWords(item)}`;
  if (form instanceof z.ZodEnum) return `${form.options.length === 1 ? "only " : ""}${form.options.join(" / ")}`;
  if (kind !== undefined && kind !== "file") {
    const id = `the id of ${aKind(kind)}`;
    return toldAs(form) === undefined ? `${id}, or a list of them` : id;
  }
  return toldAs(form) ?? "a block";
}

function exampleOf(form: z.ZodType): string {
  const examples = metaOf(form)?.examples ?? metaOf(itemOf(form) ?? form)?.examples;
  // A whole block is told by the fields within it.
  return Array.isArray(examples)
    ? examples
        .filter((one) => typeof one !== "object")
        .map(String)
        .join("; ")
    : "";
}

/** What is said of a form itself, or of the one within `optional`. */
function metaOf(form: z.ZodType): z.GlobalMeta | undefined {
  return z.globalRegistry.get(form) ?? z.globalRegistry.get(bare(form) ?? form);
}

const shapeOf = (form: z.ZodType): { readonly [key: string]: z.ZodType } =>
  (bare(form)?.def as { shape?: { [key: string]: z.ZodType } } | undefined)?.shape ?? {};

const itemOf = (form: z.ZodType): z.ZodType | undefined =>
  (bare(form)?.def as { element?: z.ZodType } | undefined)?.element;
