import { execFileSync } from "node:child_process";

/** Tools that tests run, with Debian's package of each and what goes untested without it. */
const TOOLS = [
  { command: "ssh-keygen", pack: "openssh-client", of: "signatures" },
  { command: "unzip", pack: "unzip", of: "what other readers get of a zip" },
  { command: "openssl", pack: "openssl", of: "time stamps" },
  { command: "pdftotext", pack: "poppler-utils", of: "what stands in PDFs" },
  { command: "qpdf", pack: "qpdf", of: "whether PDFs are sound" },
  { command: "faketime", pack: "faketime", of: "builds on other days" },
  { command: "sqlite3", pack: "sqlite3", of: "ledgers as other programs open them" },
] as const;

/** Sees to it that they are there before any test runs, so that nothing is left untested. */
export default function setup(): void {
  const missing = TOOLS.filter(({ command }) => !isThere(command));
  if (missing.length === 0) return;
  const packs = missing.map(({ pack }) => pack);
  if (process.platform !== "linux" || process.getuid?.() !== 0 || !isThere("apt-get")) {
    throw new Error(
      missing
        .map(
          ({ command, pack, of }) =>
            `The tests of ${of} need ${command}: install it (Debian: \`apt-get install ${pack}\`).`,
        )
        .join("\n"),
    );
  }
  process.stdout.write(
    `Not here: ${missing.map(({ command }) => command).join(", ")}. Installing from Debian: ${packs.join(", ")}.\n`,
  );
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  execFileSync("apt-get", ["update", "-qq"], { stdio: "inherit", env });
  execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...packs], {
    stdio: ["ignore", "ignore", "inherit"],
    env,
  });
}

function isThere(command: string): boolean {
  try {
    execFileSync("which", [command], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
