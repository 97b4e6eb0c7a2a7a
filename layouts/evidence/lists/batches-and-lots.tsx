/** Batches with what decided their verdicts, and lots with how far each went. */
import type { JSX } from "preact";
import type { BatchRow, Overview as OverviewFacts } from "../../../src/pages/evidence/overview.ts";
import { batchMark } from "../../../src/pages/evidence/verdict-words.ts";
import { counted } from "../../../src/words/lists.ts";
import { signedPercent } from "../../../src/words/numbers.ts";
import { BatchMark } from "../../parts/mark.tsx";
import { DayCell, groupOf, Id, ListTable, None, VerdictCell, type Where } from "../parts.tsx";

export function BatchTable({ rows, site, from }: Where & { readonly rows: readonly BatchRow[] }): JSX.Element {
  const groups = rows.map(({ file }) => file.verdict);
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <ListTable
      list="batches"
      caption="Batches, the worst first, and of those that stand alike the newest"
      heads={["Batch", "Day", "Verdict", "Because", number("Off ratio"), number("Pieces passed"), "Joints"]}
    >
      {rows.map(({ file, passed, counting, reasons }, at) => (
        <tr {...groupOf("batches", groups, at)}>
          <td>
            <Id site={site} from={from} kind="batch" id={file.batch.id} />
          </td>
          <DayCell day={file.batch.day} />
          <VerdictCell of={batchMark(file).mark}>
            <BatchMark file={file} />
          </VerdictCell>
          <td class="because">
            {reasons[0] ?? ""}
            {reasons.length > 1 ? ` And ${counted(reasons.length - 1, "more reason")}.` : ""}
          </td>
          <td class="number" data-sort={file.ratio?.error}>
            {file.ratio === undefined ? "" : signedPercent(file.ratio.error)}
          </td>
          <td class="number" data-sort={passed}>
            {counting === 0 ? "none made" : `${passed} of ${counting}`}
          </td>
          <td>
            {file.batch.joints.map((id, at) => (
              <>
                {at > 0 ? ", " : ""}
                <Id site={site} from={from} kind="joint" id={id} />
              </>
            ))}
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

export function LotTable({
  facts,
  site,
  from,
  list = "lots",
}: Where & { readonly facts: OverviewFacts; readonly list?: "lots" | "none" }): JSX.Element {
  if (facts.lots.length === 0) return <None>No lots.</None>;
  return (
    <ListTable
      list={list === "none" ? undefined : list}
      caption="Lots, and how far each went"
      heads={[
        "Lot",
        "What",
        "Received",
        { word: "Batches", number: true },
        { word: "Joints now", number: true },
        "Notice",
      ]}
    >
      {facts.lots.map(({ lot, batches, joints, recalls }) => (
        <tr>
          <td>
            <Id site={site} from={from} kind="lot" id={lot.id} />
          </td>
          <td>{lot.title}</td>
          <DayCell day={lot.received} />
          <td class="number">{batches.length}</td>
          <td class="number">{joints.length}</td>
          <td>{recalls.length === 0 ? "" : <strong class="attention">recalled</strong>}</td>
        </tr>
      ))}
    </ListTable>
  );
}
