import { appendFileSync, cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readmeText } from "../../src/archive/bag/readme.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { command } from "../cli/command.ts";
import { exampleRecord } from "../pages/example.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { bagged, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const WHOLE = "THAT NOTHING IS MISSING OR CHANGED";
const RECORD = "THAT THE RECORD IS WHOLE, WHERE IT CAME IN SEVERAL PARTS";

/** Commands of a bag's README, word for word: those below a heading, in its order, without what is said beside them. */
function commandsBelow(readme: string, heading: string): string[] {
  const [, section = ""] = readme.split(`\n${heading}\n`);
  const [own = ""] = section.split(/\n(?=[A-Z ,:]{8,}\n)/);
  return [...own.matchAll(/^ {2}(\S.*)$/gm)].map(([, line]) => line ?? "");
}

const readmeOf = (bag: string): string => readFileSync(join(bag, "README.txt"), "utf8");
const sh = (line: string, folder: string) => tool("sh", ["-c", line], folder);

describe("A stranger who has nothing but a bag and common tools", () => {
  it("finds it whole by the README's commands, and by them each change, loss and addition", async () => {
    const bag = await bagged(scratch());
    const commands = commandsBelow(readmeOf(bag), `HOW TO CHECK: ${WHOLE}`);
    const [ofRecord = ""] = commandsBelow(readmeOf(bag), `HOW TO CHECK: ${RECORD}`);
    expect(commands).toHaveLength(4);
    const said = (): string =>
      [...commands.map((line) => sh(line, bag).out), sh(ofRecord, join(bag, "data")).out].join("");
    expect(said()).toBe("");
    const aircraft = readFileSync(join(bag, "data/record/aircraft.md"));
    appendFileSync(join(bag, "data/record/aircraft.md"), " ");
    expect(said()).toContain("data/record/aircraft.md: FAILED");
    rmSync(join(bag, "data/record/aircraft.md"));
    expect(said()).toMatch(/^data\/record\/aircraft\.md$/m);
    writeFileSync(join(bag, "data/record/aircraft.md"), aircraft);
    writeFileSync(join(bag, "data/record/added.md"), "");
    expect(said()).toBe("data/record/added.md\n");
    rmSync(join(bag, "data/record/added.md"));
    appendFileSync(join(bag, "bag-info.txt"), "Contact-Name: me\n");
    expect(said()).toContain("bag-info.txt: FAILED");
  });

  it("puts the parts of one together as the README says, and has the whole record", async () => {
    const folder = scratch();
    const parts = await bagged(folder, {}, ["--split", "400 kB"]);
    expect(readdirSync(parts).length).toBeGreaterThan(1);
    const readme = readmeOf(join(parts, readdirSync(parts)[0] ?? ""));
    for (const line of commandsBelow(readme, "IF IT CAME IN PARTS"))
      expect(sh(line, parts)).toEqual({ code: 0, out: "" });
    expect(contentOf(join(parts, "whole/record"))).toEqual(contentOf(join(folder, "content")));
    expect(sh(commandsBelow(readme, `HOW TO CHECK: ${RECORD}`).at(-1) ?? "", join(parts, "whole"))).toEqual({
      code: 0,
      out: "",
    });
  });

  it("holds the record against its seals, their signature and the digest on the pages", async () => {
    const folder = scratch();
    const content = await recordIn(folder);
    expect(
      tool("ssh-keygen", ["-q", "-t", "ed25519", "-N", "", "-C", "builder", "-f", join(folder, "key")], folder).code,
    ).toBe(0);
    for (const [at, date] of ["2021-04-01", "2021-04-20", "2021-05-02"].entries()) {
      writeFileSync(join(content, "papers/more.txt"), `${at}`);
      await command(["seal", "--content", content, "--date", date, "--sign", join(folder, "key")]);
    }
    await command(["bag", "--content", content, "--out", join(folder, "archive")]);
    const bag = join(folder, "archive", readdirSync(join(folder, "archive"))[0] ?? "");
    const record = join(bag, "data/record");
    const readme = readmeOf(bag);
    const [manifest, files, upTo, signature, ...more] = commandsBelow(
      readme,
      "HOW TO CHECK: WHAT WAS WRITTEN WHEN",
    ).map((line) => sh(line, record));
    expect(more).toEqual([]);
    const third = readFileSync(join(record, "seals.txt"), "utf8").split("\n")[2]?.split(" ") ?? [];
    expect(manifest?.out.slice(0, 64)).toBe(third[1]);
    expect(readme).toContain(`must print ${third[1]}`);
    expect(files).toEqual({ code: 0, out: "" });
    expect(readme).toContain(`must print ${upTo?.out.slice(0, 64)}`);
    expect(readFileSync(join(bag, "data/site/appendix.html"), "utf8")).toContain(upTo?.out.slice(0, 64));
    expect(signature).toEqual({ code: 0, out: expect.stringContaining('Good "scarfline-seal" signature') });
  });

  it("brings the record back by the commands of the program in the README, and has the same pages", async () => {
    const folder = scratch();
    const bag = await bagged(folder);
    const commands = commandsBelow(readmeOf(bag), "WITH THE PROGRAM");
    expect(commands.map((line) => line.split(" ")[1])).toEqual(["verify", "restore", "build"]);
    for (const line of commands) {
      const words = line
        .split(" ")
        .slice(1)
        .map((word) => (word === "BAG" ? bag : /^(?:record|site)$/.test(word) ? join(folder, word) : word));
      expect(await command(words)).toMatchObject({ code: 0, err: "" });
    }
    rmSync(join(folder, "site/.scarfline"));
    cpSync(join(bag, "data/site"), join(folder, "in-bag"), { recursive: true });
    expect(tool("diff", ["-r", "in-bag", "site"], folder)).toEqual({ code: 0, out: "" });
  });

  it("reads in the README what each ending of a ledger's columns means", () => {
    const record = exampleRecord();
    const shown = editionOf(record, reckon(record), "archive");
    const readme = readmeText(shown, "1.0.0");
    const ledgers = ledgersOf(shown).filter(({ path }) => path.endsWith(".csv"));
    const columns = ledgers.flatMap(({ text }) => (text.split("\r\n")[0] ?? "").split(","));
    const units = new Set(
      columns.flatMap((column) => /_(?:kg_m|epoch_s|kg|m[23]?|s|n|pa|degc|share|typed)$/.exec(column)?.[0] ?? []),
    );
    expect(units.size).toBeGreaterThan(8);
    expect([...units].filter((unit) => !readme.includes(unit))).toEqual([]);
  });
});
