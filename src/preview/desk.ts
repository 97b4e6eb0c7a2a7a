/** The builder's own page beside the site: what is due and open, and an entry begun at one press. */
import { randomBytes, timingSafeEqual } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";
import { escaped } from "./overlay.ts";

/** What the page shows and does; whoever starts the preview knows how. */
export interface PreviewDesk {
  /** What is due and open, as text. */
  readonly told: () => Promise<string>;
  /** Begins the entry of today: where it is in the record, or why there is none. */
  readonly begin: () => Promise<{ readonly path: string; readonly link?: string } | { readonly refused: string }>;
}

/** No page of a site is called so. */
export const DESK = "-desk";
const LONGEST_BODY = 1000;

/** Answers for its own two paths; true where the answer is given here. */
export function deskAnswers(desk: PreviewDesk): (request: IncomingMessage, response: ServerResponse) => boolean {
  // Known to the page alone: another page can send here, but read nothing.
  const token = randomBytes(32).toString("hex");
  return (request, response) => {
    const path = (request.url ?? "").split("?", 1)[0];
    if (path !== `/${DESK}` && path !== `/${DESK}/entry`) return false;
    const isPost = request.method === "POST";
    if (isPost !== (path === `/${DESK}/entry`) || (!isPost && request.method !== "GET"))
      send(response, 405, "<p>Nothing was done: this is asked otherwise.</p>");
    else
      void (isPost ? begun(desk, token, request, response) : shown(desk, token, response)).catch((error: unknown) =>
        send(response, 500, `<pre>${escaped(error instanceof Error ? error.message : String(error))}</pre>`),
      );
    return true;
  };
}

async function shown(desk: PreviewDesk, token: string, response: ServerResponse): Promise<void> {
  const button = `<form method="post" action="/${DESK}/entry"><input type="hidden" name="token" value="${token}"/><button>Begin the entry of today</button></form>`;
  send(
    response,
    200,
    `<h1>At the desk</h1>${button}<pre>${escaped(await desk.told())}</pre><p><a href="/">The site</a></p>`,
  );
}

async function begun(
  desk: PreviewDesk,
  token: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (!isOwnPage(request)) return send(response, 403, "<p>Nothing was done: no page of this preview asked for it.</p>");
  const body = await bodyOf(request);
  const given = new URLSearchParams(body).getAll("token");
  if (given.length !== 1 || !isSame(given[0] ?? "", token))
    return send(response, 403, `<p>Nothing was done: <a href="/${DESK}">the page</a> is of an earlier preview.</p>`);
  const done = await desk.begin();
  if ("refused" in done) return send(response, 409, `<pre>${escaped(done.refused)}</pre>`);
  const path = escaped(done.path);
  const named = done.link === undefined ? `<code>${path}</code>` : `<a href="${escaped(done.link)}">${path}</a>`;
  send(response, 201, `<p>Wrote ${named}. Write on in it.</p><p><a href="/${DESK}">At the desk</a></p>`);
}

/** A browser says which page asks. One that does not say so asks for nothing here; names of hosts are looked at before. */
function isOwnPage({
  headers: { origin, host, "sec-fetch-site": site, "content-type": type = "" },
}: IncomingMessage): boolean {
  return (
    origin === `http://${host}` &&
    (site === undefined || site === "same-origin") &&
    type.split(";", 1)[0]?.trim() === "application/x-www-form-urlencoded"
  );
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  let body = "";
  for await (const chunk of request) {
    body += String(chunk);
    if (body.length > LONGEST_BODY) return "";
  }
  return body;
}

function isSame(given: string, token: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(token)];
  return a.length === b.length && timingSafeEqual(a, b);
}

function send(response: ServerResponse, status: number, body: string): void {
  response.writeHead(status, {
    "content-type": "text/html; charset=utf-8",
    "content-security-policy": "default-src 'none'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
    "cache-control": "no-store",
    "referrer-policy": "same-origin",
    "x-frame-options": "DENY",
  });
  response.end(
    `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"/><meta name="viewport" content="width=device-width"/><title>At the desk</title></head><body>${body}</body></html>\n`,
  );
}
