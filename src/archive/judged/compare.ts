/** Verdicts as an archive published them, held against those that the same record is given now. */
import type { Row } from "../../pages/ledgers/column.ts";
import { EARLIER_WORDS } from "../../evidence/version.ts";

/** Ledgers that have a verdict: which columns name the thing, and which holds what was judged of it. */
const JUDGED = [
  { ledger: "batches", thing: "batch", by: ["batch"], verdict: "verdict" },
  { ledger: "pieces", thing: "piece", by: ["piece"], verdict: "verdict" },
  { ledger: "joints", thing: "joint", by: ["joint"], verdict: "state" },
  { ledger: "hold-points", thing: "hold point", by: ["hold_point"], verdict: "state" },
  { ledger: "coats", thing: "coat", by: ["assembly", "where", "coat", "entry"], verdict: "verdict" },
  { ledger: "measurements", thing: "measurement", by: ["what", "side", "entry"], verdict: "verdict" },
] as const;

/** Names of all ledgers that judging anew reads. */
export const LEDGERS_JUDGED: readonly string[] = [...JUDGED.map(({ ledger }) => ledger), "findings"];

/** Rows of ledgers by the name of each; one without rows is not among them. */
export type Ledgers = ReadonlyMap<string, readonly Row[]>;

export interface Judgement {
  readonly verdict: string;
  /** Sentences, the gravest first; none where nothing told against it. */
  readonly reasons: readonly string[];
}

/** One thing that is judged otherwise now; either is missing where the thing is not in that one. */
export interface Difference {
  readonly thing: string;
  readonly id: string;
  readonly published?: Judgement;
  readonly present?: Judgement;
}

export interface Compared {
  /** How many things were judged, then or now. */
  readonly judged: number;
  readonly differences: readonly Difference[];
  /** Things of which only the word for their verdict is another now, by both words. */
  readonly renamed: readonly { readonly word: string; readonly now: string; readonly count: number }[];
}

/** @param rules version of those that the published verdicts were reached by */
export function compared(published: Ledgers, present: Ledgers, rules: number): Compared {
  const differences: Difference[] = [];
  const renamed = new Map<string, { word: string; now: string; count: number }>();
  let judged = 0;
  for (const { ledger, thing, by, verdict } of JUDGED) {
    const [then, now] = [published, present].map((from) => judgements(from, ledger, by, verdict));
    for (const id of new Set([...(then?.keys() ?? []), ...(now?.keys() ?? [])])) {
      judged += 1;
      const [was, is] = [then?.get(id), now?.get(id)];
      if (was?.verdict === is?.verdict) continue;
      const word = was && EARLIER_WORDS.find(({ until, word: each }) => rules <= until && each === was.verdict);
      if (word !== undefined && word.now === is?.verdict) {
        const known = renamed.get(word.word) ?? { word: word.word, now: word.now, count: 0 };
        renamed.set(word.word, { ...known, count: known.count + 1 });
      } else differences.push({ thing, id, ...(was && { published: was }), ...(is && { present: is }) });
    }
  }
  return { judged, differences, renamed: [...renamed.values()] };
}

/** By id; of several that are called alike the first is `id`, the others `id (2)` and so on. */
function judgements(
  ledgers: Ledgers,
  ledger: string,
  by: readonly string[],
  verdict: string,
): ReadonlyMap<string, Judgement> {
  const all = new Map<string, Judgement>();
  const reasons = reasonsIn(ledgers.get("findings") ?? []);
  for (const row of ledgers.get(ledger) ?? []) {
    const name = by.flatMap((column) => (row[column] === null ? [] : String(row[column] ?? ""))).join(", ");
    let id = name;
    for (let nth = 2; all.has(id); nth += 1) id = `${name} (${nth})`;
    all.set(id, { verdict: String(row[verdict] ?? ""), reasons: reasons.get(name) ?? ownReasons(row) });
  }
  return all;
}

const GRAVE = ["rejects", "unproven", "waits"];

/** By the id of what they are about, those of the gravest severity that decides. */
function reasonsIn(findings: readonly Row[]): ReadonlyMap<string, readonly string[]> {
  const all = new Map<string, string[][]>();
  for (const { about, severity, sentence } of findings) {
    const weight = GRAVE.indexOf(String(severity));
    if (weight < 0) continue;
    const known = all.get(String(about)) ?? GRAVE.map(() => []);
    known[weight]?.push(String(sentence));
    all.set(String(about), known);
  }
  return new Map([...all].map(([id, sorted]) => [id, sorted.find((each) => each.length > 0) ?? []]));
}

/** Hold points have their reasons in their own row. */
function ownReasons(row: Row): string[] {
  return ["blocked_by", "changed_since", "to_do"]
    .map((column) => row[column])
    .filter((text): text is string => typeof text === "string" && text !== "");
}
