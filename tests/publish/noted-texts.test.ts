import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editionOf } from "../../src/editions/edition.ts";
import { Texts } from "../../src/editions/texts.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { AUDIENCES } from "../../src/facts/values.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { deepDigest } from "../../src/publish/output/digest.ts";
import { layOut, type LaidOutSite } from "../../src/publish/publish.ts";
import { wholesOf } from "../../src/publish/whole.ts";
import { Memo } from "../../src/memo.ts";
import { given, noting } from "../../src/reads.ts";
import { assembly, entry, lot, LOTS, record } from "../evidence/make.ts";

const passage = (markdown: string, audience: "public" | "inspector" = "public") => ({ audience, markdown, line: 9 });
const written = (first = "See [the lot](S-9) and ![a picture](../photos/a.jpg).", change = {}) =>
  record({
    assemblies: [assembly("wing")],
    lots: [...LOTS, lot("S-9", { audience: "inspector", body: [passage("A lot [here](S-1).")] })],
    entries: [
      entry("2025-03-10-glue", { body: [passage(first), passage("For few.", "inspector")], ...change }),
      entry("2025-03-11-more", { body: [passage("More.")] }),
    ],
  });
const NOTHING = { pictures: new Map(), documents: new Map(), clips: new Map() };

describe("The text of an entry", () => {
  const made = written();
  const texts = new Texts(made);
  const keys = (make: () => unknown): string[] => noting(make).reads.map((read) => texts.of(read)?.key ?? "?");
  const [first, second] = made.entries;
  const text = (): string | undefined => first?.body[0]?.markdown;

  it("is noted where it is read, with that of the edition that was made of it", () => {
    expect(keys(text)).toEqual(["2025-03-10-glue 0"]);
    const shown = editionOf(made, reckon(made), "public").record.entries[0]?.body;
    expect(shown?.length).toBe(1);
    expect(shown?.[0]).not.toBe(first?.body[0]);
    expect(keys(() => shown?.[0]?.blocks)).toEqual(["2025-03-10-glue 0"]);
    expect(JSON.stringify(noting(() => shown?.[0]?.blocks).made)).toContain("See ");
    expect(keys(() => shown?.[0]?.markdown)).toEqual(["2025-03-10-glue 0"]);
  });

  it("is in no copy, and in nothing that is written of a record", () => {
    expect(keys(() => JSON.stringify(made))).toEqual([]);
    expect(JSON.stringify(made)).not.toContain("See ");
    expect({ ...first?.body[0] }).toEqual({ audience: "public" });
    expect(keys(() => first?.body[0]?.line)).toEqual(["2025-03-10-glue 0"]);
  });

  it("was read by whoever asks for what was made of it, first or later", () => {
    const memo = new Memo();
    const outer = (of: object) => `${memo.within(of, "a name", inner)} ${second?.body[0]?.markdown}`;
    const inner = () => text();
    const asked = (): string => memo.once(made, outer);
    const both = ["2025-03-10-glue 0", "2025-03-11-more 0"];
    expect([keys(asked), keys(asked), keys(() => memo.within(made, "a name", inner))]).toEqual([both, both, [both[0]]]);
    const kept = noting(text);
    expect(keys(() => given(kept))).toEqual([both[0]]);
  });

  it("is read by none that is made around what only wants to know what it reads", () => {
    expect(keys(() => noting(text))).toEqual([]);
  });

  it("is found out to be read where nothing is being made, also by the way of a memo", () => {
    const [one, other] = [written(), written()];
    const [ofOne, ofOther] = [new Texts(one), new Texts(other)];
    expect([ofOne.isReadByNobody, ofOther.isReadByNobody]).toEqual([false, false]);
    expect(one.entries[0]?.body[0]?.markdown).toContain("See");
    expect(new Memo().once(other, ({ entries }) => entries[0]?.body[0]?.markdown)).toContain("See");
    expect([ofOne.isReadByNobody, ofOther.isReadByNobody]).toEqual([true, true]);
  });

  it("is read neither by the reckoning, nor by ledgers, nor where an edition is made or laid out", () => {
    const whole = written();
    const found = new Texts(whole);
    for (const edition of AUDIENCES) {
      const shown = editionOf(whole, reckon(whole), edition);
      for (const ledger of ledgersOf(shown)) expect(ledger.text).not.toBe("");
      expect(layOut(shown, NOTHING).pages.length).toBeGreaterThan(10);
    }
    expect(found.isReadByNobody).toBe(false);
  });
});

