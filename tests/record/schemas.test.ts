import { Ajv } from "ajv";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { FOLDERS } from "../../src/facts/kinds.ts";
import { LIMITS } from "../../src/facts/limits.ts";
import { jsonSchemas } from "../../src/record/schema-files.ts";

const SMALL = new URL("small", import.meta.url).pathname;
const ajv = new Ajv({ strict: true, allowUnionTypes: true });
const validators = new Map([...jsonSchemas()].map(([name, schema]) => [name, ajv.compile(schema)]));

/** Front matter as an editor's YAML reads it, numbers and all. */
function asEditorsRead(path: string): unknown {
  return parse(readFileSync(path, "utf8").split(/^---$/m)[1] ?? "");
}

const files = [
  ["aircraft.md", "aircraft"],
  ...Object.entries(FOLDERS)
    .filter(([folder]) => folder !== "climate" && folder !== "hours")
    .flatMap(([folder, kind]) => readdirSync(join(SMALL, folder)).map((file) => [`${folder}/${file}`, kind])),
] as [string, string][];

describe("The JSON Schemas", () => {
  it("stand for each kind of file", () => {
    expect([...validators.keys()].sort()).toEqual(
      ["adhesive", "aircraft", "assembly", "climate", "entry", "finish", "hours", "lot", "procedure", "trial"].map(
        (kind) => `${kind}.schema.json`,
      ),
    );
  });

  it.each(files)("accept %s", (file, kind) => {
    const validate = validators.get(`${kind}.schema.json`);
    validate?.(asEditorsRead(join(SMALL, file)));
    expect(validate?.errors).toBeNull();
  });

  it.each(files)("refuse an unknown key in %s", (file, kind) => {
    expect(
      validators.get(`${kind}.schema.json`)?.({ ...(asEditorsRead(join(SMALL, file)) as object), weather: "fair" }),
    ).toBe(false);
  });

  it("accept hours and ids that look like numbers to an editor", () => {
    expect(
      validators.get("entry.schema.json")?.({
        date: "2025-03-08",
        title: "1",
        assembly: "spar",
        hours: [{ who: "builder", task: "gluing", time: 1.5 }],
      }),
    ).toBe(true);
  });

  it("explain every key and show how it is written", () => {
    const bare: string[] = [];
    const visit = (schema: { [key: string]: unknown }, path: string): void => {
      for (const [key, part] of Object.entries(
        (schema["properties"] ?? {}) as { [key: string]: { [key: string]: unknown } },
      )) {
        const at = `${path}.${key}`;
        const leaf = part["properties"] === undefined && part["items"] === undefined && part["anyOf"] === undefined;
        if (
          leaf &&
          (part["description"] === undefined || (part["enum"] === undefined && part["examples"] === undefined))
        )
          bare.push(at);
        visit(part, at);
        const either = (part["anyOf"] ?? []) as { [key: string]: { [key: string]: unknown } }[];
        for (const form of [part, ...either]) visit((form["items"] ?? {}) as { [key: string]: unknown }, at);
        for (const form of either) visit(form, at);
      }
    };
    for (const [name, schema] of jsonSchemas()) visit(schema as { [key: string]: unknown }, name);
    expect(bare).toEqual([]);
  });

  it("say how long each text may be, and how much may stand in a block or list", () => {
    const entry = jsonSchemas().get("entry.schema.json") as {
      properties: { [key: string]: object };
      maxProperties: number;
    };
    expect(entry.maxProperties).toBe(LIMITS.keys);
    expect(entry.properties["title"]).toHaveProperty("maxLength", LIMITS.textLength);
    expect(entry.properties["date"]).toHaveProperty("maxLength", LIMITS.valueLength);
    expect(entry.properties["assembly"]).toHaveProperty("maxLength", LIMITS.idLength);
    expect(entry.properties["hours"]).toHaveProperty("maxItems", LIMITS.items);
    const long = { date: "2025-03-08", title: "1", assembly: "a".repeat(LIMITS.idLength + 1) };
    expect(validators.get("entry.schema.json")?.(long)).toBe(false);
  });
});
