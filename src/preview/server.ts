import { existsSync, readFileSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import DevServer from "@11ty/eleventy-dev-server";
import { onlyTrouble, type Trouble, withTrouble } from "./overlay.ts";

export interface PreviewServer {
  readonly url: string;
  /** Tells every open page to load anew; with trouble, each is served with it laid over. */
  readonly show: (trouble: Trouble | undefined) => void;
  readonly close: () => Promise<void>;
}

/** A record may hold what is not for others: only browsers on this machine are answered. */
class LocalServer extends DevServer {
  override _serverListen(port: number): void {
    this.server.listen({ port, host: "127.0.0.1" });
  }
}

/** Serves a folder, which may come into being later, by Eleventy's dev server. The next free port is taken if one is in use. */
export async function servePreview(folder: string, port: number, tellError: (text: string) => void): Promise<PreviewServer> {
  let trouble: Trouble | undefined;
  const silent = (): void => undefined;
  const server = new LocalServer("scarfline", folder, {
    domDiff: false,
    messageOnStart: () => false,
    logger: { info: silent, log: silent, error: tellError },
    middleware: [(request, response, next) => (answer(folder, trouble, request, response) ? undefined : next())],
  });
  server.serve(port);
  await server.ready();
  const { port: taken } = server.server.address() as AddressInfo;
  return {
    url: `http://localhost:${taken}/`,
    show: (found) => {
      trouble = found;
      server.reload({});
    },
    close: () => server.close(),
  };
}

/** Answers for a page with what is wrong laid over it, and refuses stray paths, at which the dev server would fall over; false for the rest. */
function answer(folder: string, trouble: Trouble | undefined, { url = "/" }: IncomingMessage, response: ServerResponse): boolean {
  const path = pathWithin(url);
  if (path === undefined) {
    response.statusCode = 404;
    response.end("There is no such page.");
    return true;
  }
  if (trouble === undefined || !path.endsWith(".html")) return false;
  const file = join(folder, path);
  response.setHeader("Content-Type", "text/html; charset=utf-8");
  response.end(existsSync(file) ? withTrouble(readFileSync(file, "utf8"), trouble) : onlyTrouble(trouble));
  return true;
}

/** The path within the site that is asked for; undefined where it leads out of it or is none. */
function pathWithin(url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, "http://localhost").pathname);
    const isStray = path.includes("\0") || path.split(/[\\/]/).includes("..");
    return isStray ? undefined : path.endsWith("/") ? `${path}index.html` : path;
  } catch {
    return undefined;
  }
}
