/** The same joints and batches are counted alike wherever they are counted. */
import { beforeAll, describe, expect, it } from "vitest";
import type { Edition } from "../../src/editions/shown.ts";
import { editionOf } from "../../src/editions/edition.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import type { Evidence } from "../../src/evidence/types.ts";
import type { Record } from "../../src/facts/types.ts";
import { ledgersOf } from "../../src/pages/ledgers/ledgers.ts";
import { layOut } from "../../src/publish/publish.ts";
import { readRecord } from "../../src/record/read.ts";

type Counts = { [state: string]: number };

const NOTHING = { pictures: new Map(), documents: new Map(), clips: new Map() };
const demo: { record?: Record; evidence?: Evidence } = {};

beforeAll(async () => {
  const read = await readRecord("content", { today: "2026-11-26" });
  if ("problems" in read) throw new Error("the demo has problems");
  demo.record = read.record;
  demo.evidence = reckon(read.record);
});

function count(words: Iterable<string>): Counts {
  const counts: Counts = {};
  for (const word of words) counts[word] = (counts[word] ?? 0) + 1;
  return counts;
}

function sum(of: readonly Counts[]): Counts {
  const counts: Counts = {};
  for (const [word, n] of of.flatMap((one) => Object.entries(one))) counts[word] = (counts[word] ?? 0) + n;
  return counts;
}

const marks = (html: string): string[] =>
  [...html.matchAll(/class="mark__word">([^<]+)</gu)].map(([, word = ""]) => word);
/** `<li …><span>19 shown</span></li>` within a list of counts. */
const listed = (html: string): Counts[] =>
  [...html.matchAll(/<ul class="counts">(.*?)<\/ul>/gu)].map(([, list = ""]) =>
    Object.fromEntries([...list.matchAll(/<span>(\d+) ([^<]+)<\/span>/gu)].map(([, n, word]) => [word, Number(n)])),
  );
/** A tally of the overview, states of which there is none left out. */
function tally(html: string, of: string): Counts {
  const [, rows = ""] = new RegExp(`aria-label="${of} by verdict">(.*?)</section>`, "u").exec(html) ?? [];
  return Object.fromEntries(
    rows
      .split('class="tally__row')
      .slice(1)
      .map((row) => [marks(row)[0] ?? "", Number(/figures">(\d+)</u.exec(row)?.[1])] as const)
      .filter(([, n]) => n > 0),
  );
}

/** What each page and ledger of an edition counts. */
function counted(edition: Edition) {
  const { record, evidence } = demo;
  if (!record || !evidence) throw new Error("no demo");
  const shown = editionOf(record, evidence, edition);
  const site = layOut(shown, NOTHING);
  const page = (path: string): string => site.pages.find((one) => one.path === path)?.make() ?? "";
  const roots = [...record.assemblies.values()].filter(({ parent }) => parent === undefined);
  const appendix = page("appendix.html");
  const rows = (kind: string): string[] =>
    [...appendix.matchAll(new RegExp(`<tr id="${kind}-[^"]+">(.*?)</tr>`, "gu"))].map(([, row = ""]) => row);
  // An archive begins with what it is, and the chronicle stands beside.
  const home = [
    ...page(edition === "archive" ? "home.html" : "index.html").matchAll(
      /class="glance depth-0".*?<ul class="counts">.*?<\/ul>/gu,
    ),
  ];
  return {
    evidence: tally(page("evidence.html"), "Joints"),
    batches: tally(page("evidence.html"), "Batches"),
    home: sum(home.flatMap(([html]) => listed(html))),
    assemblies: sum(roots.flatMap(({ id }) => listed(page(`assembly/${id}.html`)).slice(0, 1))),
    appendix: count(rows("joint").flatMap((row) => marks(row).slice(0, 1))),
    pages: [...evidence.joints.keys()].map((id) => [id, marks(page(`joint/${id}.html`))[0]] as const),
    shownBatches: shown.record.entries.flatMap((entry) => entry.batches).map(({ id }) => id),
    ledger: (name: string, column: string): Counts | undefined => {
      const text = ledgersOf(shown).find(({ path }) => path === `data/${name}.json`)?.text;
      if (text === undefined) return undefined;
      return count((JSON.parse(text) as { rows: { [key: string]: string }[] }).rows.map((row) => row[column] ?? ""));
    },
  };
}

describe.each(["public", "inspector", "archive"] as const)("In the %s edition", (edition) => {
  it("home, evidence, assemblies and appendix count the joints as they are, and each page says its own", () => {
    const states = [...(demo.evidence?.joints.values() ?? [])].map(({ joint, state }) => [joint.id, state] as const);
    const all = count(states.map(([, state]) => state));
    const { evidence, home, assemblies, appendix, pages } = counted(edition);
    expect({ evidence, home, assemblies, appendix }).toEqual({
      evidence: all,
      home: all,
      assemblies: all,
      appendix: all,
    });
    expect(pages).toEqual(states);
  });

  it("the ledgers count as its pages do, where it has ledgers", () => {
    const { evidence, batches, ledger } = counted(edition);
    const [ofJoints, ofBatches] = [ledger("joints", "state"), ledger("batches", "verdict")];
    if (edition === "public") expect([ofJoints, ofBatches]).toEqual([undefined, undefined]);
    else {
      // A batch that went into no joint stands in no count, nor does one that was thrown away.
      const { "in no joint": none, "thrown away": away, ...inJoints } = ofBatches ?? {};
      expect([ofJoints, inJoints]).toEqual([evidence, batches]);
      expect([none, away]).toEqual([5, 1]);
    }
  });

  it("its page of evidence counts every batch that it shows and that went into a joint", () => {
    const shown = new Set(counted(edition).shownBatches);
    const all = [...(demo.evidence?.batches.values() ?? [])].filter(({ batch }) => shown.has(batch.id));
    expect(counted(edition).batches).toEqual(
      count(all.map(({ verdict }) => verdict).filter((verdict) => !["in no joint", "thrown away"].includes(verdict))),
    );
  });
});
