import type { PageFile, Site } from "../src/pages/shown.ts";

/** Pages on batches, joints, lots and what rests on them. */
export function evidencePages(_site: Site): PageFile[] {
  return [];
}
