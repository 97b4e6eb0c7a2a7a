/** What the verdicts of its batches make of a joint. */
import { expect, it } from "vitest";
import { jointFile } from "../../src/evidence/joint.ts";
import { recordIndexOf } from "../../src/evidence/record-index.ts";
import type { BatchFile, BatchVerdict } from "../../src/evidence/types.ts";
import { batch, entry, glued, joint, test } from "./make.ts";
import { g } from "./quantities.ts";
import { reckon } from "./reckoned.ts";

const SECOND = batch("B-2", { resin: { lot: "R-2", mass: g("40.0") }, hardener: { lot: "H-2", mass: g("20.0") } });
const made = glued([batch("B-1"), SECOND], [test("B-1/1"), test("B-2/1")], { entries: [entry("2025-12-01-last")] });
const index = recordIndexOf(made);
const { batches: FILES } = reckon(made);

/** The joint's state, and of each batch how it is told, where its batches have these verdicts. */
function withVerdicts(...verdicts: readonly BatchVerdict[]) {
  const files = new Map(
    [...FILES.values()].map((file, at): [string, BatchFile] => [
      file.batch.id,
      { ...file, verdict: verdicts[at] ?? "shown" },
    ]),
  );
  const { state, findings } = jointFile(index, joint("W-1"), files);
  return [
    state,
    ...findings.flatMap(({ code, severity, values, restsOn }) =>
      code === "joint-glued/batch" || code === "joint-quarantine/batch"
        ? [[code, severity, values, restsOn.map(({ kind, id }) => `${kind} ${id}`)]]
        : [],
    ),
  ];
}

const told = (code: string, severity: string, id: string, verdict: BatchVerdict) => [
  code,
  severity,
  { batch: id, day: "2025-03-10", verdict },
  ["joint W-1", `batch ${id}`, "entry 2025-03-10-glue"],
];

it("A joint is as the worst of its batches, and tells each as it is", () => {
  const second = told("joint-glued/batch", "meets", "B-2", "shown");
  const expected: readonly [BatchVerdict, string, string, string][] = [
    ["shown", "shown", "joint-glued/batch", "meets"],
    ["pending", "pending", "joint-glued/batch", "waits"],
    ["not shown", "not shown", "joint-glued/batch", "unproven"],
    ["in no joint", "not shown", "joint-glued/batch", "unproven"],
    ["thrown away", "not shown", "joint-glued/batch", "unproven"],
    ["rejected", "quarantined", "joint-quarantine/batch", "rejects"],
  ];
  for (const [verdict, state, code, severity] of expected)
    expect(withVerdicts(verdict)).toEqual([state, told(code, severity, "B-1", verdict), second]);
  expect(withVerdicts("pending", "not shown")[0]).toBe("not shown");
  expect(withVerdicts("shown", "pending")[0]).toBe("pending");
  expect(withVerdicts("not shown", "rejected")[0]).toBe("quarantined");
});
