import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { plantedRecord } from "./record.ts";
import { filesIn } from "./search.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

const first = <T>(...from: readonly T[]): T => from[0] as T;
const bytesOf = (folder: string): Map<string, string> => new Map(filesIn(folder).map((path) => [path, readFileSync(join(folder, path), "latin1")]));

/** Paths whose bytes differ, or that only one of two sites has. */
function differing(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): string[] {
  return [...new Set([...one.keys(), ...other.keys()])].filter((path) => one.get(path) !== other.get(path));
}

interface Elsewhere {
  /** The folder the command runs in, the record's and the site's, below a folder of its own. */
  readonly folders: readonly [run: string, content: string, out: string];
  readonly env: NodeJS.ProcessEnv;
}

const ELSEWHERE: readonly Elsewhere[] = [
  { folders: [".", "content", "site"], env: { TZ: "UTC", LC_ALL: "C", LANG: "C" } },
  { folders: ["somewhere else/à côté", "my aircraft", "somewhere else/out"], env: { TZ: "Pacific/Kiritimati", LC_ALL: "tr_TR.UTF-8", LANG: "tr_TR.UTF-8", LANGUAGE: "tr", HOME: "/nonexistent" } },
  { folders: ["deep/er", "deep/er/content", "site-2"], env: { TZ: "America/St_Johns", LC_ALL: "de_DE.UTF-8", LANG: "ar_EG.UTF-8", NODE_ENV: "production" } },
];

it("All editions of one record are the same byte for byte in every time zone, language, working folder and place on the disk", async () => {
  const { files } = await plantedRecord(first);
  const sites = ELSEWHERE.map(({ folders: [run, content, out], env }, at) => {
    const root = scratch();
    mkdirSync(join(root, run), { recursive: true });
    writeAll(join(root, content), Object.fromEntries(at === 1 ? Object.entries(files).reverse() : Object.entries(files)));
    for (const path of filesIn(join(root, content))) utimesSync(join(root, content, path), 1_000_000 * (at + 1), 1_000_000 * (at + 1));
    execFileSync(process.execPath, [COMMAND, "build", "--content", join(root, content), "--out", join(root, out), "--edition", "all"], { cwd: join(root, run), env: { PATH: process.env["PATH"], ...env }, stdio: ["ignore", "ignore", "inherit"] });
    return bytesOf(join(root, out));
  });
  const [here, ...others] = sites;
  if (here === undefined) throw new Error("nothing was built");
  expect([...here.keys()].filter((path) => /^(public|inspector|archive)\/index\.html$/.test(path))).toHaveLength(3);
  for (const other of others) expect(differing(here, other)).toEqual([]);
});

it("All editions of one record are the same byte for byte on whatever day they are built, anew or from what was kept", async () => {
  const folder = scratch();
  const { files } = await plantedRecord(first);
  writeAll(join(folder, "content"), files);
  const built = async (day: string, content: string): Promise<Map<string, string>> => {
    const { code, err } = await command(["build", "--content", content, "--out", join(folder, "site"), "--edition", "all"], { now: () => new Date(day) });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    return bytesOf(join(folder, "site"));
  };
  const early = await built("2025-04-21T00:00:01", join(folder, "content"));
  cpSync(join(folder, "content"), join(folder, "again"), { recursive: true });
  for (const [day, content] of [["2026-02-28T23:59:59", "content"], ["2049-12-31T12:00:00", "again"]] as const) expect(differing(early, await built(day, join(folder, content)))).toEqual([]);
});
