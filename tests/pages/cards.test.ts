import { expect, it } from "vitest";
import { withCards } from "../../layouts/shell/cards.ts";
import { joined, parted } from "../../layouts/shell/parted.ts";

const table = (name: string, heads: string): string =>
  `<table class="${name}"><caption>Some</caption><thead><tr>${heads}</tr></thead><tbody><tr><td>1</td></tr></tbody></table>`;
const page = (body: string): string => `<html><head></head><body>${body}</body></html>`;
const made = (body: string): string => joined(withCards(parted(page(body))));
const HEADS = '<th scope="col">Batch</th><th scope="col" class="number">Off &lt; 1 ’</th><th scope="col">Verdict</th>';

it("names each cell but the first by the head of its column, and puts the verdict beside the first", () => {
  const cards = made(table("list", HEADS));
  expect(cards).toContain('<table class="list cards cards-1">');
  const [, rules = ""] = /<style>([\s\S]*)<\/style><\/head>/.exec(cards) ?? [];
  expect(rules).toBe(
    "@media screen and (max-width:37.49rem){" +
      '.cards.cards-1>tbody>tr>:nth-child(2)::before{content:"Off \\3c  1 \\2019 "}' +
      ".cards.cards-1>tbody>tr>:nth-child(3){order:-1;flex:0 1 auto;padding-left:0}}",
  );
});

it("has the rules of the same heads once, and those of others beside them", () => {
  const other = '<th scope="col">Day</th><th scope="col">What</th>';
  const cards = made(table("list", HEADS) + table("joints", HEADS) + table("list", other));
  expect(cards.match(/class="(?:list|joints) cards cards-\d"/g)).toEqual([
    'class="list cards cards-1"',
    'class="joints cards cards-1"',
    'class="list cards cards-2"',
  ]);
  expect(cards.match(/\.cards-1>tbody/g)).toHaveLength(2);
});

it("leaves a page without such tables as it is, and no head can end the rules", () => {
  expect(made(table("narrow", HEADS))).toBe(page(table("narrow", HEADS)));
  const cards = made(table("list", "<th>One</th><th>&quot;}&lt;/style&gt;</th>"));
  expect(cards.match(/<\/style>/g)).toHaveLength(1);
  expect(cards).not.toContain('content:""}');
});
