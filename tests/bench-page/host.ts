/** The folder of a page at the bench, on localhost. */
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";

export interface Host {
  readonly url: string;
  isUp: boolean;
  readonly close: () => void;
}

/** Serves the page on localhost as long as it is up; else nobody answers. */
export async function hostOf(bench: string): Promise<Host> {
  const types = {
    html: "text/html; charset=utf-8",
    js: "text/javascript",
    svg: "image/svg+xml",
    webmanifest: "application/manifest+json",
  };
  const server = createServer((request, response) => {
    if (!host.isUp) return void request.socket.destroy();
    const name = request.url === "/" ? "index.html" : (request.url ?? "").slice(1);
    if (!existsSync(join(bench, name))) return void response.writeHead(404).end();
    const type = types[name.replace(/^.*\./, "") as keyof typeof types];
    response.writeHead(200, { "content-type": type }).end(readFileSync(join(bench, name)));
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  const close = (): void => {
    server.closeAllConnections();
    server.close();
  };
  const host: Host = { url: `http://localhost:${port}/`, isUp: true, close };
  return host;
}
