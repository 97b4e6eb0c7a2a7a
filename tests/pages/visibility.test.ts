import { describe, expect, it } from "vitest";
import { redactedEvidence } from "../../src/editions/redacted-evidence.ts";
import { redactedRecord } from "../../src/editions/redacted-record.ts";
import { tellsAll, visibilityOf } from "../../src/editions/visibility.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { finder } from "../../src/evidence/finding.ts";
import type { EarlierHours, Entry, Kind, Ref } from "../../src/facts/types.ts";
import { isShown } from "../../src/facts/visibility.ts";
import { batch, departure, entry, glued, lot, openItem, piece, test } from "../evidence/make.ts";

/** All that is in a hidden entry, and what is marked itself. */
const whole = (() => {
  const made = glued([batch("B-007", { pieces: [piece("B-007")] }), batch("B-008")], [test("B-007/1")]);
  const hidden: Entry = {
    ...entry("2025-05-01-hidden", {
      batches: [batch("K-001", { pieces: [piece("K-001")] })],
      departures: [departure("K-D1")],
      raised: [openItem("K-O1")],
    }),
    audience: "archive",
  };
  const lots = new Map([...made.lots, ["K-LOT", lot("K-LOT", { audience: "archive" })]]);
  const table: EarlierHours = {
    ...hidden,
    id: "K-HOURS",
    file: "hours/K-HOURS.csv",
    title: "Old",
    lines: [],
    setAside: 0,
  };
  return { ...made, lots, earlier: [table], entries: [...made.entries, hidden] };
})();
const visibility = visibilityOf(whole, "public");

const HIDDEN: { readonly [kind in Kind]: string | "of a kind that no edition hides" } = {
  entry: "2025-05-01-hidden",
  batch: "K-001",
  piece: "K-001/1",
  lot: "K-LOT",
  trial: "K-T",
  departure: "K-D1",
  "open item": "K-O1",
  "climate log": "K-LOG",
  "earlier hours": "K-HOURS",
  assembly: "of a kind that no edition hides",
  joint: "of a kind that no edition hides",
  "hold point": "of a kind that no edition hides",
  adhesive: "of a kind that no edition hides",
  finish: "of a kind that no edition hides",
  procedure: "of a kind that no edition hides",
  person: "of a kind that no edition hides",
};
const refs = (Object.entries(HIDDEN) as [Kind, string][]).map(([kind, id]): Ref => ({ kind, id }));
const hidden = refs.filter(({ id }) => id !== "of a kind that no edition hides");

describe("What an edition shows", () => {
  it("is one question for a thing of any kind, whoever asks", () => {
    expect(refs.filter((ref) => !isShown(ref, visibility))).toEqual(hidden);
    const things: Ref[] = [
      { kind: "batch", id: "B-007" },
      { kind: "piece", id: "B-007/1" },
    ];
    expect(things.filter((ref) => isShown(ref, visibility))).toEqual(things);
  });

  it("tells all only of what it shows, and of no person whose name it withholds", () => {
    expect(refs.filter((ref) => tellsAll(visibility, ref, whole)).filter((ref) => !isShown(ref, visibility))).toEqual(
      [],
    );
    expect(tellsAll(visibility, { kind: "person", id: "nobody" }, whole)).toBe(false);
  });

  it("holds no finding about a hidden thing, of whatever kind, not even as withheld", () => {
    const evidence = reckon(whole);
    const about = (ref: Ref) => finder(ref, [])("joint-glued/never", "unproven", {});
    const shown = { kind: "joint", id: "F-J1" } as const;
    const planted = { ...evidence, findings: [...hidden, shown].map(about) };
    const record = redactedRecord(whole, visibility);
    const { findings } = redactedEvidence(whole, planted, record, visibility);
    expect(findings.map((finding) => finding.about)).toEqual([shown]);
    expect(redactedEvidence(whole, evidence, record, visibility).findings.length).toBeGreaterThan(0);
  });
});
