import { execFileSync } from "node:child_process";
import { chromiumPath } from "./chromium.ts";

/** Sees to it that there is a Chromium before any test runs, so that the browser tests never have a reason to be skipped. */
export default function setup(): void {
  if (chromiumPath() !== undefined) return;
  const isDebianRoot = process.platform === "linux" && process.getuid?.() === 0 && works("apt-get", ["--version"]);
  if (!isDebianRoot) {
    throw new Error(
      "The browser tests need Chromium: install it (Debian: `apt-get install chromium`) or name one in SCARFLINE_CHROMIUM.",
    );
  }
  process.stdout.write("No Chromium here: installing Debian's packages chromium and fonts-dejavu-core.\n");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  execFileSync("apt-get", ["update", "-qq"], { stdio: "inherit", env });
  execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-dejavu-core"], {
    stdio: ["ignore", "ignore", "inherit"],
    env,
  });
  if (chromiumPath() === undefined) throw new Error("apt-get installed chromium, but no /usr/bin/chromium is there.");
}

function works(command: string, args: string[]): boolean {
  try {
    execFileSync(command, args, { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
