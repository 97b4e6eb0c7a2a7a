import type { JSX } from "preact";
import type { Site } from "../src/pages/shown.ts";
import { Page } from "./page.tsx";

const PATH = "404.html";

export function NotFoundPage({ site }: { readonly site: Site }): JSX.Element {
  return (
    <Page site={site} path={PATH} kind="not found" title="No such page">
      <div class="title">
        <h1>There is no such page</h1>
        <p class="title__lead">It may have been moved, or this edition does not show it.</p>
      </div>
      <p>Everything that is shown can be reached from <a href="index.html">the home page</a>, <a href="assemblies.html">the assemblies</a> or <a href="entries.html">the entries</a>.</p>
    </Page>
  );
}
