/** What is said to be kept is there after the browser was killed; some three kills here, more by SCARFLINE_BENCH_KILLS. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { scratchFolders } from "../publish/scratch.ts";
import { addressIn, benchOfRecord, Phone } from "./phone.ts";
import { BENCH_RECORD } from "./record.ts";

const scratch = scratchFolders();
const KILLS = Number(process.env["SCARFLINE_BENCH_KILLS"] ?? 3);
const TAPS_TO = [
  /^Glue: Two-part/,
  /RD-J02/,
  /^These 1/,
  /^20\.0$/,
  /^50$/,
  /^10\.2$/,
  /^S-1/,
  /^40\.3$/,
  /^The hardener/,
];

/** Processes of the browser that keeps its things in one folder: those that this test began, and no others. */
function processesOf(profile: string): readonly number[] {
  const listed = execFileSync("ps", ["-eo", "pid=,args="], { encoding: "utf8" });
  return listed
    .split("\n")
    .filter((line) => line.includes(`--user-data-dir=${profile}`))
    .map((line) => Number.parseInt(line, 10));
}

it(
  `after SIGKILL of the browser at ${KILLS} instants nothing is lost that was said to be kept`,
  async () => {
    const { bench } = await benchOfRecord(scratch(), BENCH_RECORD);
    const lost: string[] = [];
    for (let kill = 0; kill < KILLS; kill += 1) {
      const profile = mkdtempSync(join(tmpdir(), "scarfline-killed-"));
      const phone = await Phone.open({ profile });
      await phone.go(addressIn(bench));
      const last = 2 + ((kill * 3) % (TAPS_TO.length - 2));
      for (const words of TAPS_TO.slice(0, last)) await phone.tap(words);
      await phone.settled();
      const said = phone.page.evaluate(
        ([wait]) => {
          document.querySelector<HTMLElement>("main button")?.click();
          return new Promise<number>((done) =>
            setTimeout(() => done(Number(document.querySelector("[data-kept]")?.textContent ?? 0)), wait),
          );
        },
        [(kill * 7) % 60] as const,
      );
      const kept = await said;
      for (const pid of processesOf(profile)) process.kill(pid, "SIGKILL");
      await phone.context.close().catch(() => undefined);
      const again = await Phone.open({ profile });
      await again.go(addressIn(bench));
      const found = Number(await again.text("[data-kept]").catch(() => "0"));
      if (found < kept || kept < last) lost.push(`kill ${kill}: said ${kept}, found ${found}, tapped ${last}`);
      await again.close();
      rmSync(profile, { recursive: true, force: true });
    }
    expect(lost).toEqual([]);
  },
  60_000 + KILLS * 60_000,
);
