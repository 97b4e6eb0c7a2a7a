import type { PageFile, Site } from "../src/pages/shown.ts";

/** The pages that tell how the build goes. */
export function storyPages(_site: Site): PageFile[] {
  return [];
}
