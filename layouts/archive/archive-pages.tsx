import type { PageFile, Site } from "../../src/editions/shown.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";
import { html } from "../shell/page.tsx";
import { EventsPage } from "./events.tsx";
import { HistoriesPage } from "./histories.tsx";
import { historyPages } from "./history.tsx";
import { LedgersPage } from "./ledgers.tsx";
import { PapersPage } from "./papers.tsx";
import { StartPage } from "./start.tsx";

/** Pages that the archive edition has beyond every other, for whoever reads it years on. */
export function archivePages(site: Site): PageFile[] {
  if (site.shown.edition !== "archive") return [];
  return [
    { path: PAGES.start, make: () => html(<StartPage site={site} />) },
    { path: PAGES.events, make: () => html(<EventsPage site={site} />) },
    { path: PAGES.ledgers, make: () => html(<LedgersPage site={site} />) },
    { path: PAGES.papers, make: () => html(<PapersPage site={site} />) },
    { path: PAGES.histories, make: () => html(<HistoriesPage site={site} />) },
    ...historyPages(site),
  ];
}
