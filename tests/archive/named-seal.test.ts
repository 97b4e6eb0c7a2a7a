import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { bagged, recordIn, tool } from "./make.ts";

const scratch = scratchFolders();
const sealOn = (content: string, date: string) => command(["seal", "--content", content, "--date", date]);

async function built(content: string, out: string): Promise<{ text: string; pages: Map<string, string> }> {
  const { code, err, out: text } = await command(["build", "--content", content, "--out", out, "--edition", "all"]);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return { text, pages: contentOf(out) };
}

it("Every edition's appendix and about page name the last seal by what head and sha256sum print, and the foot of each printed page does in short", async () => {
  const folder = scratch();
  const content = await recordIn(folder);
  await sealOn(content, "2021-04-01");
  writeFileSync(join(content, "papers/new.txt"), "new");
  await sealOn(content, "2021-05-02");
  const digest = tool("sh", ["-c", "head -n 2 seals.txt | sha256sum"], content).out.slice(0, 64);
  const { pages } = await built(content, join(folder, "site"));
  for (const edition of ["public", "inspector", "archive"]) {
    for (const page of ["appendix", "about"]) {
      const text = pages.get(`${edition}/${page}.html`) ?? "";
      expect(text, `${edition} ${page}`).toContain(`<code class="digest">${digest}</code>`);
      expect(text).toContain(
        'The last seal on this record is number 2, of <time datetime="2021-05-02">2 May 2021</time>',
      );
    }
    expect(pages.get(`${edition}/appendix.html`)).toContain(
      `@bottom-center { content: "Seal 2 of 2 May 2021\\3a  ${digest.slice(0, 16)}"`,
    );
  }
});

it("Pages say that there is no seal, and name none from a list that is not whole", async () => {
  const folder = scratch();
  const content = await recordIn(folder);
  const { pages } = await built(content, join(folder, "site"));
  expect(pages.get("public/appendix.html")).toContain("No seal is named here");
  expect(pages.get("public/appendix.html")).toContain('@bottom-center { content: "No seal"');
  await sealOn(content, "2021-04-01");
  appendFileSync(join(content, "seals.txt"), "2021-05-01 more\n");
  const broken = await built(content, join(folder, "other"));
  expect(broken.text).toContain(
    "seals.txt:1:1  note: the list of seals is not whole, so no page names a seal; see what is wrong: scarfline verify\n",
  );
  expect(broken.pages.get("archive/appendix.html")).toContain("No seal is named here");
});

it("The site in a bag names the seal that verify finds in the record of that bag", async () => {
  const bag = await bagged(scratch());
  const [, digest = ""] =
    /<code class="digest">([0-9a-f]{64})<\/code>/.exec(readFileSync(join(bag, "data/site/appendix.html"), "utf8")) ??
    [];
  expect(await command(["verify", join(bag, "data/record"), "--seal", digest])).toMatchObject({
    code: 0,
    out: expect.stringContaining("the seal of 2021-04-01, the last\n"),
  });
  expect(await command(["verify", bag, "--seal", digest])).toMatchObject({
    code: 2,
    err: expect.stringContaining("Seals are held against a record, and"),
  });
});

it("The pages of entries say since which seal they are unchanged and how long after their date that was, and which were sealed late", async () => {
  const folder = scratch();
  const content = await recordIn(folder);
  const entry = "entries/2021-03-08-second.md";
  const page = async (): Promise<string> => {
    const { pages } = await built(content, join(folder, `site-${contentOf(folder).size}`));
    return pages.get("archive/entry/2021-03-08-second.html") ?? "";
  };
  expect(await page()).not.toContain("seal");
  await sealOn(content, "2021-03-09");
  writeFileSync(join(content, "papers/new.txt"), "new");
  await sealOn(content, "2021-05-02");
  expect(await page()).toContain(
    'Unchanged since seal 1 of <time datetime="2021-03-09">9 March 2021</time>, 1 day after its date.</p>',
  );
  appendFileSync(join(content, entry), "\nMore.\n");
  expect(await page()).toContain("Written or changed since the last seal; no seal holds it as it is.");
  await sealOn(content, "2021-05-03");
  expect(await page()).toContain(
    'Unchanged since seal 3 of <time datetime="2021-05-03">3 May 2021</time>, 56 days after its date. Sealed late: that it was written on its date rests on the builder',
  );
});
