import { readdirSync, readFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { previewDesk } from "../../src/cli/desk/preview-desk.ts";
import { editorLink } from "../../src/preview/editor.ts";
import { withTrouble } from "../../src/preview/overlay.ts";
import { type PreviewServer, servePreview } from "../../src/preview/server.ts";
import { SiteOnDemand } from "../../src/preview/site.ts";
import { readRecord } from "../../src/record/read.ts";
import { contentOf, scratchFolders, writeAll } from "../publish/scratch.ts";
import { WORKSHOP } from "../desk/workshop.ts";

const scratch = scratchFolders();
const NOW = { now: () => new Date("2021-06-01T12:00:00") };
let server: PreviewServer | undefined;
afterEach(async () => {
  await server?.close();
  server = undefined;
});

async function served(): Promise<{ record: string; port: number }> {
  const record = scratch();
  writeAll(record, WORKSHOP);
  const site = new SiteOnDemand(scratch());
  await site.renew({ pages: [{ path: "index.html", make: () => "<p>Home</p>" }], placings: new Map(), files: 0 });
  server = await servePreview(site, { port: 0, desk: previewDesk(record, NOW) }, () => undefined);
  return { record, port: Number(new URL(server.url).port) };
}

interface Asked {
  readonly path?: string;
  readonly method?: string;
  readonly headers?: { readonly [name: string]: string };
  readonly body?: string;
}

function ask(port: number, { path = "/-desk", method = "GET", headers = {}, body = "" }: Asked = {}) {
  return new Promise<{ status: number; body: string; headers: { readonly [name: string]: unknown } }>(
    (resolve, reject) => {
      const all = { host: `localhost:${port}`, ...headers };
      const asked = request({ host: "127.0.0.1", port, path, method, headers: all }, (response) => {
        response
          .setEncoding("utf8")
          .toArray()
          .then(
            (parts) => resolve({ status: response.statusCode ?? 0, body: parts.join(""), headers: response.headers }),
            reject,
          );
      });
      asked.on("error", reject).end(body);
    },
  );
}

const FORM = "application/x-www-form-urlencoded";
const tokenIn = (page: string): string => /name="token" value="([0-9a-f]{64})"/.exec(page)?.[1] ?? "";
const own = (port: number, more: { readonly [name: string]: string } = {}): Asked => ({
  path: "/-desk/entry",
  method: "POST",
  headers: { origin: `http://localhost:${port}`, "content-type": FORM, ...more },
});

describe("The builder's page of a preview", () => {
  it("tells what is due and open, and begins an entry that it names", async () => {
    const { record, port } = await served();
    const page = await ask(port);
    expect([page.status, page.body]).toEqual([200, expect.stringContaining("May be broken\n  B-001/1, B-001/2")]);
    expect(page.body).toContain("Open items\n  O-1 Corner block");
    const body = `token=${tokenIn(page.body)}`;
    const first = await ask(port, { ...own(port, { "sec-fetch-site": "same-origin" }), body });
    expect([first.status, first.body]).toEqual([201, expect.stringContaining("entries/2021-06-01-session.md")]);
    const second = await ask(port, { ...own(port), body });
    expect(second.body).toContain("entries/2021-06-01-session-2.md");
    expect(readFileSync(join(record, "entries/2021-06-01-session.md"), "utf8")).toContain("title: Session\n# Free ids");
    expect("record" in (await readRecord(record))).toBe(true);
  });

  it("can be framed, kept and read by no other page", async () => {
    const { port } = await served();
    const { headers } = await ask(port, { headers: { origin: "https://elsewhere.example" } });
    expect(headers).toMatchObject({ "x-frame-options": "DENY", "cache-control": "no-store" });
    expect(headers["content-security-policy"]).toContain("frame-ancestors 'none'");
    expect(Object.keys(headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
  });

  it("writes nothing for whoever is not that page", async () => {
    const { record, port } = await served();
    const before = contentOf(record);
    const body = `token=${tokenIn((await ask(port)).body)}`;
    const attacks: { readonly [what: string]: Asked } = {
      "another origin": { ...own(port, { origin: "https://elsewhere.example" }), body },
      "another port of this machine": { ...own(port, { origin: "http://localhost:1" }), body },
      "the other name of this machine": { ...own(port, { origin: `http://127.0.0.1:${port}` }), body },
      "no origin": { path: "/-desk/entry", method: "POST", headers: { "content-type": FORM }, body },
      "an origin of none": { ...own(port, { origin: "null" }), body },
      "a browser that says it came from elsewhere": { ...own(port, { "sec-fetch-site": "cross-site" }), body },
      "a name led to this machine": {
        ...own(port, { host: `rebound.example:${port}`, origin: `http://rebound.example:${port}` }),
        body,
      },
      "no token": own(port),
      "a false token": { ...own(port), body: `token=${"0".repeat(64)}` },
      "a token of another length": { ...own(port), body: "token=0" },
      "two tokens": { ...own(port), body: `${body}&${body}` },
      "another form of body": { ...own(port, { "content-type": "text/plain" }), body },
      "a body without end": { ...own(port), body: `${"x".repeat(5000)}&${body}` },
      "a token in the address": { ...own(port), path: `/-desk/entry?${body}` },
      "another method": { ...own(port), method: "PUT", body },
      "reading in place of sending": { path: "/-desk/entry", headers: { origin: `http://localhost:${port}` } },
      "a path that climbs": { ...own(port), path: "/-desk/entry/../../etc", body },
      "a path in other letters": { ...own(port), path: "/%2ddesk/entry", body },
      "a path of its own choosing": { ...own(port), body: `${body.replace("token=", "path=../x&t=")}` },
    };
    for (const [what, attack] of Object.entries(attacks))
      expect((await ask(port, attack)).status, what).toBeGreaterThanOrEqual(400);
    expect(contentOf(record)).toEqual(before);
    expect(readdirSync(join(record, "entries"))).toEqual(["2021-03-14-glue.md"]);
  });

  it("writes nothing else that the body asks for", async () => {
    const { record, port } = await served();
    const body = `token=${tokenIn((await ask(port)).body)}&path=../../x.md&title=%3Cscript%3E`;
    expect((await ask(port, { ...own(port), body })).status).toBe(201);
    expect(readdirSync(join(record, "entries"))).toEqual(["2021-03-14-glue.md", "2021-06-01-session.md"]);
  });
});

describe("A link into an editor", () => {
  const problem = { file: "entries/a b#.md", line: 3, column: 7, code: "no-unit", message: "x", mend: "y" } as const;

  it("is a setting, with the place in it, and there is none without", () => {
    const link = editorLink("vscode://file{path}:{line}:{column}", "/record");
    expect(link?.(problem)).toBe("vscode://file/record/entries/a%20b%23.md:3:7");
    expect(withTrouble("", { problems: [problem] })).not.toContain("<a ");
    const linked = withTrouble("", { problems: [{ ...problem, file: 'a"><b>.md' }], ...(link && { link }) });
    expect(linked).toContain('<a href="vscode://file/record/a%22%3E%3Cb%3E.md:3:7">');
    expect(linked).not.toContain("<b>");
  });

  it.each([
    "javascript:alert(1)//{path}",
    "data:text/html,{path}",
    "https://elsewhere.example/{path}",
    "{path}",
    "editor://x",
  ])("%s is none", (pattern) => expect(editorLink(pattern, "/record")).toBeUndefined());
});
