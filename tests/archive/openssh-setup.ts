import { execFileSync } from "node:child_process";

/** Sees to it that there is OpenSSH's ssh-keygen before any test runs, so that signatures are never left untested. */
export default function setup(): void {
  if (isThere("ssh-keygen")) return;
  if (process.platform !== "linux" || process.getuid?.() !== 0 || !isThere("apt-get")) {
    throw new Error("The tests of signatures need OpenSSH's ssh-keygen: install it (Debian: `apt-get install openssh-client`).");
  }
  process.stdout.write("No ssh-keygen here: installing Debian's package openssh-client.\n");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  execFileSync("apt-get", ["update", "-qq"], { stdio: "inherit", env });
  execFileSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "openssh-client"], { stdio: ["ignore", "ignore", "inherit"], env });
}

function isThere(command: string): boolean {
  try {
    execFileSync("which", [command], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
