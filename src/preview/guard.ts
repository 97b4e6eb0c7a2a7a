import type { IncomingMessage, Server, ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { Duplex } from "node:stream";

/**
 * Names under which this machine knows itself. A page of another host can have its own name led to this machine (DNS
 * rebinding); its
 * browser then asks by that name, and is told nothing.
 */
const OWN_NAMES = ["localhost", "127.0.0.1", "[::1]"] as const;

const USUAL_PORT = 80;

/** Sees to it that only requests by a name of this machine reach whoever listens to them by now. */
export function guardRequests(server: Server): void {
  const listeners = server.listeners("request");
  server.removeAllListeners("request");
  server.on("request", (request: IncomingMessage, response: ServerResponse) => {
    if (isOwn(request.headers.host, portOf(server))) for (const each of listeners) each.call(server, request, response);
    else response.writeHead(421, { "content-type": "text/plain" }).end("This preview answers on this machine only.\n");
  });
}

/** The same for connections that stay open; they must come from a page of this preview too. */
export function guardUpgrades(server: Server): void {
  const listeners = server.listeners("upgrade");
  server.removeAllListeners("upgrade");
  server.on("upgrade", (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    const { host, origin } = request.headers;
    const port = portOf(server);
    const isOurs = isOwn(host, port) && (origin === undefined || isOwn(/^http:\/\/(.*)$/.exec(origin)?.[1], port));
    if (isOurs) for (const each of listeners) each.call(server, request, socket, head);
    else socket.end("HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n");
  });
}

function isOwn(host: string | undefined, port: number): boolean {
  const asked = host?.toLowerCase();
  return OWN_NAMES.some((name) => asked === `${name}:${port}` || (port === USUAL_PORT && asked === name));
}

function portOf(server: Server): number {
  return (server.address() as AddressInfo).port;
}
