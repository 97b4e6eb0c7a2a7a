import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { plantedRecord } from "./record.ts";
import { filesIn } from "./search.ts";

const scratch = scratchFolders();
const COMMAND = new URL("../../.build/cli.js", import.meta.url).pathname;

const first = <T>(...from: readonly T[]): T => from[0] as T;
const bytesOf = (folder: string): Map<string, string> =>
  new Map(filesIn(folder).map((path) => [path, readFileSync(join(folder, path), "latin1")]));

/** Paths whose bytes differ, or that only one of two sites has. */
function differing(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): string[] {
  return [...new Set([...one.keys(), ...other.keys()])].filter((path) => one.get(path) !== other.get(path));
}

/** Runs the command as if its process, native code in it included, had begun at an instant of the local time. */
function onDay(
  instant: string,
  words: readonly string[],
  cwd: string,
  env: NodeJS.ProcessEnv,
  err: "inherit" | "pipe" = "inherit",
): void {
  execFileSync("faketime", [instant, process.execPath, COMMAND, ...words], {
    cwd,
    env: { PATH: process.env["PATH"], FAKETIME_DONT_FAKE_MONOTONIC: "1", ...env },
    stdio: ["ignore", "ignore", err],
  });
}

interface Elsewhere {
  readonly instant: string;
  /** The folder the command runs in, the record's and the site's, below a folder of its own. */
  readonly folders: readonly [run: string, content: string, out: string];
  readonly env: NodeJS.ProcessEnv;
}

const ELSEWHERE: readonly Elsewhere[] = [
  { instant: "2025-04-21 00:00:01", folders: [".", "content", "site"], env: { TZ: "UTC", LC_ALL: "C", LANG: "C" } },
  {
    instant: "2028-02-29 23:59:57",
    folders: ["somewhere else/à côté", "my aircraft", "somewhere else/out"],
    env: { TZ: "Pacific/Kiritimati", LC_ALL: "tr_TR.UTF-8", LANG: "tr_TR.UTF-8", LANGUAGE: "tr", HOME: "/nonexistent" },
  },
  {
    instant: "2049-12-31 23:59:58",
    folders: ["deep/er", "deep/er/content", "site-2"],
    env: { TZ: "America/St_Johns", LC_ALL: "de_DE.UTF-8", LANG: "ar_EG.UTF-8", NODE_ENV: "production" },
  },
];

it("All editions of one record are the same byte for byte on other days, across a year's end, in every time zone, language, working folder and place on the disk", async () => {
  const { files } = await plantedRecord(first);
  const sites = ELSEWHERE.map(({ instant, folders: [run, content, out], env }, at) => {
    const root = scratch();
    mkdirSync(join(root, run), { recursive: true });
    writeAll(
      join(root, content),
      Object.fromEntries(at === 1 ? Object.entries(files).reverse() : Object.entries(files)),
    );
    for (const path of filesIn(join(root, content)))
      utimesSync(join(root, content, path), 1_000_000 * (at + 1), 1_000_000 * (at + 1));
    onDay(
      instant,
      ["build", "--content", join(root, content), "--out", join(root, out), "--edition", "all"],
      join(root, run),
      env,
    );
    return bytesOf(join(root, out));
  });
  const [here, ...others] = sites;
  if (here === undefined) throw new Error("nothing was built");
  expect([...here.keys()].filter((path) => /^(public|inspector|archive)\/index\.html$/.test(path))).toHaveLength(3);
  for (const other of others) expect(differing(here, other)).toEqual([]);
});

it("All editions of one record are the same byte for byte anew and from what was kept, in one folder, on other days", async () => {
  const folder = scratch();
  const { files } = await plantedRecord(first);
  writeAll(join(folder, "content"), files);
  const built = (instant: string, content: string): Map<string, string> => {
    onDay(instant, ["build", "--content", content, "--edition", "all"], folder, { TZ: "Europe/Lisbon" });
    return bytesOf(join(folder, "site"));
  };
  const early = built("2025-04-21 00:00:01", "content");
  cpSync(join(folder, "content"), join(folder, "again"), { recursive: true });
  for (const [instant, content] of [
    ["2026-02-28 23:59:59", "content"],
    ["2049-12-31 12:00:00", "again"],
  ] as const)
    expect(differing(early, built(instant, content))).toEqual([]);
  // The clock does reach the command: on a day before its last entry the record is refused.
  expect(() => onDay("2025-03-10 12:00:00", ["check", "--content", "content"], folder, {}, "pipe")).toThrow(
    /this day has not come yet/,
  );
});
