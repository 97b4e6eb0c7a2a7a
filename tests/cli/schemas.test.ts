import { join } from "node:path";
import { expect, it } from "vitest";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { command } from "./command.ts";

const scratch = scratchFolders();

it("scarfline schemas writes a JSON Schema for each kind of file", async () => {
  const folder = scratch();
  const { code, out } = await command(["schemas", "--out", join(folder, "schemas")]);
  expect(code).toBe(0);
  const files = contentOf(join(folder, "schemas"));
  expect([...files.keys()]).toEqual(
    ["adhesive", "aircraft", "assembly", "climate", "entry", "lot", "procedure", "trial"].map(
      (kind) => `${kind}.schema.json`,
    ),
  );
  for (const [name, text] of files) {
    expect(JSON.parse(text), name).toMatchObject({
      $schema: expect.stringContaining("json-schema.org"),
      type: "object",
    });
    expect(out).toContain(name);
  }
});
