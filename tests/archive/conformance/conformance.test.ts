import { cpSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { scratchFolders } from "../../publish/scratch.ts";
import { bagIn } from "../make.ts";
import { CASES } from "./cases.ts";
import { judged } from "./judge.ts";

const scratch = scratchFolders();

/** The suite's layout, with bags of our own. */
function suite(): string {
  const folder = scratch();
  for (const [path, shape] of Object.entries(CASES)) {
    const bag = bagIn(join(folder, path), shape);
    if (shape.declaration === "-") rmSync(join(bag, "bagit.txt"));
  }
  return folder;
}

it("Each of the 60 cases of the published suite is as expected, or differs by words of RFC 8493", async () => {
  const all = await judged(suite());
  expect(all).toHaveLength(60);
  expect(all.filter(({ verdict }) => verdict === "unexplained")).toEqual([]);
  expect(all.filter(({ verdict }) => verdict === "differs, by RFC 8493").map(({ bag }) => bag)).toEqual([
    "v0.97/warning/duplicate-file-with-different-case",
    "v0.97/warning/same-filename-listed-twice-with-different-normalization",
    "v0.97/warning/special-system-files",
  ]);
});

it("A bag in the wrong folder of the suite is found out, whichever it is", async () => {
  const [right, wrong] = [suite(), scratch()];
  const other = {
    valid: "invalid",
    invalid: "valid",
    warning: "invalid",
    "linux-only": "valid",
    "windows-only": "valid",
  };
  const differing = /different-case|different-normalization|special-system/;
  for (const path of Object.keys(CASES).filter((each) => !differing.test(each))) {
    const [version = "", category = "", name = ""] = path.split("/");
    const to = join(wrong, version, other[category as keyof typeof other]);
    mkdirSync(to, { recursive: true });
    cpSync(join(right, path), join(to, `${category}-${name}`), { recursive: true });
  }
  const all = await judged(wrong);
  expect(all).toHaveLength(57);
  expect(all.filter(({ verdict }) => verdict !== "unexplained")).toEqual([]);
});
