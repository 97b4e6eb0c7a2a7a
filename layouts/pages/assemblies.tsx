import type { JSX } from "preact";
import { homeView } from "../../src/pages/story/home.ts";
import type { Site } from "../../src/editions/shown.ts";
import { Glances } from "../parts/glances.tsx";
import { STATES } from "../parts/drawing.tsx";
import { Mark } from "../parts/mark.tsx";
import { Page } from "../shell/page.tsx";

const PATH = "assemblies.html";

const SAYS: { readonly [state in (typeof STATES)[number]]: string } = {
  shown: "every batch in it is shown",
  pending: "glued; test pieces are still to be broken or still curing",
  "not shown": "glued, but the record cannot show that a limit was kept",
  quarantined: "holds a rejected batch or a recalled lot",
  opened: "the glue was taken out and nothing has been glued since",
  "not glued": "not glued yet",
};

export function AssembliesPage({ site }: { readonly site: Site }): JSX.Element {
  const { glance } = homeView(site.shown);
  return (
    <Page
      site={site}
      path={PATH}
      kind="assemblies"
      title="Assemblies"
      description="Every assembly with its hours, the state of its joints and its next hold point."
    >
      <div class="title">
        <h1>Assemblies</h1>
        <p class="title__lead">
          What is built and inspected as one. Hours and joints include those of the assemblies within. There are{" "}
          <a href="tags.html">tags for the workshop</a> to print.
        </p>
      </div>
      <Glances site={site} from={PATH} glances={glance} />
      <section class="section">
        <h2>How joints are marked</h2>
        <dl class="marks">
          {STATES.map((state) => (
            <div>
              <dt>
                <Mark of={state} />
              </dt>
              <dd>{SAYS[state]}</dd>
            </div>
          ))}
        </dl>
      </section>
    </Page>
  );
}
