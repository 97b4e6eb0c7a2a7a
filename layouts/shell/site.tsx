import type { PageFile, Site } from "../../src/editions/shown.ts";
import { archivePages } from "../archive/archive-pages.tsx";
import { ownPages } from "../own/own-page.tsx";
import { feedsOf } from "../feeds/feeds.ts";
import { evidencePages } from "./evidence-pages.tsx";
import { SEARCH_INDEX, searchIndex } from "../search/search-index.ts";
import { tagsPages } from "../tags/tags.tsx";
import { storyPages } from "./story-pages.tsx";

/** Every page of an edition. None is made before it is asked for. */
export function pagesOf(site: Site): PageFile[] {
  const pages = [
    ...archivePages(site),
    ...storyPages(site),
    ...evidencePages(site),
    ...tagsPages(site),
    ...ownPages(site),
  ];
  return [...pages, { path: SEARCH_INDEX, make: () => searchIndex(site) }, ...feedsOf(site, pages)];
}
