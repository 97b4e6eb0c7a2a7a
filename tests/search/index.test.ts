import fc from "fast-check";
import MiniSearch from "minisearch";
import { describe, expect, it } from "vitest";
import { type Findable, packed } from "../../src/words/search/packed.ts";
import { openIndex, search } from "../../src/words/search/search.ts";
import { hasDigit, termsOf, wordsIn } from "../../src/words/search/terms.ts";

const thing = (title: string, words: string, id?: string): Findable => ({
  kind: "Entry",
  path: `entry/${title}.html`,
  title,
  lead: "",
  words: [words],
  ...(id === undefined ? {} : { id }),
});

const SHOP: readonly Findable[] = [
  thing("Rib to spar", "", "WR-J04"),
  thing("Rib to cap", "", "WR-J040"),
  thing("Everyday epoxy", "glued WR-J04 with H-3", "B-027"),
  thing("First cup", "B-027/1 broke in the wood. The squeeze-out was even; Käthe’s stove at 19.5 °C", "B-0270"),
  thing("Varnish", "Wet, and the varnish ran on the spruce"),
];

/** Titles of what is found, in alphabetical order. */
const found = (query: string, all = SHOP): string[] =>
  search(openIndex(packed(all)), query)
    .found.map(({ title }) => title)
    .sort();

describe("A search", () => {
  it("finds an id whole, in any case, and none that begins alike or shares a part", () => {
    expect(found("WR-J04")).toEqual(["Everyday epoxy", "Rib to spar"]);
    expect(found("wr-j04")).toEqual(found("WR-J04"));
    expect(found("B-027")).toEqual(["Everyday epoxy", "First cup"]);
    expect(found("H-3")).toEqual(["Everyday epoxy"]);
  });

  it("has the thing itself before all that names it", () => {
    expect(search(openIndex(packed(SHOP)), "b-027").found[0]?.title).toBe("Everyday epoxy");
    expect(search(openIndex(packed(SHOP)), "WR-J04").found[0]?.title).toBe("Rib to spar");
  });

  it("finds a piece whole and by its batch, and an id while it is typed", () => {
    expect(found("B-027/1")).toEqual(["First cup"]);
    expect(found("WR-J0")).toEqual(["Everyday epoxy", "Rib to cap", "Rib to spar"]);
  });

  it("finds an id of a thing that is typed without its hyphen", () => {
    expect(found("wrj04")).toEqual(["Rib to spar"]);
    expect(found("wr j04")).toEqual(["Rib to spar"]);
  });

  it("takes no id for another: one that is nowhere finds nothing", () => {
    expect(found("B-028")).toEqual([]);
    expect(found("WR-J05")).toEqual([]);
    expect(found("19.6")).toEqual([]);
  });

  it("forgives letters that are wrong, missing, too many or out of place, and says what they were taken for", () => {
    for (const typed of ["varnihs", "varnsh", "varnissh", "vernish"]) {
      const { found: things, readAs } = search(openIndex(packed(SHOP)), typed);
      expect({ typed, titles: things.map(({ title }) => title), readAs }).toEqual({
        typed,
        titles: ["Varnish"],
        readAs: [{ typed, as: ["varnish"] }],
      });
    }
  });

  it("takes a word that is there for another only where it is not together with the others", () => {
    expect(found("wood")).toEqual(["First cup"]);
    expect(found("food varnish")).toEqual([]);
    const two = [thing("Walk", "a trail in the wood"), thing("Bench", "a trial of two pieces")];
    expect(found("trail", two)).toEqual(["Walk"]);
    expect(found("trail pieces", two)).toEqual(["Bench"]);
  });

  it("asks for every word, with or without accents, beginnings among them", () => {
    expect(found("kathe stove")).toEqual(["First cup"]);
    expect(found("Käthe")).toEqual(["First cup"]);
    expect(found("sto eve")).toEqual(["First cup"]);
    expect(found("stove spruce")).toEqual([]);
    expect(found("squeeze-out")).toEqual(["First cup"]);
    expect(found("out squeeze")).toEqual(["First cup"]);
  });

  it("finds nothing by nothing", () => {
    for (const nothing of ["", "  ", "—", "…!"]) expect(found(nothing)).toEqual([]);
  });
});

const LETTERS = ["b", "rib", "ribs", "spar", "spare", "glue", "glued", "B-1", "B-10", "B-1/2", "ply-edge", "Öl", "9.5"];
const text = fc.array(fc.constantFrom(...LETTERS), { maxLength: 12 }).map((words) => words.join(" "));

/** MiniSearch 7.2.0 itself, given the same terms and told to match as we do: the outside check. */
function byMiniSearch(all: readonly Findable[], words: readonly string[]): string[] {
  const whole = new MiniSearch<{ id: number; all: string }>({
    fields: ["all"],
    tokenize: termsOf,
    processTerm: (term) => term,
  });
  whole.addAll(all.map(({ title, words: [more = ""] }, id) => ({ id, all: `${title} ${more}` })));
  const prefix = (term: string): boolean => !hasDigit(term) && term.length > 1;
  const hits = whole.search(
    { combineWith: "AND", queries: [...words] },
    { prefix, tokenize: (term: string) => [term], processTerm: (term: string) => term },
  );
  return hits.map(({ id }) => String(id)).sort();
}

describe("The packed index", () => {
  it("finds for any words the same things as MiniSearch does on its own index", () => {
    fc.assert(
      fc.property(
        fc.array(text, { minLength: 1, maxLength: 40 }),
        fc.constantFrom(...LETTERS),
        text,
        (texts, one, more) => {
          const all = texts.map((words, at) => thing(String(at), words));
          const query = [one, ...more.split(" ").slice(0, 1)].join(" ");
          const words = [...new Set(wordsIn(query))];
          const index = openIndex(packed(all));
          const known = words.every((word) => index.lines.has(word));
          fc.pre(known);
          const ours = search(index, query)
            .found.map(({ title }) => title)
            .sort();
          const theirs = byMiniSearch(all, words);
          // Where no thing has all of them, we look again for words spelt alike; MiniSearch was not asked to.
          if (theirs.length > 0) expect(ours).toEqual(theirs);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("gives back every place of a word, however many there are between two", () => {
    const all = Array.from({ length: 5000 }, (_, at) =>
      thing(`t${at}`, at % 997 === 0 || at === 4999 ? "seldom" : "often"),
    );
    const places = found("seldom", all).map((title) => Number(title.slice(1)));
    expect(places.sort((a, b) => a - b)).toEqual([0, 997, 1994, 2991, 3988, 4985, 4999]);
  });
});
