import type { PageFile, Site } from "../../src/editions/shown.ts";
import { evidencePages } from "./evidence-pages.tsx";
import { storyPages } from "./story-pages.tsx";

/** Every page of an edition. None is made before it is asked for. */
export function pagesOf(site: Site): PageFile[] {
  return [...storyPages(site), ...evidencePages(site)];
}
