import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { startPreview, type Preview, type PreviewTeller } from "../../src/preview/preview.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { smallRecord } from "../publish/small-record.ts";

const scratch = scratchFolders();
const FIRST = "entries/2021-03-01-first.md";
const PAGE = "entry/2021-03-01-first.html";

interface Session {
  readonly preview: Preview;
  readonly content: string;
  readonly cache: string;
  readonly builds: () => number;
  readonly page: (path: string) => Promise<string>;
  readonly edit: (path: string, change: (text: string) => string) => void;
}

async function session(port = 0): Promise<Session> {
  const folder = scratch();
  const content = join(folder, "content");
  const cache = join(folder, "cache");
  writeAll(content, await smallRecord());
  let builds = 0;
  const tell: PreviewTeller = {
    line: () => undefined,
    progress: () => undefined,
    serving: () => undefined,
    error: () => undefined,
    renewed: () => void (builds += 1),
  };
  const preview = await startPreview(
    {
      content,
      cache,
      port,
      edition: "public",
      today: "2021-06-01",
      program: new URL("../..", import.meta.url).pathname,
    },
    tell,
  );
  return {
    preview,
    content,
    cache,
    builds: () => builds,
    page: (path) => asBrowser(preview.url + path),
    edit: (path, change) => writeFileSync(join(content, path), change(readFileSync(join(content, path), "utf8"))),
  };
}

/** `fetch` would be taken for a script within a page, to which the dev server gives no reloading script. */
function asBrowser(url: string): Promise<string> {
  return new Promise((resolve, reject) => {
    get(url.replace("localhost", "127.0.0.1"), (response) => {
      response
        .setEncoding("utf8")
        .toArray()
        .then((parts) => resolve(parts.join("")), reject);
    }).on("error", reject);
  });
}

async function until(dayEvents: () => Promise<boolean> | boolean): Promise<void> {
  for (let tries = 0; tries < 1200; tries += 1) {
    if (await dayEvents()) return;
    await pause(25);
  }
  throw new Error("It did not happen within thirty seconds.");
}

interface Socket {
  readonly on: (event: "message", listener: (data: Buffer) => void) => void;
  readonly close: () => void;
}

/** The dev server's own; Node has one from version 22. */
const WebSocket = createRequire(createRequire(import.meta.url).resolve("@11ty/eleventy-dev-server"))("ws") as new (
  url: string,
) => Socket;

/** Messages that a page in a browser would be sent. */
function listen(url: string): { messages: string[]; close: () => void } {
  const messages: string[] = [];
  const socket = new WebSocket(url.replace("http:", "ws:").replace("localhost", "127.0.0.1"));
  socket.on("message", (data) => messages.push(String(JSON.parse(data.toString()).type)));
  return { messages, close: () => socket.close() };
}

