import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { command } from "../cli/command.ts";
import { contentOf, scratchFolders } from "../publish/scratch.ts";
import { OWN, siteOf, writeRecord } from "./record.ts";

const scratch = scratchFolders();

/** Pages on which nothing of the builder's own may show. */
const EVIDENCE =
  /^(?:batch|joint|lot|trial|hold-point|appendix|assembly|days|tags)\/|^(?:about|appendix|charts|climate|credit|departures|evidence|hold-points|joints|measurements|open-items|stock|tags|weight)\.html$/;
const POLICY =
  /^default-src 'none'; script-src 'self'; style-src 'self'( 'sha256-[\w+/]{43}=')*; img-src 'self'; media-src 'self'; connect-src 'none'; frame-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'$/;

describe("Own pages", () => {
  it("are made by Eleventy of what the edition shows, and lead on from a disk as from a host", async () => {
    const folder = scratch();
    await writeRecord(folder);
    const site = await siteOf(folder);
    const visit = parse(site.get("visit.html") ?? "");
    expect(visit.querySelector("title")?.text).toMatch(/^Come & see .* Stub$/);
    expect(visit.querySelector("h1")?.text).toBe("Come & see");
    expect(visit.querySelectorAll(".own a").map((link) => link.getAttribute("href"))).toEqual([
      "hours.html",
      "shop/tools.html",
      "entry/2021-03-01-first.html",
      "entry/2021-03-01-first.html",
      "entry/2021-03-08-second.html",
    ]);
    expect(visit.querySelector(".foot__caution")?.text).toContain("does not certify airworthiness");
    const tools = parse(site.get("shop/tools.html") ?? "");
    expect(tools.querySelector(".framed")?.innerHTML).toBe(
      '<p>A bench of beech. F-J1 not glued</p><p><a href="../index.html">Home</a></p>',
    );
    expect(tools.querySelector("link[href='../assets/own.css']")).not.toBeNull();
    expect(site.get("assets/own.css")).toBe(OWN["style.css"]);
  });

  it("are led to by names with any sign in them, from Markdown as from HTML", async () => {
    const folder = scratch();
    await writeRecord(folder, {
      "pages/q&a.md": "---\ntitle: Q & A\n---\nAsked.\n",
      "pages/a.md":
        '---\ntitle: A\n---\n[page](q&a.html) [source](q&a.md) [away](https://example.org/?a=1&copy=2)\n\n<a href="q&amp;a.html">HTML</a>\n',
      "pages/b.njk": "---\ntitle: B\n---\n<a href='/q&a.html#it'>HTML</a>\n",
    });
    const site = await siteOf(folder);
    const linksOf = (path: string): string[] =>
      parse(site.get(path) ?? "")
        .querySelectorAll(".own a")
        .map((link) => link.getAttribute("href") ?? "");
    expect(linksOf("a.html")).toEqual(["q&a.html", "q&a.html", "https://example.org/?a=1&copy=2", "q&a.html"]);
    expect(linksOf("b.html")).toEqual(["q&a.html#it"]);
    expect(site.get("a.html")).toContain('href="https://example.org/?a=1&amp;copy=2"');
  });

  it("are among the ways at the head of the story, unless they say that they are not", async () => {
    const folder = scratch();
    await writeRecord(folder);
    const site = await siteOf(folder);
    const ways = parse(site.get("entry/2021-03-01-first.html") ?? "").querySelectorAll(".head__nav a");
    expect(ways.at(-1)?.getAttribute("href")).toBe("../visit.html");
    expect(ways.map((way) => way.text)).not.toContain("Tools");
  });

  it("are in the editions of those whom they are for, and in no other", async () => {
    const folder = scratch();
    await writeRecord(folder);
    const site = await siteOf(folder, "--edition", "all");
    const having = ["public", "inspector", "archive"].filter((edition) => site.has(`${edition}/for-looking.html`));
    expect(having).toEqual(["inspector", "archive"]);
    const leaked = [...site].filter(([path, text]) => path.startsWith("public/") && /marmalade|for-looking/.test(text));
    expect(leaked.map(([path]) => path)).toEqual([]);
  });

  it("and own sheets and layouts leave every page of the evidence as it is, byte for byte", async () => {
    const [without, having] = [scratch(), scratch()];
    await writeRecord(without, {});
    await writeRecord(having, { ...OWN, "layouts/entry.liquid": "<b>{{ title }}</b> {{ content }}" });
    const [plain, own] = [
      await siteOf(without, "--edition", "inspector"),
      await siteOf(having, "--edition", "inspector"),
    ];
    const evidence = [...plain.keys()].filter((path) => EVIDENCE.test(path));
    expect(evidence.length).toBeGreaterThan(15);
    expect(evidence.filter((path) => own.get(path) !== plain.get(path))).toEqual([]);
    const other = [...plain.keys()].filter((path) => /\.html$/.test(path) && own.get(path) !== plain.get(path));
    expect(other).toEqual(expect.arrayContaining(["index.html", "entries.html", "hours.html", "search.html"]));
  });

  it("are found by the search of the editions that have them", async () => {
    const folder = scratch();
    await writeRecord(folder);
    const site = await siteOf(folder, "--edition", "all");
    const found = (edition: string, word: string): boolean =>
      site.get(`${edition}/search-index.js`)?.includes(word) === true;
    expect([found("public", "visit.html"), found("public", "beech"), found("public", "marmalade")]).toEqual([
      true,
      true,
      false,
    ]);
    expect(found("inspector", "marmalade")).toBe(true);
  });

  it("come out as the README shows them", async () => {
    const folder = scratch();
    const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
    const shown = /```liquid\n([^]*?)```/.exec(readme)?.[1] ?? "";
    await writeRecord(folder, { "pages/visit.md": shown });
    const page = parse((await siteOf(folder)).get("visit.html") ?? "");
    expect(page.querySelectorAll(".own a").map((link) => link.getAttribute("href"))).toEqual([
      "hours.html",
      "entry/2021-03-01-first.html",
      "entry/2021-03-08-second.html",
    ]);
  });

  it("are left out where the builder is not trusted, and nothing of theirs runs", async () => {
    const [without, having] = [scratch(), scratch()];
    await writeRecord(without, {});
    const broken = { "pages/a.11ty.js": "throw new Error('ran');", "style.css": "@import 'a.css';" };
    const content = await writeRecord(having, { ...OWN, ...broken });
    expect(await siteOf(having, "--plain")).toEqual(await siteOf(without));
    expect(await command(["check", content, "--plain"])).toMatchObject({ code: 0, err: "" });
    expect((await command(["check", content])).code).toBe(1);
  });

  it("lie in a bag with the record, and in its site; who brings it back is told what they are", async () => {
    const folder = scratch();
    const content = await writeRecord(folder);
    const out = join(folder, "archive");
    expect((await command(["bag", "--content", content, "--out", out])).code).toBe(0);
    const [bag = ""] = readdirSync(out);
    const files = contentOf(join(out, bag));
    expect(files.get("data/record/pages/visit.md")).toBe(OWN["pages/visit.md"]);
    expect(files.get("data/record/style.css")).toBe(OWN["style.css"]);
    expect(files.get("data/site/for-looking.html")).toContain("marmalade");
    expect(files.get("README.txt")).toMatch(
      /data\/record\/pages\/, data\/record\/layouts\/ and data\/record\/style\.css\n.*no evidence/s,
    );
    const { code, out: told } = await command(["restore", join(out, bag), join(folder, "back")]);
    expect([code, told.includes("They are left out of all that is built here.")]).toEqual([0, true]);
    expect(contentOf(join(folder, "back")).get("layouts/framed.liquid")).toBe(OWN["layouts/framed.liquid"]);
  });

  it("of a record that came in a bag are not run before somebody asks for it", async () => {
    const folder = scratch();
    const page = 'export const data = { title: "A" };\nexport const render = () => "<p>By road.</p>";\n';
    const content = await writeRecord(folder, { "pages/a.11ty.js": page });
    const out = join(folder, "archive");
    await command(["bag", "--content", content, "--out", out]);
    const [bag = ""] = readdirSync(out);
    const back = join(folder, "back");
    await command(["restore", join(out, bag), back]);
    const has = async (record: string, ...words: readonly string[]): Promise<boolean> => {
      const { code } = await command(["build", record, "--out", join(folder, "out"), ...words]);
      expect(code).toBe(0);
      return contentOf(join(folder, "out")).has("a.html");
    };
    expect(await has(content)).toBe(true);
    for (const record of [back, join(out, bag, "data/record")]) {
      expect(await has(record)).toBe(false);
      expect((await command(["check", record])).err).toContain("which are code, are not run");
      expect(await has(record, "--no-plain")).toBe(true);
    }
    rmSync(join(back, ".own-not-run"));
    expect(await has(back)).toBe(true);
    expect((await command(["verify", back])).code).toBe(0);
  });

  it("state the policy that all pages state, and break no part of it", async () => {
    const folder = scratch();
    await writeRecord(folder, { ...OWN, "layouts/home.liquid": "{{ content }}" });
    const pages = [...(await siteOf(folder))].filter(([path]) => path.endsWith(".html") && path !== "404.html");
    const wrong = pages.filter(([, text]) => {
      const page = parse(text, { blockTextElements: { script: true, style: true } });
      const [, policy] = page.querySelectorAll("head > *");
      return (
        !POLICY.test(policy?.getAttribute("content") ?? "") ||
        page.querySelectorAll("[http-equiv]").length !== 1 ||
        page.querySelectorAll("[style], base, form, iframe, object, embed").length > 0
      );
    });
    expect(pages.length).toBeGreaterThan(20);
    expect(wrong.map(([path]) => path)).toEqual([]);
  });
});
