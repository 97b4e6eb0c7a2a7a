import { homeOf } from "../../src/pages/address.ts";
import type { PageFile, Site } from "../../src/editions/shown.ts";
import { AboutPage } from "../pages/about.tsx";
import { AssembliesPage } from "../pages/assemblies.tsx";
import { AssemblyPage } from "../pages/assembly.tsx";
import { entriesPages } from "../pages/entries.tsx";
import { daysPages } from "../day/days.tsx";
import { EntryPage } from "../pages/entry.tsx";
import { ForecastPage } from "../pages/forecast.tsx";
import { HomePage } from "../pages/home.tsx";
import { HoursPage } from "../pages/hours.tsx";
import { NOT_FOUND_ALLOWED, NotFoundPage } from "../pages/not-found.tsx";
import { SEARCH, SearchPage } from "../search/search-page.tsx";
import { html } from "./page.tsx";

/** The pages that tell how the build goes. */
export function storyPages(site: Site): PageFile[] {
  const { entries, assemblies } = site.shown.record;
  return [
    { path: homeOf(site.shown.edition), make: () => html(<HomePage site={site} />) },
    ...entriesPages(site),
    { path: "assemblies.html", make: () => html(<AssembliesPage site={site} />) },
    { path: "hours.html", make: () => html(<HoursPage site={site} />) },
    { path: "forecast.html", make: () => html(<ForecastPage site={site} />) },
    { path: SEARCH, make: () => html(<SearchPage site={site} />) },
    { path: "about.html", make: () => html(<AboutPage site={site} />) },
    { path: "404.html", make: () => html(<NotFoundPage site={site} />, NOT_FOUND_ALLOWED) },
    ...[...assemblies.keys()].map((id) => ({
      path: `assembly/${id}.html`,
      make: () => html(<AssemblyPage site={site} id={id} />),
    })),
    ...daysPages(site),
    ...entries.map((entry) => ({
      path: `entry/${entry.id}.html`,
      make: () => html(<EntryPage site={site} entry={entry} />),
    })),
  ];
}
