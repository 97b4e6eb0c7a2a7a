/**
 * Tables that become cards on a narrow screen, a card a row with its verdict first: no cell says the head of its
 * column, so each table calls a list of heads by a class, and the page has the rules of those that stand in it.
 */
import type { Parted } from "./parted.ts";
import { cssString } from "./running-heads.ts";

/** Below this width; so wide is a page of 1280 px at 200 % too. */
const NARROW = "@media screen and (max-width:37.49rem)";

/** A table of rows that may be cards, up to the end of its heads. */
const HEADED =
  /<table class="((?:list|joints|data|cut)\b[^"]*)"([^>]*)>((?:<caption\b[^>]*>[\s\S]*?<\/caption>)?<thead><tr>)([\s\S]*?)(<\/tr><\/thead>)/g;
const HEAD = /<th\b[^>]*>([\s\S]*?)<\/th>/g;

/** Columns that say how it stands, the most telling first. */
const TELLING = ["Verdict", "State", "Held", "Accepted", "Closed", "Notice"];

/** A page with a class on each such table, and their rules at the end of its head. */
export function withCards(page: Parted): Parted {
  const names = new Map<string, string>();
  const marked = page.rest.replace(
    HEADED,
    (_, named: string, rest: string, before: string, heads: string, after: string) => {
      const words = [...heads.matchAll(HEAD)].map(([, inner = ""]) => textOf(inner));
      const key = words.join("\n");
      const name = names.get(key) ?? `cards-${names.size + 1}`;
      names.set(key, name);
      return `<table class="${named} cards ${name}"${rest}>${before}${heads}${after}`;
    },
  );
  if (names.size === 0) return page;
  const rules = [...names].map(([key, name]) => rulesOf(name, key.split("\n"))).join("");
  return { head: `${page.head}<style>${NARROW}{${rules}}</style>`, rest: marked };
}

function rulesOf(name: string, heads: readonly string[]): string {
  const verdict = TELLING.map((word) => heads.indexOf(word)).find((at) => at > 0);
  return heads
    .map((head, at) => {
      if (at === 0) return "";
      const cell = `.cards.${name}>tbody>tr>:nth-child(${at + 1})`;
      return at === verdict
        ? `${cell}{order:-1;flex:0 1 auto;padding-left:0}`
        : `${cell}::before{content:${cssString(head)}}`;
    })
    .join("");
}

const ENTITIES: { readonly [name: string]: string } = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };

/** The words of a head without its elements, which it has none of as yet but may be given. */
const textOf = (html: string): string =>
  html
    .replace(/<[^>]*>/g, "")
    .replace(/&(#?\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole)
    .trim();
