import { expect, it } from "vitest";
import { Prose } from "../../layouts/shell/page.tsx";
import { treeOf } from "../../src/publish/paper/tree.ts";
import { markdownParser } from "../../src/record/text/markdown.ts";
import { exampleSite } from "../pages/example.ts";

const paperOf = (markdown: string): string => {
  const prose = <Prose site={exampleSite("archive")} html={markdownParser().render(markdown)} />;
  return JSON.stringify(treeOf(prose), ["tag", "attributes", "href", "children"]);
};

it("Prose is told on paper with the elements that the site has, code and characters of HTML among them", () => {
  const told = paperOf("Cut *so* & <b>so</b>:\n\n    if (a < b) &amp;\n\n[drawing](plan.md)");
  expect(told).toContain(`{"tag":"em","attributes":{},"children":["so"]}`);
  expect(told).toContain(`" & <b>so</b>:"`);
  expect(told).toContain(
    `{"tag":"pre","attributes":{},"children":[{"tag":"code","attributes":{},"children":["if (a < b) &amp;\\n"]}]}`,
  );
  expect(told).toContain(`{"tag":"a","attributes":{"href":"plan.md"},"children":["drawing"]}`);
});
