import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { gzipSync } from "node:zlib";
import { extname, join, normalize, sep } from "node:path";

const TYPES: { readonly [ending: string]: string } = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".svg": "image/svg+xml",
  ".jpg": "image/jpeg",
  ".mp4": "video/mp4",
  ".webm": "video/webm",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".json": "application/json",
  ".csv": "text/csv",
  ".txt": "text/plain",
};

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const PACKED = new Set([".html", ".css", ".js", ".svg", ".json", ".csv", ".txt"]);

/** Serves a folder below `prefix` (such as `/club/pettichaps/`) as a plain static host would: text packed, no rewriting, 404 for what is not there. */
export async function serve(folder: string, prefix = "/"): Promise<Served> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const file = path.startsWith(prefix) ? fileFor(folder, path.slice(prefix.length)) : undefined;
    if (file === undefined) {
      response.writeHead(404).end("not found");
      return;
    }
    const packed = PACKED.has(extname(file)) && /\bgzip\b/.test(String(request.headers["accept-encoding"]));
    // With its length known a connection is free for the next request as soon as the last byte is there.
    const body = packed ? gzipSync(readFileSync(file)) : readFileSync(file);
    response.writeHead(200, {
      "content-type": TYPES[extname(file)] ?? "application/octet-stream",
      "content-length": body.length,
      ...(packed ? { "content-encoding": "gzip", vary: "accept-encoding" } : {}),
    });
    response.end(body);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}${prefix}`, close: () => new Promise((done) => server.close(() => done())) };
}

function fileFor(folder: string, path: string): string | undefined {
  const file = normalize(join(folder, path === "" || path.endsWith("/") ? `${path}index.html` : path));
  if (!file.startsWith(folder + sep) || !existsSync(file) || !statSync(file).isFile()) return undefined;
  return file;
}
