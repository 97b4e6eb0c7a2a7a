import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { readRecord } from "../../src/record/read.ts";
import { excused, NONE } from "./because.ts";
import { fieldPaths, valuesIn } from "./fields.ts";
import { NOT_IN_THE_DEMO } from "./untold.ts";

const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));

it("The demo's record uses every field of every fact, or it is said why not", async () => {
  const read = await readRecord(CONTENT, { today: "2100-01-01" });
  const held = "record" in read ? new Set(valuesIn(read.record).map(([path]) => path)) : new Set<string>();
  const missing = fieldPaths().filter((field) => !held.has(field));
  expect(excused(missing, NOT_IN_THE_DEMO)).toEqual(NONE);
}, 30_000);
