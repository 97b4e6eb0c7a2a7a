/** What verdicts, states and sources mean, in words that stand beside their marks. */
import type { BatchFile, BatchVerdict, HoldState, JointState, PieceVerdict, Severity } from "../../evidence/types.ts";
import type { Source } from "../../evidence/types/source.ts";
import type { FailureMode, HoldKind, JointSpec, Stage } from "../../facts/types.ts";
import { counted, listed } from "../../words/lists.ts";
import type { Marked } from "./marked.ts";

/** Those that are asked for: a batch in no joint, or thrown away, stands in no count. */
export const BATCH_VERDICTS: readonly BatchVerdict[] = ["rejected", "not shown", "pending", "shown"];
export const JOINT_STATES: readonly JointState[] = [
  "quarantined",
  "opened",
  "not shown",
  "pending",
  "shown",
  "not glued",
];
export const PIECE_VERDICTS: readonly PieceVerdict[] = ["pass", "fail", "inconclusive", "too early", "not broken"];

export const BATCH_MEANS: { readonly [verdict in BatchVerdict]: string } = {
  shown:
    "Every limit that decides was held by what the record has, and enough test pieces passed; what was only assumed is a caution.",
  pending: "No limit was broken; the verdict waits for what is still to come.",
  "not shown": "The record cannot show that this batch is good, and waiting will not help.",
  rejected: "The record shows that a limit was broken, or the builder rejected it.",
  "in no joint": "It went into no joint, so that nothing is asked of it and it stands in no count.",
  "thrown away": "The whole cup was thrown away, so that nothing is asked of it and it stands in no count.",
};

/** A batch's verdict is not changed by the recall of a lot in it, but must never be seen without it. */
export function batchMark(file: BatchFile | undefined): { readonly mark: Marked; readonly word: string } {
  const { verdict, recalls }: Pick<BatchFile, "verdict" | "recalls"> = file ?? { verdict: "not shown", recalls: [] };
  return recalls.length === 0 ? { mark: verdict, word: verdict } : { mark: "recall", word: `${verdict}, lot recalled` };
}

export const JOINT_MEANS: { readonly [state in JointState]: string } = {
  "not glued": "No batch has gone into this joint.",
  shown: "Every batch in this joint is shown, and had cured as its data sheet asks.",
  pending: "Glued; the verdict waits for what is still to come.",
  "not shown": "The record cannot show that this joint is good.",
  quarantined: "Holds a rejected batch or a recalled lot. It is not to be closed in.",
  opened: "The glue was taken out and the joint has not been glued again.",
};

export const HOLD_MEANS: { readonly [state in HoldState]: string } = {
  passed: "Looked at and signed by someone who may sign it, with nothing open that this record looks at.",
  "signed with things open": "Signed, but something was open when it was signed or is open now. It is not passed.",
  reopened: "Signed, but what was looked at has changed since. It is to be looked at again.",
  ready: "Nothing is open that this record looks at; ready to be looked at.",
  blocked: "Something is wrong that must be put right first.",
  ahead: "Nothing is known to be wrong; work is still to be done.",
};

/** What no state of a hold point says anything of. */
export const NOT_LOOKED_AT =
  "Nothing here looks at parts that are bolted or screwed, at controls, fuel, engine and wiring, at cloth and varnish of which no coat is planned or noted, at weighing, at work that has " +
  "no joint, open item, departure or measurement in the record, or at papers themselves. Those are the inspector's to look at.";

export const PIECE_MEANS: { readonly [verdict in PieceVerdict]: string } = {
  pass: "The wood failed, and a weak glue line would have shown.",
  fail: "It broke in the glue line, or with less wood failure than the procedure asks.",
  inconclusive: "It broke in a way that a weak glue line need not have shown in.",
  "too early": "Broken before its least cure: it proves nothing either way.",
  "not broken": "Not broken yet.",
};

export const FAILURE_WORDS: { readonly [mode in FailureMode]: string } = {
  wood: "in the wood",
  "glue line": "in the glue line",
  mixed: "partly in the wood, partly in the glue line",
  crushed: "by a leg that was crushed",
  "face ply": "in the face veneer of the plywood",
  "not opened": "and was not opened",
};

export const HOLD_KIND: { readonly [kind in HoldKind]: string } = {
  "next skin": "before the next skin",
  "close-up": "before close-up",
  covering: "before covering",
  "first load": "before the first load",
  flight: "before flight",
  "return to service": "before return to service",
};

/** How a source was known to whoever wrote the rule: never more than is so. */
export const KNOWN: { readonly [known in Source["known"]]: string } = {
  seen: "read in the document",
  "second-hand": "second-hand: quoted by others, not read itself",
  memory: "from memory, not read again",
  "common practice": "common practice, no document behind it",
  record: "from this record",
};

const WEIGHT: { readonly [severity in Severity]: number } = { rejects: 0, unproven: 1, waits: 2, caution: 3, meets: 4 };

interface Weighed {
  readonly severity: Severity;
}

/** The gravest first; equals in the order they came in. */
export function gravestFirst<T extends Weighed>(findings: readonly T[]): T[] {
  return [...findings].sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity]);
}

/** The findings that made a verdict what it is: the gravest of them, or none where all limits held. */
export function deciding<T extends Weighed>(findings: readonly T[]): T[] {
  const sorted = gravestFirst(findings).filter(({ severity }) => severity !== "meets" && severity !== "caution");
  return sorted.filter(({ severity }) => severity === sorted[0]?.severity);
}

/**
 * After a joint's title: where the builder says that its failure would not endanger the aircraft, and in how many
 * stages it is to be glued.
 */
export const jointWords = ({ structure, stages }: JointSpec): string =>
  `${structure === "secondary" ? ", secondary structure" : ""}${stages === undefined ? "" : `, to be glued in ${counted(stages, "stage")}`}`;

/** `stage 2 of 3`. */
export const stageWords = ({ stage, of }: Pick<Stage, "stage" | "of">): string =>
  `stage ${stage}${of === undefined ? "" : ` of ${of}`}`;

/** `, stages 1 and 2 of it`: of a rework that opened no more. */
export const stagesOpened = (stages: readonly number[]): string =>
  `, ${stages.length === 1 ? "stage" : "stages"} ${listed(stages.map(String))} of it`;