describe("A preview", () => {
  it("shows a change, then a problem over the last good page, then the mended page, and tells open pages to load anew", async () => {
    const { preview, page, edit, builds } = await session();
    const { messages, close } = listen(preview.url);
    await until(() => messages.includes("eleventy.status"));
    expect(await page("")).toContain("reload-client.js");
    expect(await page(PAGE)).toContain("Cut the ribs");

    edit(FIRST, (text) => text.replace("Cut the ribs", "Sawed the ribs"));
    await until(async () => (await page(PAGE)).includes("Sawed the ribs"));
    await until(() => messages.includes("eleventy.reload"));

    edit(FIRST, (text) => text.replace("title: Ribs cut", "titel: Ribs <cut>"));
    await until(async () => (await page(PAGE)).includes("scarfline-trouble"));
    const troubled = await page(PAGE);
    expect(troubled).toContain("Sawed the ribs");
    expect(troubled).toContain(`${FIRST}:3:1`);
    expect(troubled).not.toContain("<cut>");
    expect(await page("assets/style.css")).not.toContain("scarfline-trouble");

    edit(FIRST, (text) => text.replace("titel: Ribs <cut>", "title: Ribs mended"));
    await until(async () => /^(?![^]*scarfline-trouble)[^]*Ribs mended/.test(await page(PAGE)));
    await until(() => messages.filter((type) => type === "eleventy.reload").length >= 3);
    expect(builds()).toBeGreaterThanOrEqual(4);
    close();
    await preview.close();
  });

  it("shows an own page as it was last saved, with the code that it imports, and problems of it over the last good one", async () => {
    const { preview, content, page, edit } = await session();
    writeAll(content, {
      "pages/_lib/words.mjs": `export const words = "By road.";`,
      "pages/visit.11ty.js": `import { words } from "./_lib/words.mjs";
export const data = { title: "Come" };
export const render = ({ edition }) => words + edition.aircraft.name;`,
      "style.css": "b { color: red }",
    });
    await until(async () => (await page("visit.html")).includes("By road.Stub"));
    expect(await page("assets/own.css")).toBe("b { color: red }");
    edit("pages/_lib/words.mjs", (text) => text.replace("road", "boat"));
    await until(async () => (await page("visit.html")).includes("By boat.Stub"));
    edit("pages/visit.11ty.js", (text) => text.replace("words +", "words.no.more +"));
    await until(async () => (await page("visit.html")).includes("scarfline-trouble"));
    const troubled = await page("visit.html");
    expect(troubled).toContain("By boat.Stub");
    expect(troubled).toContain("pages/visit.11ty.js:3:");
    edit("style.css", () => "b { color: blue }");
    edit("pages/visit.11ty.js", (text) => text.replace("words.no.more +", "words +"));
    await until(async () => !(await page("visit.html")).includes("scarfline-trouble"));
    expect(await page("assets/own.css")).toBe("b { color: blue }");
    await preview.close();
  });

  it("begins with a page of problems where there has been no good build, and shows the site once they are mended", async () => {
    const folder = scratch();
    const content = join(folder, "content");
    const record = await smallRecord();
    writeAll(content, { ...record, "aircraft.md": "---\nname: x\n---\n" });
    const silent = (): void => undefined;
    const preview = await startPreview(
      {
        content,
        cache: join(folder, "cache"),
        port: 0,
        edition: "public",
        today: "2021-06-01",
        program: new URL("../..", import.meta.url).pathname,
      },
      { line: silent, progress: silent, serving: silent, error: silent, renewed: silent },
    );
    const home = (): Promise<string> => asBrowser(preview.url);
    expect(await home()).toContain("no build without problems yet");
    expect(await home()).toContain("aircraft.md:");
    writeAll(content, { "aircraft.md": record["aircraft.md"] ?? "" });
    await until(async () => (await home()).includes("<title>Stub"));
    await preview.close();
  });

  it("sees new files and removed ones, and does not mind what an editor keeps beside a file", async () => {
    const { preview, page, content, builds } = await session();
    writeAll(content, {
      "entries/2021-03-12-new.md": "---\ndate: 2021-03-12\ntitle: A new day\nassembly: fin\n---\nNew.\n",
    });
    await until(async () => (await page("entries.html")).includes("A new day"));
    await until(() => builds() >= 2);
    const before = builds();
    writeAll(content, { "entries/.2021-03-12-new.md.swp": "swap", "entries/2021-03-12-new.md~": "backup" });
    await pause(400);
    expect(builds()).toBe(before);
    await preview.close();
  });

  it("writes nothing outside its cache, and takes its own site away when it is closed", async () => {
    const { preview, content, cache, page } = await session();
    expect((await page("index.html")).length).toBeGreaterThan(100);
    const before = contentOf(content);
    await preview.close();
    expect(contentOf(content)).toEqual(before);
    expect(readdirSync(join(content, "..")).sort()).toEqual(["cache", "content"]);
    expect(existsSync(cache) && readdirSync(cache).filter((name) => name.startsWith("preview-"))).toEqual([]);
  });

  it("answers for nothing outside the site", async () => {
    const { preview, page } = await session();
    for (const path of [
      "..%2f..%2fcontent%2faircraft.md",
      "%2e%2e/%2e%2e/content/aircraft.md",
      "..%2f..%2f..%2fetc%2fpasswd",
      "%zz",
      "%00",
    ]) {
      expect(await page(path)).not.toMatch(/Ansa Fullname|root:/);
    }
    await preview.close();
  });

  it("takes the next port where one is in use, and answers this machine only", async () => {
    const other = createServer();
    await new Promise<void>((ready) => other.listen(0, "127.0.0.1", ready));
    const address = other.address();
    const taken = typeof address === "object" && address !== null ? address.port : 0;
    const { preview } = await session(taken);
    expect(Number(new URL(preview.url).port)).toBeGreaterThan(taken);
    await preview.close();
    other.close();
  });
});
