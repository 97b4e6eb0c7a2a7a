/** All days on one assembly, where they are too many for its own page. */
import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { assemblyView, hasDaysPage } from "../../src/pages/story/assembly.ts";
import type { AssemblyView } from "../../src/pages/story/assembly.ts";
import type { PageFile, Site } from "../../src/editions/shown.ts";
import { hoursWords } from "../../src/words/durations.ts";
import { counted } from "../../src/words/lists.ts";
import { To } from "../shell/link.tsx";
import { Log } from "../parts/log.tsx";
import { html, Page } from "../shell/page.tsx";

export function daysPath(assembly: string): string {
  return `days/${assembly}.html`;
}

export function daysPages(site: Site): PageFile[] {
  const long = [...site.shown.record.assemblies.keys()].filter((id) => hasDaysPage(site.shown, id));
  return long.map((id) => ({ path: daysPath(id), make: () => html(<DaysPage site={site} id={id} />) }));
}

function DaysPage({ site, id }: { readonly site: Site; readonly id: string }): JSX.Element {
  const view = assemblyView(site.shown, id);
  if (view === undefined) return <></>;
  const from = daysPath(id);
  const { assembly, told, listed, minutes } = view;
  return (
    <Page
      site={site}
      path={from}
      kind="assembly"
      title={`${assembly.title}: day by day`}
      description={`${assembly.title}: every day that was written down, with its photographs.`}
    >
      <div class="title">
        <p class="title__place">
          <To site={site} from={from} to={{ kind: "assembly", id }}>
            {assembly.title}
          </To>
        </p>
        <h1>Day by day</h1>
        <p class="title__lead">
          {counted(told.length, "day")}, {hoursWords(minutes)} in all.
        </p>
      </div>
      <ListedHere from={from} told={told} listed={listed} />
      <Log site={site} from={from} told={listed} photos heading="h2" />
    </Page>
  );
}

/** Says where the days are that are not listed here. */
export function ListedHere({
  from,
  told,
  listed,
}: Pick<AssemblyView, "told" | "listed"> & { readonly from: string }): JSX.Element | null {
  if (listed.length === told.length) return null;
  return (
    <p class="quiet">
      {counted(listed.length, "day")} on the assembly itself. Those on the assemblies within stand on their own pages,
      and all of them under <a href={relative(from, "entries.html")}>entries</a>.
    </p>
  );
}
