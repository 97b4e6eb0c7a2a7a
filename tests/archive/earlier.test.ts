/** What earlier versions wrote is read as it was. The bag of the first form was written by the program before forms had versions. */
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { scratchFolders } from "../publish/scratch.ts";
import { bagged, found, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const FORM_1 = new URL("earlier/form-1.tar.gz", import.meta.url).pathname;
const sealOn = (content: string, date: string) => command(["seal", "--content", content, "--date", date]);

it("A bag of the second form, whose README lies in its payload, is whole, and is not without a tag file or with one more", async () => {
  const FORM_2 = new URL("earlier/form-2.tar.gz", import.meta.url).pathname;
  expect(await found(FORM_2)).toEqual([]);
  const folder = scratch();
  expect(tool("tar", ["xzf", FORM_2, "-C", folder], folder).code).toBe(0);
  const bag = join(folder, readdirSync(folder)[0] ?? "");
  writeFileSync(join(bag, "README.txt"), "Begin elsewhere\n");
  expect(await found(bag)).toContain("fault README.txt: unexpected: no bag that this program writes has it");
});

it("A bag of this form is not whole without its README", async () => {
  const folder = scratch();
  cpSync(await bagged(folder), join(folder, "bag"), { recursive: true });
  rmSync(join(folder, "bag/README.txt"));
  expect(await found(join(folder, "bag"))).toContain(
    "fault README.txt: missing: every bag that this program writes has it",
  );
});

/** Its record, brought back. */
async function restored(): Promise<string> {
  const back = join(scratch(), "back");
  expect(await command(["restore", FORM_1, back])).toMatchObject({ code: 0, err: "" });
  return back;
}

describe("A bag of the first form", () => {
  it("is whole, and gives its record back, whose seal holds", async () => {
    expect(await found(FORM_1)).toEqual([
      "note bag-info.txt: its verdicts are by earlier rules (1) than those of this program (2), which may judge otherwise; what it calls accepted is now shown; what it calls unproven is now not shown",
    ]);
    expect(await command(["verify", await restored()])).toMatchObject({
      code: 0,
      err: "",
      out: "9 files held against the seal up to 2021-04-01: what was sealed is as it was.\n",
    });
  });

  it("takes seals of this form after its own, and both hold", async () => {
    const back = await restored();
    writeFileSync(join(back, "papers/new.txt"), "new");
    expect(await sealOn(back, "2021-05-01")).toMatchObject({ code: 0 });
    const [first = "", second = ""] = readFileSync(join(back, "seals.txt"), "utf8").split("\n");
    expect([first.split(" ").length, second.split(" ").slice(5)]).toEqual([5, ["form=2", "rules=2"]]);
    expect(await command(["verify", back])).toMatchObject({ code: 0, err: "" });
    writeFileSync(join(back, "seals.txt"), `${first} form=2 rules=2\n${second}\n`);
    expect(await command(["verify", back])).toMatchObject({
      code: 1,
      err: expect.stringContaining("seals.txt:2: the lines before this seal are not those"),
    });
  });

  it("is known for one of ours, and lacks no tag manifest", async () => {
    const folder = scratch();
    cpSync(await bagged(folder), join(folder, "bag"), { recursive: true });
    const info = join(folder, "bag/bag-info.txt");
    const text = readFileSync(info, "utf8");
    expect(text).toContain("\nScarfline-Form-Version: 3\nScarfline-Rules-Version: 2\n");
    for (const name of readdirSync(join(folder, "bag")).filter((each) => each.startsWith("tagmanifest")))
      rmSync(join(folder, "bag", name));
    writeFileSync(info, text.replace(/Scarfline-Form-Version.*\n/, ""));
    expect(await found(join(folder, "bag"))).toContain(
      "fault tagmanifest-sha256.txt: missing: every bag that this program writes has it",
    );
  });
});

describe("What a later version wrote", () => {
  it("is no bag that this one can call whole, nor a seal", async () => {
    const folder = scratch();
    const bag = await bagged(folder);
    const info = join(bag, "bag-info.txt");
    writeFileSync(info, readFileSync(info, "utf8").replace("Form-Version: 3", "Form-Version: 4"));
    expect(await found(bag)).toContain(
      "fault bag-info.txt: this bag is of a form (4) that is later than this program knows (3), so not all of it can be checked; use a later one",
    );
    const content = await recordIn(scratch());
    await sealOn(content, "2021-04-01");
    const list = join(content, "seals.txt");
    writeFileSync(list, readFileSync(list, "utf8").replace("form=2", "form=3"));
    expect(await command(["verify", content])).toMatchObject({
      code: 1,
      err: "seals.txt:1: this seal is of a form (3) that is later than this program knows (2); use a later one\n",
    });
  });
});
