import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { reckon } from "../../src/evidence/evidence.ts";
import { inOrder, problemText } from "../../src/problem.ts";
import { readRecord } from "../../src/record/read.ts";

const textOf = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const README = textOf("README.md");
const PAGE = textOf("layouts/readme/record.md");
const content = mkdtempSync(join(tmpdir(), "scarfline-readme-"));
afterAll(() => rmSync(content, { recursive: true }));

describe("The record that the page of files shows", () => {
  const files = examplesOf(PAGE);

  it("shows one file of each kind", () => {
    expect([...files.keys()].map((path) => dirname(path))).toEqual([
      ".",
      "assemblies",
      "adhesives",
      "procedures",
      "lots",
      "lots",
      "lots",
      "finishes",
      "entries",
      "entries",
    ]);
  });

  it("is a page that the README leads to, and comes with the package", () => {
    expect(README).toContain("](layouts/readme/record.md)");
    expect(README).not.toContain("```markdown");
    expect((JSON.parse(textOf("package.json")) as { files: string[] }).files).toContain("layouts/readme/record.md");
  });

  it("has no problem, and its one batch and joint are shown", async () => {
    for (const [path, text] of files) {
      mkdirSync(dirname(join(content, path)), { recursive: true });
      writeFileSync(join(content, path), text);
    }
    const read = await readRecord(content);
    if ("problems" in read) expect.fail(inOrder(read.problems).map(problemText).join("\n"));
    const evidence = reckon(read.record);
    expect(evidence.batches.get("B-001")?.verdict).toBe("shown");
    expect(evidence.joints.get("RD-J01")?.state).toBe("shown");
  });

  it("quotes problems as they are said", async () => {
    const quoted = /```text\n([\s\S]*?)```/.exec(README)?.[1]?.trimEnd();
    const path = "entries/2026-03-14-first-glue.md";
    const broken = (files.get(path) ?? "")
      .replace("mass: 40.0 g", "mass: 40.0")
      .replace("assembly: rudder", "assembly: ruder")
      .replace("moisture:", "moisure:");
    writeFileSync(join(content, path), broken);
    const read = await readRecord(content);
    expect("problems" in read ? inOrder(read.problems).map(problemText).join("\n\n") : "no problems").toBe(quoted);
  });
});

/** Markdown blocks of the README by the paths in the line above them, in order. */
function examplesOf(text: string): Map<string, string> {
  const files = new Map<string, string>();
  const waiting: string[] = [];
  for (const part of text.split(/(```markdown\n[\s\S]*?```\n)/)) {
    if (part.startsWith("```markdown\n")) {
      const path = waiting.shift();
      if (path !== undefined) files.set(path, part.slice("```markdown\n".length, -"```\n".length));
    } else {
      waiting.push(
        ...[...(part.trimEnd().split("\n").at(-1) ?? "").matchAll(/`([\w./-]+\.md)`/g)].map((match) => match[1] ?? ""),
      );
    }
  }
  return files;
}
