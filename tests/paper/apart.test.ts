/** The process in which PDFs are set: what goes wrong in it is told, and it is gone when no more are wanted. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import type { Paper } from "../../src/publish/paper/blocks.ts";
import { setterApart } from "../../src/publish/paper/apart.ts";
import { scratchFolders } from "../publish/scratch.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const scratch = scratchFolders();

const paperOf = (body: Paper["body"]): Paper => ({
  title: "A paper",
  record: "Example",
  edition: "Archive edition",
  day: "Record of 1 May 2025",
  seal: "No seal",
  date: [2025, 5, 1],
  language: "en",
  front: [],
  body,
});

it("A paper that cannot be set is told with the reason, and the next one is set", async () => {
  const to = join(scratch(), "paper.pdf");
  const setter = setterApart(ROOT);
  const lacking = paperOf([{ b: "drawn", file: "nowhere.svg", alt: "A drawing", wide: true }]);
  await expect(setter.set({ paper: lacking, files: new Map(), to })).rejects.toThrow(
    /could not be set: .*nowhere\.svg/s,
  );
  expect(existsSync(to)).toBe(false);
  await setter.set({ paper: paperOf([{ b: "text", look: "plain", c: ["Words"] }]), files: new Map(), to });
  await setter.end();
  expect(readFileSync(to).subarray(0, 5).toString()).toBe("%PDF-");
});

it("Where that process cannot begin, setting a paper says so", async () => {
  const setter = setterApart(scratch());
  const one = setter.set({ paper: paperOf([]), files: new Map(), to: join(scratch(), "paper.pdf") });
  await expect(one).rejects.toThrow(/the process that sets them ended|EPIPE|channel/i);
  await setter.end();
});
