import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A folder in which the first test that asks for the demo builds it for all others. */
export default function setup(): () => void {
  const folder = mkdtempSync(join(tmpdir(), "scarfline-demo-"));
  process.env["SCARFLINE_DEMO"] = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}
