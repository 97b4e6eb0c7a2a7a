/** An authority of time stamps for tests, made with OpenSSL. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { tool } from "./make.ts";

const CONFIG = `[req]
distinguished_name = dn
prompt = no
[dn]
CN = replaced
[root]
basicConstraints = critical, CA:TRUE
keyUsage = critical, keyCertSign, cRLSign
[stamps]
basicConstraints = critical, CA:FALSE
keyUsage = critical, digitalSignature
extendedKeyUsage = critical, timeStamping
[other]
basicConstraints = critical, CA:FALSE
keyUsage = critical, digitalSignature
[service]
serial = ./serial
default_policy = 1.2.3.4.1
digests = sha256
signer_digest = sha256
ordering = yes
`;

export interface Authority {
  /** Its root certificate, PEM. */
  readonly root: string;
  /** Replies to a query, on a day, and returns the file of the reply. */
  readonly reply: (query: string, on: string, as?: string) => string;
}

/** @param on the day its certificates are made, for `days` days from then */
export function authorityIn(folder: string, name: string, on = "2021-03-01 12:00:00", days = 365): Authority {
  const at = join(folder, name);
  mkdirSync(at, { recursive: true });
  writeFileSync(join(at, "config"), CONFIG);
  writeFileSync(join(at, "serial"), "01\n");
  const openssl = (time: string, ...words: string[]): void => {
    const { code, out } = tool("faketime", ["-f", time, "openssl", ...words], at);
    if (code !== 0) throw new Error(`openssl ${words.join(" ")}: ${out}`);
  };
  const key = (file: string): string[] => [
    "-newkey",
    "ec",
    "-pkeyopt",
    "ec_paramgen_curve:P-256",
    "-nodes",
    "-keyout",
    file,
  ];
  const config = ["-config", "config"];
  openssl(
    on,
    "req",
    "-x509",
    ...key("root.key"),
    "-out",
    "root.pem",
    "-subj",
    `/CN=${name} root`,
    "-days",
    "7300",
    ...config,
    "-extensions",
    "root",
  );
  for (const kind of ["stamps", "other"]) {
    openssl(on, "req", ...key(`${kind}.key`), "-out", `${kind}.csr`, "-subj", `/CN=${name} ${kind}`, ...config);
    const signed = [
      "-CA",
      "root.pem",
      "-CAkey",
      "root.key",
      "-CAcreateserial",
      "-days",
      String(days),
      "-extfile",
      "config",
      "-extensions",
      kind,
    ];
    openssl(on, "x509", "-req", "-in", `${kind}.csr`, "-out", `${kind}.pem`, ...signed);
  }
  let replies = 0;
  return {
    root: join(at, "root.pem"),
    reply: (query, time, as = "stamps") => {
      const out = join(at, `reply-${(replies += 1)}.tsr`);
      openssl(
        time,
        "ts",
        "-reply",
        ...config,
        "-section",
        "service",
        "-queryfile",
        query,
        "-signer",
        `${as}.pem`,
        "-inkey",
        `${as}.key`,
        "-chain",
        "root.pem",
        "-out",
        out,
      );
      return out;
    },
  };
}
