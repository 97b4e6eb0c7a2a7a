import { execFileSync } from "node:child_process";
import { type BrowserName, browserAsked, pathOf } from "./browsers.ts";

const PACKAGES: { readonly [name in BrowserName]: readonly string[] } = {
  chromium: ["chromium", "fonts-dejavu-core"],
  firefox: ["firefox-esr", "fonts-dejavu-core"],
};

/** Sees to it that the browser asked for is there before any test runs, so that no test of pages ever has a reason to be skipped. */
export default function setup(): void {
  const asked = browserAsked();
  if (pathOf(asked) !== undefined) return;
  const packages = PACKAGES[asked];
  const isDebianRoot = process.platform === "linux" && process.getuid?.() === 0 && works("apt-get", ["--version"]);
  if (!isDebianRoot) {
    throw new Error(
      `The browser tests need ${asked}: install it (Debian: \`apt-get install ${packages[0]}\`) or name one in SCARFLINE_${asked.toUpperCase()}.`,
    );
  }
  process.stdout.write(`No ${asked} here: installing Debian's packages ${packages.join(" and ")}.\n`);
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  execFileSync("apt-get", ["update", "-qq"], { stdio: "inherit", env });
  execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...packages], {
    stdio: ["ignore", "ignore", "inherit"],
    env,
  });
  if (pathOf(asked) === undefined)
    throw new Error(`apt-get installed ${packages[0]}, but it is in none of its places.`);
}

function works(command: string, args: string[]): boolean {
  try {
    execFileSync(command, args, { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
