/** Evidence with its sentences beside the codes, so that tests can hold the exact words. */
import { reckon as reckonCodes } from "../../src/evidence/evidence.ts";
import type { Say } from "../../src/evidence/saying.ts";
import type {
  BatchFile,
  Change,
  Evidence,
  Finding,
  HoldPointFile,
  JointFile,
  Need,
  PieceFile,
} from "../../src/evidence/types.ts";
import type { Record } from "../../src/facts/types.ts";
import { sayIn } from "../../src/words/findings/catalogue.ts";
import { ENGLISH } from "../../src/words/findings/english.ts";
import { toldFinding, toldNeed, type ToldFinding } from "../../src/words/findings/told.ts";

type Words = { readonly sentence: string };
export type SaidFinding = Finding & Words & { readonly limit?: ToldFinding["limit"] };
type Saying<F> = Omit<F, "findings"> & { readonly findings: readonly SaidFinding[] };
export type SaidHoldPoint = Omit<HoldPointFile, "needs" | "changes"> & {
  readonly needs: readonly (Need & Words & { readonly needs: string })[];
  readonly changes: readonly (Change & Words)[];
};
export type SaidBatch = Omit<Saying<BatchFile>, "pieces"> & { readonly pieces: readonly Saying<PieceFile>[] };

export type SaidPiece = Saying<PieceFile>;
export type SaidNeed = SaidHoldPoint["needs"][number];

export interface SaidEvidence extends Evidence {
  readonly pieces: ReadonlyMap<string, Saying<PieceFile>>;
  readonly batches: ReadonlyMap<string, SaidBatch>;
  readonly joints: ReadonlyMap<string, Saying<JointFile>>;
  readonly holdPoints: ReadonlyMap<string, SaidHoldPoint>;
  readonly findings: readonly SaidFinding[];
}

export const english = (record?: Record): Say => sayIn(ENGLISH, record?.aircraft.units ?? "metric");

/** The same with its codes where no comparison looks: tests compare the words. */
function aside<T extends object>(said: T): T {
  for (const key of ["code", "values", "takes"])
    if (key in said) Object.defineProperty(said, key, { enumerable: false });
  if ("from" in said && said.from instanceof Object) aside(said.from);
  return said;
}

export function saidFinding(say: Say, finding: Finding): SaidFinding {
  const { sentence, limit } = toldFinding(say, finding);
  const words = limit && { ...finding.limit, ...limit, from: { ...finding.limit?.from, ...limit.from } };
  return aside({ ...finding, sentence, ...(words && { limit: aside(words) }) }) as SaidFinding;
}

export function reckon(record: Record): SaidEvidence {
  const say = english(record);
  const evidence = reckonCodes(record);
  const saying = <F extends { readonly findings: readonly Finding[] }>(file: F): Saying<F> => ({
    ...file,
    findings: file.findings.map((one) => saidFinding(say, one)),
  });
  const mapped = <T, U>(map: ReadonlyMap<string, T>, make: (file: T) => U): Map<string, U> =>
    new Map([...map].map(([id, file]) => [id, make(file)]));
  return {
    ...evidence,
    pieces: mapped(evidence.pieces, saying),
    batches: mapped(evidence.batches, (file) => ({ ...saying(file), pieces: file.pieces.map(saying) })),
    joints: mapped(evidence.joints, saying),
    holdPoints: mapped(evidence.holdPoints, (file) => ({
      ...file,
      needs: file.needs.map((need) => aside({ ...need, ...toldNeed(say, need) })),
      changes: file.changes.map((change) => aside({ ...change, sentence: say(change) })),
    })),
    findings: evidence.findings.map((one) => saidFinding(say, one)),
  };
}
