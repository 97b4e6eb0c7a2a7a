/** What the pages of the demo read of the texts of its entries. */
import { describe, expect, it } from "vitest";
import { openPictures, prepare } from "../../src/check.ts";
import { editionOf } from "../../src/editions/edition.ts";
import type { Edition, Shown } from "../../src/editions/shown.ts";
import { Texts } from "../../src/editions/texts.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { AUDIENCES } from "../../src/facts/values.ts";
import { Memo } from "../../src/memo.ts";
import { noting } from "../../src/reads.ts";
import { layOut, type LaidOutSite } from "../../src/publish/publish.ts";
import { wholesOf } from "../../src/publish/whole.ts";

const cache = new URL("../../.cache/scarfline", import.meta.url).pathname;
const tell = { line: () => undefined, progress: () => undefined };
const SEAL = {
  number: 3,
  date: "2026-01-01",
  digest: "0".repeat(64),
  since: new Map([["2024-09-28-first-cup", { number: 2, date: "2025-06-01" }]]),
};

async function read() {
  const content = new URL("../../content", import.meta.url).pathname;
  const prepared = await prepare({ content, cache, today: "2100-01-01" }, tell, { pictures: openPictures(cache) });
  if ("problems" in prepared) throw new Error("the demo has problems");
  return prepared;
}

type Read = Awaited<ReturnType<typeof read>>;

/** The edition, and how it is laid out with nothing made yet. */
function laid({ record, ready }: Read, edition: Edition): { readonly shown: Shown; readonly fresh: () => LaidOutSite } {
  const shown = editionOf(record, reckon(record), edition, SEAL);
  return { shown, fresh: () => layOut({ ...shown, memo: new Memo() }, ready, { version: "1" }) };
}

const made = await read();
const texts = new Texts(made.record);

describe.each(AUDIENCES)("Of the %s edition of the demo", (edition) => {
  const { fresh, shown } = laid(made, edition);
  const readBy = new Map<string, string[]>();
  const bytes = new Map<string, string>();
  for (const { path, make } of fresh().pages) {
    const page = noting(make);
    bytes.set(path, page.made);
    readBy.set(path, page.reads.map((one) => texts.of(one)?.key ?? "").sort());
  }

  const isReadByNobody = texts.isReadByNobody;

  it("nothing but a page reads a text: neither the reckoning nor what lays pages out", () => {
    expect(isReadByNobody).toBe(false);
  });

  it("all that pages may have read besides has a digest, so that pages are kept", () => {
    expect(wholesOf("with", made.record)(fresh())).toMatch(/^[0-9a-f]{64}$/);
  });

  it("a page reads the same, and says the same, made alone as after all others", () => {
    for (const { path } of fresh().pages) {
      const alone = fresh().pages.find((page) => page.path === path);
      const page = noting(alone?.make ?? (() => ""));
      expect(page.made === bytes.get(path), path).toBe(true);
      expect(page.reads.map((one) => texts.of(one)?.key ?? "").sort(), path).toEqual(readBy.get(path));
    }
  });

  it("the page of an entry reads its text and no other’s, and those of the evidence read none", () => {
    for (const { id, body } of shown.record.entries)
      expect(new Set(readBy.get(`entry/${id}.html`)?.map((key) => key.split(" ")[0])), id).toEqual(
        new Set(body.length === 0 ? [] : [id]),
      );
    const evidence = [...readBy].filter(([path]) => /^(?:batch|joint|lot|hold-point|trial|data)\//.test(path));
    expect(evidence.length).toBeGreaterThan(50);
    expect(evidence.filter(([, keys]) => keys.length > 0)).toEqual([]);
  });
});
