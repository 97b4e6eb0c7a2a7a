import { existsSync, readFileSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import DevServer from "@11ty/eleventy-dev-server";
import { policedAnew } from "../../layouts/shell/policy.ts";
import { deskAnswers, type PreviewDesk } from "./desk.ts";
import { guardRequests, guardUpgrades } from "./guard.ts";
import { onlyTrouble, type Trouble, withTrouble } from "./overlay.ts";
import type { SiteOnDemand } from "./site.ts";

export interface PreviewServer {
  readonly url: string;
  /** Tells every open page to load anew; with trouble, each is served with it laid over. */
  readonly show: (trouble: Trouble | undefined) => void;
  readonly close: () => Promise<void>;
}

/** A record may hold what is not for others: only browsers on this machine are answered. */
class LocalServer extends DevServer {
  #isGuarded = false;

  /** Called again with the next port where one is in use. */
  override _serverListen(port: number): void {
    if (!this.#isGuarded) guardRequests(this.server);
    this.#isGuarded = true;
    this.server.listen({ port, host: "127.0.0.1" });
  }

  override setupReloadNotifier(): void {
    super.setupReloadNotifier();
    guardUpgrades(this.server);
  }
}

/** Serves a site by Eleventy's dev server. The next free port is taken if one is in use. */
export async function servePreview(
  site: SiteOnDemand,
  { port, desk }: { readonly port: number; readonly desk?: PreviewDesk },
  tellError: (text: string) => void,
): Promise<PreviewServer> {
  let trouble: Trouble | undefined;
  const atDesk = desk && deskAnswers(desk);
  const silent = (): void => undefined;
  const server = new LocalServer("scarfline", site.folder, {
    domDiff: false,
    messageOnStart: () => false,
    logger: { info: silent, log: silent, error: tellError },
    middleware: [
      (request, response, next) =>
        atDesk?.(request, response) === true || answer(site, trouble, request, response) ? undefined : next(),
    ],
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

/**
 * Makes the page that is asked for, or the one that says there is none, and sends it; true where the answer is given
 * here. What lies in the site's folder besides pages is left to the dev server. Stray paths are answered here, since
 * the dev server would fall over them.
 */
function answer(
  site: SiteOnDemand,
  trouble: Trouble | undefined,
  { url = "/", headers: { host = "" } }: IncomingMessage,
  response: ServerResponse,
): boolean {
  const path = pathWithin(url);
  if (path === undefined) {
    response.statusCode = 404;
    response.end("There is no such page.");
    return true;
  }
  const failure = failureOf(() => site.make(path) || site.make("404.html"));
  const told = failure ?? trouble;
  const isThere = existsSync(join(site.folder, path));
  if (isThere && !path.endsWith(".html")) return false;
  response.statusCode = isThere || (told !== undefined && path.endsWith(".html")) ? 200 : 404;
  response.setHeader("Content-Type", "text/html; charset=utf-8");
  const file = join(site.folder, isThere ? path : "404.html");
  const page = failure === undefined && existsSync(file) ? readFileSync(file, "utf8") : undefined;
  response.end(policedAnew(pageWith(page, told), { "connect-src": [`ws://${host}`] }));
  return true;
}

function pageWith(page: string | undefined, trouble: Trouble | undefined): string {
  if (trouble === undefined) return page ?? "There is no such page.";
  return page === undefined ? onlyTrouble(trouble) : withTrouble(page, trouble);
}

/** A mistake of the program in one page must not take the others away. */
function failureOf(work: () => void): Trouble | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    return { problems: [], failure: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

/** The path within the site that is asked for; undefined where it leads out of it or is none. */
function pathWithin(url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, "http://localhost").pathname).replace(/^\/+/, "");
    const isStray = path.includes("\0") || path.split(/[\\/]/).includes("..");
    return isStray ? undefined : path === "" || path.endsWith("/") ? `${path}index.html` : path;
  } catch {
    return undefined;
  }
}
