import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { SCHEMAS } from "../../src/facts/kinds.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { command } from "./command.ts";

const scratch = scratchFolders();

it("scarfline schemas writes a JSON Schema for each kind of file", async () => {
  const folder = scratch();
  const { code, out } = await command(["schemas", "--out", join(folder, "schemas")]);
  expect(code).toBe(0);
  const files = contentOf(join(folder, "schemas"));
  expect([...files.keys()]).toEqual(
    Object.keys(SCHEMAS)
      .map((kind) => `${kind}.schema.json`)
      .sort(),
  );
  for (const [name, text] of files) {
    expect(JSON.parse(text), name).toMatchObject({
      $schema: expect.stringContaining("json-schema.org"),
      type: "object",
    });
    expect(out).toContain(name);
  }
});

it("scarfline schemas refuses a file in the folder's place, and a place where no folder can be", async () => {
  const file = join(scratch(), "file");
  writeFileSync(file, "kept");
  for (const out of [file, join(file, "within")]) {
    const { code, err } = await command(["schemas", "--out", out]);
    expect([code, err]).toEqual([2, `${file} is a file, and a folder is needed. Give another: --out DIR\n`]);
  }
  expect(readFileSync(file, "utf8")).toBe("kept");
  const { code, err } = await command(["schemas", "--out", "/proc/schemas"]);
  expect(code).toBe(2);
  expect(err).toBe("/proc/schemas cannot be made: the system makes no folders in /proc. Give another: --out DIR\n");
});
