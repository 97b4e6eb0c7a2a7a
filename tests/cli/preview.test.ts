import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";
import { command } from "./command.ts";

const scratch = scratchFolders();
const NOTE = "entries/2021-03-10.odt:1:1  note: nothing reads this file, and nothing in the record names it\n";
const ENTRY = "entries/2021-03-01-first.md";

describe("scarfline preview", () => {
  it("tells notes with the record and with its problems, and the same ones no second time", async () => {
    const content = scratch();
    writeAll(content, { ...(await smallRecord()), "entries/2021-03-10.odt": "text" });
    const told: string[] = [];
    const whole = (): string => told.join("");
    const edited = async (from: string, to: string, shows: RegExp): Promise<void> => {
      const text = readFileSync(join(content, ENTRY), "utf8");
      expect(text).toContain(from);
      writeFileSync(join(content, ENTRY), text.replace(from, to));
      for (let tries = 0; tries < 400 && !shows.test(whole()); tries += 1) await pause(25);
    };
    const say = (text: string): void => void told.push(text);
    const { code } = await command(["preview", "--content", content, "--port", "18973"], {
      out: say,
      err: say,
      untilStopped: async () => {
        for (let tries = 0; tries < 400 && !/Read and reckoned/.test(whole()); tries += 1) await pause(25);
        await edited("title:", "titel:", /\[unknown-key\]/);
        await edited("titel:", "title:", /Read and reckoned[^]*Read and reckoned/);
      },
    });
    expect({ code, told: code === 0 ? "" : whole() }).toEqual({ code: 0, told: "" });
    const shown = whole()
      .replace(/localhost:\d+/, "localhost")
      .replaceAll(/in \d+\.\d\d s/g, "in so many s");
    expect(shown.split(NOTE)).toEqual([
      expect.stringMatching(/^Serving at http:\/\/localhost\/ [^]*stop with Ctrl\+C/),
      expect.stringMatching(/^Read and reckoned[^]*\[unknown-key\][^]*problems? in the record\. The last[^]*reckoned/),
    ]);
  });
});
