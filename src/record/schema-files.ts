/** The schemas as JSON Schema, for editors that complete and explain front matter while it is typed. */
import * as z from "zod";
import { SCHEMAS } from "../facts/kinds.ts";
import { shortFormOf } from "../facts/field.ts";
import { LIMITS } from "../facts/limits.ts";

type Json = { [key: string]: unknown };

const TITLES: { readonly [kind in keyof typeof SCHEMAS]: string } = {
  aircraft: "The aircraft",
  assembly: "An assembly",
  finish: "What is put on, by its maker's sheet: primer, varnish, dope, paint, fabric or tape",
  adhesive: "An adhesive",
  procedure: "A test procedure",
  lot: "A lot",
  trial: "A trial",
  entry: "An entry",
  climate: "Beside a logger's file",
  hours: "Beside a table of earlier hours",
};

/** `entry.schema.json` and the like to their content. They describe what is typed; the reader checks more than they can say. */
export function jsonSchemas(): Map<string, object> {
  return new Map(
    Object.entries(SCHEMAS).map(([kind, schema]) => [
      `${kind}.schema.json`,
      jsonSchema(schema, TITLES[kind as keyof typeof SCHEMAS]),
    ]),
  );
}

function jsonSchema(schema: z.ZodType, title: string): object {
  return { ...jsonOf(schema), title };
}

function jsonOf(schema: z.ZodType): object {
  return z.toJSONSchema(schema, {
    io: "input",
    target: "draft-7",
    override: ({ zodSchema, jsonSchema: json }) => {
      const examples = z.globalRegistry.get(zodSchema)?.examples;
      if (Array.isArray(examples)) (json as Json)["examples"] = examples;
      if (json.type === "array") json.maxItems = Math.min(json.maxItems ?? LIMITS.items, LIMITS.items);
      if (json.type === "object") json.maxProperties = LIMITS.keys;
      // Editors read `1.5` as a number and `true` as neither; here both are text as typed.
      if (json.type === "string" && json.enum === undefined) (json as Json)["type"] = ["string", "number", "boolean"];
      const short = shortFormOf(zodSchema);
      if (short) orShort(json as Json, jsonOf(short) as Json);
    },
  });
}

/** What is said of the whole form stays beside both. */
function orShort(json: Json, { $schema: _, ...short }: Json): void {
  const { description, ...whole } = json;
  for (const key of Object.keys(json)) delete json[key];
  Object.assign(json, { description, anyOf: [whole, short] });
}
