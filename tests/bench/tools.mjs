/** Other people's programs that we are measured against, from Debian. */
import { execFileSync } from "node:child_process";

const PACKAGES = { hugo: "hugo", vipsthumbnail: "libvips-tools", ssimulacra_main: "libjxl-devtools" };

/** Whether a program is there; on Debian, as root, it is installed where it is not. */
export function hasTool(name) {
  if (runs(name)) return true;
  if (process.getuid?.() !== 0) return false;
  try {
    execFileSync("apt-get", ["install", "-y", "--no-install-recommends", PACKAGES[name]], { stdio: "ignore" });
  } catch {
    return false;
  }
  return runs(name);
}

function runs(name) {
  try {
    execFileSync("sh", ["-c", `command -v ${name}`], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