describe("What pages were made of besides texts", () => {
  const seal = {
    number: 2,
    date: "2025-04-01",
    digest: "d",
    since: new Map([["2025-03-10-glue", { number: 1, date: "2025-03-12" }]]),
  };
  const laid = (made: ReturnType<typeof written>, named = seal): LaidOutSite =>
    layOut(editionOf(made, reckon(made), "inspector", named), NOTHING, { version: "1", firstSheets: "css" });
  const whole = (made: ReturnType<typeof written>, named = seal): string | undefined => {
    const texts = new Texts(made);
    const digest = wholesOf("with", made)(laid(made, named));
    expect(texts.isReadByNobody).toBe(false);
    return digest;
  };
  const before = whole(written());

  it("has one digest whatever the texts say, and another for any other", () => {
    expect(before).toMatch(/^[0-9a-f]{64}$/);
    expect(whole(written("Otherwise."))).toBe(before);
    expect(whole(written(undefined, { title: "Otherwise" }))).not.toBe(before);
    expect(whole(written(undefined, { body: [] }))).not.toBe(before);
    expect(whole(written(undefined, { audience: "inspector" }))).not.toBe(before);
  });

  it("has another where passages change their readers, though an edition shows as many as before", () => {
    const marked = (...audiences: readonly ("inspector" | "archive")[]): string | undefined =>
      whole(written(undefined, { body: audiences.map((audience) => ({ audience, markdown: audience, line: 9 })) }));
    const digests = [marked("inspector", "archive"), marked("archive", "inspector")];
    const three = [marked("archive", "inspector", "inspector"), marked("inspector", "inspector", "archive")];
    expect(new Set([...digests, ...three]).size).toBe(4);
  });

  it("has another for what only the whole record holds, which decides what is cut out of texts", () => {
    const hidden = (change: object): string | undefined =>
      whole({
        ...written(),
        lots: new Map([...written().lots, ["S-8", lot("S-8", { audience: "archive", ...change })]]),
      });
    expect(hidden({ certificate: "papers/one.pdf" })).not.toBe(hidden({ certificate: "papers/other.pdf" }));
  });

  it("has another after a seal since which an entry stands is another", () => {
    const since = new Map([["2025-03-10-glue", { number: 2, date: "2025-04-01" }]]);
    expect(whole(written(), { ...seal, since })).not.toBe(before);
    expect(whole(written(), { ...seal, since: new Map() })).not.toBe(before);
    expect(whole(written(), { ...seal, digest: "e" })).not.toBe(before);
  });

  it("has another for any other field of the site or of the edition, but its functions and what it keeps", () => {
    const made = written();
    new Texts(made);
    const { site, placings, ...rest } = laid(made);
    const of = (other: object, shown: object = {}): string | undefined =>
      wholesOf("with", made)({ ...rest, placings, site: { ...site, ...other, shown: { ...site.shown, ...shown } } });
    const [own, ofEdition] = [Object.keys(site), Object.keys(site.shown)].map((keys) =>
      keys.filter((key) => !["shown", "prose", "shows", "nameOf", "say", "memo"].includes(key)),
    ) as [string[], string[]];
    expect([...own, ...ofEdition].length).toBeGreaterThan(8);
    for (const key of [...own, "a new one"]) expect(of({ [key]: "other" }), key).not.toBe(before);
    for (const key of [...ofEdition, "a new one"]) expect(of({}, { [key]: "other" }), key).not.toBe(before);
    expect(wholesOf("with another", made)({ ...rest, placings, site })).not.toBe(before);
    const placing = { from: "a", to: "b", original: false };
    expect(wholesOf("with", made)({ ...rest, placings: new Map([["b", placing]]), site })).not.toBe(before);
    expect(of({}, { shows: () => false })).toBe(before);
    expect(of({ another: () => "function" })).toBeUndefined();
  });

  it("is the same and says the same of verdicts, whatever the texts say", () => {
    const [one, other] = [written(), written("Otherwise.")];
    const digest = deepDigest(reckon(one));
    expect(digest).toBeDefined();
    expect(digest).toBe(deepDigest(reckon(other)));
  });
});

describe("A digest of values", () => {
  const values = fc.anything({ withMap: true, withSet: true, withBigInt: true, maxDepth: 3 });

  it("is the same for what is alike, and another for what is not", () => {
    const alike = (one: unknown, other: unknown): boolean => {
      try {
        expect(one).toStrictEqual(other);
        return true;
      } catch {
        return false;
      }
    };
    fc.assert(
      fc.property(values, values, (one, other) => {
        expect(deepDigest(structuredClone(one))).toBe(deepDigest(structuredClone(one)));
        if (!alike(one, other)) expect(deepDigest(one)).not.toBe(deepDigest(other));
      }),
      { numRuns: 2_000 },
    );
  });

  it("tells what is easily taken for the same", () => {
    const all: readonly unknown[] = [
      [0, -0, "0", false, null, undefined, Number.NaN, "", 0n],
      [[], {}, new Map(), new Set(), [[]], [undefined], [null]],
      [["ab", "c"], ["a", "bc"], ["abc"], { ab: "c" }, new Set(["ab", "c"]), new Map([["ab", "c"]])],
      ["\ud800", "\ud801", "�"],
      [
        new Uint8Array([1, 0]),
        new Uint8Array([1, 2]),
        new Uint16Array([1]),
        new Float64Array([1]),
        new Float64Array([-1]),
      ],
      [{ a: undefined }, { a: 1, b: 2 }, { a: { b: 2 } }, { a: [1], b: 2 }],
    ].flat();
    expect(new Set(all.map(deepDigest)).size).toBe(all.length);
  });

  it("is none of what its fields do not tell", () => {
    for (const value of [() => 1, Symbol("a"), new Date(0), /a/, new Memo(), Object.create(null)])
      expect(deepDigest({ deep: [new Map([["in", value]])] })).toBeUndefined();
  });
});
