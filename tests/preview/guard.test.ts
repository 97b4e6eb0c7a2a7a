import { request } from "node:http";
import { describe, expect, it } from "vitest";
import { servePreview } from "../../src/preview/server.ts";
import { SiteOnDemand } from "../../src/preview/site.ts";
import { scratchFolders } from "../publish/scratch.ts";

const scratch = scratchFolders();
const PAGE = `<!doctype html><html><head><meta charset="utf-8"/><title>Home</title></head><body>Pettichaps</body></html>`;

interface Answer {
  readonly status: number;
  readonly body: string;
}

/** Asks the preview at a port by the headers given; 101 where the connection stays open. */
function ask(port: number, headers: { readonly [name: string]: string }): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: "127.0.0.1", port, path: "/", headers }, (response) => {
      response
        .setEncoding("utf8")
        .toArray()
        .then((parts) => resolve({ status: response.statusCode ?? 0, body: parts.join("") }), reject);
    });
    asked.on("upgrade", (_response, socket) => {
      socket.destroy();
      resolve({ status: 101, body: "" });
    });
    asked.on("error", reject).end();
  });
}

async function served(work: (port: number) => Promise<void>): Promise<void> {
  const site = new SiteOnDemand(scratch());
  await site.renew({ pages: [{ path: "index.html", make: () => PAGE }], placings: new Map(), files: 0 });
  const server = await servePreview(site, { port: 0 }, () => undefined);
  try {
    await work(Number(new URL(server.url).port));
  } finally {
    await server.close();
  }
}

describe("A preview", () => {
  it("answers by the names of this machine, with its port, and by no other", async () => {
    await served(async (port) => {
      for (const host of [`localhost:${port}`, `127.0.0.1:${port}`, `[::1]:${port}`, `LOCALHOST:${port}`])
        expect((await ask(port, { host })).body, host).toContain("Pettichaps");
      for (const host of [
        "rebound.example",
        `rebound.example:${port}`,
        "localhost",
        `localhost:${port + 1}`,
        `localhost.rebound.example:${port}`,
        `localhost:${port}@rebound.example`,
      ]) {
        const { status, body } = await ask(port, { host });
        expect(status, host).toBeGreaterThanOrEqual(400);
        expect(body, host).not.toContain("Pettichaps");
      }
    });
  });

  it("keeps a connection open for its own pages alone", async () => {
    const upgrade = {
      connection: "Upgrade",
      upgrade: "websocket",
      "sec-websocket-version": "13",
      "sec-websocket-key": "dGhlIHNhbXBsZSBub25jZQ==",
    };
    await served(async (port) => {
      const own = `localhost:${port}`;
      const status = async (headers: { readonly [name: string]: string }): Promise<number> =>
        (await ask(port, { ...upgrade, ...headers })).status;
      expect(await status({ host: own, origin: `http://${own}` })).toBe(101);
      expect(await status({ host: own, origin: `http://127.0.0.1:${port}` })).toBe(101);
      expect(await status({ host: own, origin: "http://elsewhere.example" })).toBe(403);
      expect(await status({ host: own, origin: `http://localhost:${port + 1}` })).toBe(403);
      expect(await status({ host: own, origin: "null" })).toBe(403);
      expect(await status({ host: `rebound.example:${port}`, origin: `http://rebound.example:${port}` })).toBe(403);
    });
  });

  it("adds to a page's policy the connection by which it loads anew, and only that", async () => {
    await served(async (port) => {
      const { body } = await ask(port, { host: `localhost:${port}` });
      expect(body).toContain(`connect-src ws://localhost:${port};`);
      expect(body).toContain("default-src 'none'; script-src 'self'; style-src 'self';");
      expect(body).not.toContain("unsafe");
    });
  });
});
