/** Time stamps by RFC 3161, asked for and checked by OpenSSL's `openssl ts`. */
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ran } from "../tool.ts";

/** What a reply says of itself, before anything of it is believed. */
export interface Reply {
  /** SHA-256 that was stamped, in lower-case hexadecimal digits; empty where it is none. */
  readonly digest: string;
  /** The authority's time, in milliseconds since 1970. */
  readonly at: number;
  /** PEM of the certificates within it. */
  readonly certificates: string;
  /** The name of the certificate that signed it, as OpenSSL writes it; empty where it holds none. */
  readonly by: string;
}

/** @returns the query, DER */
export async function queryFor(digest: string): Promise<Buffer> {
  const { code, out, err } = await ran("openssl", ["ts", "-query", "-digest", digest, "-sha256", "-cert"], "");
  if (code !== 0) throw new Error(`openssl wrote no query: ${err}`);
  return out;
}

/** The digest that a query asks a stamp for. */
export async function queryDigest(file: string): Promise<string> {
  const { out } = await ran("openssl", ["ts", "-query", "-in", file, "-text"], "");
  return digestIn(out.toString("latin1"));
}

/** @returns why not, where the file is no reply that grants a stamp */
export async function readReply(file: string): Promise<Reply | { readonly why: string }> {
  const { code, out } = await ran("openssl", ["ts", "-reply", "-in", file, "-text"], "");
  const text = out.toString("latin1");
  if (code !== 0) return { why: "it is no reply by RFC 3161" };
  const [, status = "unknown"] = /^Status: (.*)$/m.exec(text) ?? [];
  if (!/^Granted(?: with modifications)?\.$/.test(status)) return { why: `the authority did not grant it: ${status}` };
  const [, time = ""] = /^Time stamp: (.*)$/m.exec(text) ?? [];
  const at = Date.parse(time.replace(/(\d{2}:\d{2}:\d{2})\.\d+/, "$1"));
  if (Number.isNaN(at)) return { why: `its time cannot be read: ${time}` };
  const certificates = await certificatesIn(file);
  return { digest: digestIn(text), at, certificates, by: signerIn(certificates) };
}

/** Of OpenSSL's dump of a digest: lines such as `    0000 - 98 ea 6e 4f-b4 b6   ..nO`. */
function digestIn(text: string): string {
  if (!/^Hash Algorithm: sha256$/m.test(text)) return "";
  const [, dump = ""] = /^Message data:\n((?: {4}[0-9a-f]{4} - .*\n)+)/m.exec(text) ?? [];
  const bytes = dump.split("\n").map((line) => line.slice(11, 11 + 48).replaceAll(/[^0-9a-f]/g, ""));
  return bytes.join("").slice(0, 64);
}

async function certificatesIn(file: string): Promise<string> {
  const token = await ran("openssl", ["ts", "-reply", "-in", file, "-token_out"], "");
  const read = ["pkcs7", "-inform", "DER", "-print_certs"];
  const { out } = await ran("openssl", read, token.out.toString("latin1"));
  return out.toString("utf8");
}

/** The one that issued none of the others. */
function signerIn(certificates: string): string {
  const names = (label: string): string[] =>
    [...certificates.matchAll(new RegExp(`^${label}=(.*)$`, "gm"))].map(([, name = ""]) => name.trim());
  const [subjects, issuers] = [names("subject"), names("issuer")];
  return subjects.find((name, index) => !issuers.some((issuer, of) => of !== index && issuer === name)) ?? "";
}

/** What a reply is held against. */
export interface Against {
  readonly digest: string;
  /** File of the query it answers; its nonce is what shows that a reply is no old one. */
  readonly query?: string;
  /** File of the certificates (PEM) that are trusted; without it those that the reply brings. */
  readonly authority?: string;
}

/**
 * Whether a reply stamps this digest, answers this query, and was signed by a certificate for time stamps that held at the reply's own time.
 * @returns undefined where all of it holds, else why not
 */
export async function replyFault(file: string, reply: Reply, against: Against): Promise<string | undefined> {
  const folder = await mkdtemp(join(tmpdir(), "scarfline-stamp-"));
  try {
    const brought = join(folder, "brought.pem");
    await writeFile(brought, reply.certificates);
    const trusted = against.authority ?? brought;
    const words = ["-CAfile", trusted, "-attime", String(Math.floor(reply.at / 1000))];
    if (against.authority === undefined) words.push("-partial_chain");
    if (reply.certificates.includes("BEGIN CERTIFICATE")) words.push("-untrusted", brought);
    const checks = [
      ["-digest", against.digest],
      ...(against.query === undefined ? [] : [["-queryfile", against.query]]),
    ];
    for (const check of checks) {
      const { code, out, err } = await ran("openssl", ["ts", "-verify", "-in", file, ...check, ...words], "");
      if (code !== 0 || !out.toString("utf8").includes("Verification: OK")) return reasonIn(err);
    }
    return undefined;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** OpenSSL's own words, without the numbers and places around them. */
function reasonIn(err: string): string {
  const [, ...errors] = /:error:.*?:.*?:(.*?):[^:]*:\d+:(.*)$/m.exec(err) ?? [];
  const words = errors.filter((word) => word !== "").join(": ");
  return words === "" ? "openssl ts does not verify it" : words;
}
