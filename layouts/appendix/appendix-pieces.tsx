import type { JSX } from "preact";
import { dateShort } from "../../src/words/dates.ts";
import { span } from "../../src/words/durations.ts";
import { grouped, percent } from "../../src/words/numbers.ts";
import { inUnits, quantityWords } from "../../src/words/quantities.ts";
import { anchor } from "../../src/pages/address.ts";
import type { PieceFile } from "../../src/evidence/types.ts";
import { brokeWords } from "../../src/pages/evidence/piece-facts.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { ListTable, None } from "../evidence/parts.tsx";
import { whyPiece } from "../evidence/piece.tsx";
import { Mark } from "../parts/mark.tsx";

export function PieceRows({
  shown,
  pieces,
  batch,
}: {
  readonly shown: Shown;
  readonly pieces: readonly PieceFile[];
  readonly batch: string;
}): JSX.Element {
  if (pieces.length === 0) return <None>No test pieces.</None>;
  const isWhyTold = pieces.some((file) => pieceWords(shown, file) !== "");
  return (
    <ListTable
      caption={`Test pieces of batch ${batch}`}
      captioned={false}
      heads={[
        "Piece",
        "Overlap / thickness",
        "Could have let pass",
        "Broken",
        "Cured",
        "Failed",
        "Load, stress",
        "Verdict",
        ...(isWhyTold ? ["Why"] : []),
      ]}
    >
      {pieces.map((file) => (
        <PieceRow shown={shown} file={file} isWhyTold={isWhyTold} />
      ))}
    </ListTable>
  );
}

interface RowProps {
  readonly shown: Shown;
  readonly file: PieceFile;
  /** Whether anything has to be said of one of them. */
  readonly isWhyTold: boolean;
}

function PieceRow({ shown, file, isWhyTold }: RowProps): JSX.Element {
  const { units } = shown.record.aircraft;
  const { piece, test, overlapRatio, atMost: revealing, curedFor, stress } = file;
  return (
    <tr id={anchor("piece", piece.id)}>
      <th scope="row" class="id">
        {piece.id}
        {piece.trial === undefined ? "" : " (trial)"}
      </th>
      <td>{overlapRatio === undefined ? "not known" : grouped(overlapRatio, 2)}</td>
      <td>{revealing === undefined ? "not known" : percent(revealing)}</td>
      <td>{test === undefined ? "" : dateShort(test.day)}</td>
      <td>
        {[curedFor === undefined ? "" : span(curedFor), piece.glued === undefined ? "" : `glued ${piece.glued.typed}`]
          .filter((text) => text !== "")
          .join("; ")}
      </td>
      <td>{brokeWords(file)}</td>
      <td>
        {[
          test?.load === undefined ? "" : quantityWords(test.load, units),
          stress === undefined ? "" : inUnits(stress, "Pa", units),
        ]
          .filter((text) => text !== "")
          .join("; ")}
      </td>
      <td>
        <Mark of={file.verdict} />
      </td>
      {isWhyTold ? <td>{pieceWords(shown, file)}</td> : null}
    </tr>
  );
}

/** Why it did not pass, and what else has to be looked at; nothing of one that simply passed. */
export const pieceWords = (shown: Shown, file: PieceFile): string =>
  [...(file.verdict === "pass" ? [] : [whyPiece(shown, file)]), ...lookedAt(shown, file)].join(" ");

/** What else is not simply met: cautions, amendments. The reason of its verdict stands before. */
const lookedAt = (shown: Shown, file: PieceFile): string[] => {
  const why = whyPiece(shown, file);
  return file.findings
    .filter(({ severity, rule }) => severity !== "meets" || rule === "amended" || rule === "seconded")
    .map(shown.say)
    .filter((sentence) => file.verdict === "pass" || sentence !== why);
};
