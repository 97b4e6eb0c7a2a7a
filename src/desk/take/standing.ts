/** Whether a file is in the record already, under whatever name. */
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Desk } from "./outcome.ts";

/** The path of a file with the same bytes in one of the record's folders. */
export function standingAs(
  { content, files }: Pick<Desk, "content" | "files">,
  folder: string,
  bytes: Buffer,
): string | undefined {
  return files.find((file) => {
    if (!file.startsWith(`${folder}/`)) return false;
    const place = join(content, file);
    return statSync(place).size === bytes.length && readFileSync(place).equals(bytes);
  });
}
