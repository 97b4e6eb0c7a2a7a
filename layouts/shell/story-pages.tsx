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
import { storyPage } from "../own/laid-out.tsx";
import { html } from "./page.tsx";

/** The pages that tell how the build goes. */
export function storyPages(site: Site): PageFile[] {
  const { entries, assemblies } = site.shown.record;
  return [
    storyPage(site, homeOf(site.shown.edition), "home", () => HomePage({ site })),
    ...entriesPages(site),
    storyPage(site, "assemblies.html", "assemblies", () => AssembliesPage({ site })),
    storyPage(site, "hours.html", "hours", () => HoursPage({ site })),
    storyPage(site, "forecast.html", "forecast", () => ForecastPage({ site })),
    { path: SEARCH, make: () => html(<SearchPage site={site} />) },
    { path: "about.html", make: () => html(<AboutPage site={site} />) },
    { path: "404.html", make: () => html(<NotFoundPage site={site} />, NOT_FOUND_ALLOWED) },
    ...[...assemblies.keys()].map((id) => ({
      path: `assembly/${id}.html`,
      make: () => html(<AssemblyPage site={site} id={id} />),
    })),
    ...daysPages(site),
    ...entries.map((entry) =>
      storyPage(site, `entry/${entry.id}.html`, "entry", () => EntryPage({ site, entry }), entry.id),
    ),
  ];
}
