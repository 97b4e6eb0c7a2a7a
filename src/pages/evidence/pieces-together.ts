/** Pieces of one kind told together: what they share once, what differs piece by piece. */
import type { PieceFile } from "../../evidence/types.ts";
import { toldFinding, type ToldFinding } from "../../words/findings/told.ts";
import type { Ref } from "../../facts/types.ts";
import type { FactRow } from "./batch-page.ts";
import { pieceFacts } from "./piece-facts.ts";
import type { Shown } from "../../editions/shown.ts";

export interface PiecesTogether {
  /** Facts that are the same of every piece. */
  readonly shared: readonly FactRow[];
  /** Words of the facts that differ, in the order of a piece's own facts. */
  readonly differing: readonly string[];
  readonly rows: readonly { readonly file: PieceFile; readonly notedOf: ReadonlyMap<string, string> }[];
  /** Each check once, with the pieces it is said of where that is not all of them. */
  readonly findings: readonly ToldFinding[];
}

const whole = ({ noted, limit }: FactRow): string => (limit === undefined ? noted : `${noted}, limit ${limit}`);

export function piecesTogether(shown: Shown, pieces: readonly PieceFile[]): PiecesTogether {
  const all = pieces.map((file) => ({ file, facts: pieceFacts(shown, file) }));
  const first = all[0]?.facts ?? [];
  const shared = first.filter((fact) =>
    all.every(({ facts }) => facts.some((other) => other.word === fact.word && whole(other) === whole(fact))),
  );
  const same = new Set(shared.map(({ word }) => word));
  return {
    shared,
    differing: [...new Set(all.flatMap(({ facts }) => facts.map(({ word }) => word)))].filter(
      (word) => !same.has(word),
    ),
    rows: all.map(({ file, facts }) => ({ file, notedOf: new Map(facts.map((fact) => [fact.word, whole(fact)])) })),
    findings: findingsTogether(shown, pieces),
  };
}

function findingsTogether({ say }: Shown, pieces: readonly PieceFile[]): ToldFinding[] {
  const groups = new Map<
    string,
    { readonly finding: ToldFinding; readonly ids: string[]; readonly restsOn: Map<string, Ref> }
  >();
  for (const { piece, findings } of pieces) {
    for (const finding of findings.map((one) => toldFinding(say, one))) {
      const key = JSON.stringify([finding.rule, finding.severity, finding.sentence, finding.limit]);
      const group = groups.get(key) ?? { finding, ids: [] as string[], restsOn: new Map<string, Ref>() };
      groups.set(key, group);
      group.ids.push(piece.id);
      for (const ref of finding.restsOn) group.restsOn.set(`${ref.kind} ${ref.id}`, ref);
    }
  }
  return [...groups.values()].map(({ finding, ids, restsOn }) => ({
    ...finding,
    sentence: ids.length === pieces.length ? finding.sentence : `${ids.join(", ")}: ${finding.sentence}`,
    restsOn: [...restsOn.values()],
  }));
}
