import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";
import { afterEach } from "vitest";

/** Gives each test folders of its own, which are removed after it. */
export function scratchFolders(): () => string {
  const made: string[] = [];
  afterEach(() => {
    for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
  });
  return () => {
    const folder = mkdtempSync(join(tmpdir(), "scarfline-test-"));
    made.push(folder);
    return folder;
  };
}

export function writeAll(folder: string, files: { readonly [path: string]: string | Buffer }): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** Every file below a folder with its bytes as text, hidden ones included. */
export function contentOf(folder: string): Map<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) =>
    statSync(join(folder, path)).isFile(),
  );
  return new Map(
    paths.sort().map((path) => [relative(folder, join(folder, path)), readFileSync(join(folder, path), "latin1")]),
  );
}
