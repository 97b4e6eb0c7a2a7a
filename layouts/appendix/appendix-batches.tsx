import type { JSX } from "preact";
import { dateShort, dateWords } from "../../src/words/dates.ts";
import { span } from "../../src/words/durations.ts";
import { listed } from "../../src/words/lists.ts";
import { grouped, percent } from "../../src/words/numbers.ts";
import { inUnits, quantityWords } from "../../src/words/quantities.ts";
import { anchor } from "../../src/pages/address.ts";
import type { BatchFile, PieceFile } from "../../src/evidence/types.ts";
import { batchPage } from "../../src/pages/evidence/batch-page.ts";
import { brokeWords } from "../../src/pages/evidence/piece-facts.ts";
import { toldFinding } from "../../src/words/findings/told.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { traceIndex } from "../../src/pages/evidence/trace-index.ts";
import { gravestFirst } from "../../src/pages/evidence/verdict-words.ts";
import { SEVERITY, SourceWords } from "../parts/findings.tsx";
import { RatioFigure } from "../evidence/ratio-figure.tsx";
import { Mark } from "../parts/mark.tsx";
import { Inside } from "./appendix-joints.tsx";
import { BatchVerdictBox, ComponentTable } from "../evidence/batch.tsx";
import { Facts, ListTable, None, type Where } from "../evidence/parts.tsx";
import { whyPiece } from "../evidence/piece.tsx";

/** Every batch in the order it was mixed in: all that is known of it, and every check with its source. */
export function AppendixBatches({ site, from, number }: Where & { readonly number: number }): JSX.Element {
  const files = traceIndex(site.shown).batches.flatMap(({ id }) => site.shown.evidence.batches.get(id) ?? []);
  if (files.length === 0) return <None>No batches.</None>;
  return (
    <>
      {files.map((file, at) => (
        <AppendixBatch file={file} number={`${number}.${at + 1}`} site={site} from={from} />
      ))}
    </>
  );
}

function AppendixBatch({
  file,
  number,
  site,
  from,
}: Where & { readonly file: BatchFile; readonly number: string }): JSX.Element {
  const { batch } = file;
  const page = batchPage(site.shown, file);
  return (
    <section class="appendix__batch" id={anchor("batch", batch.id)} aria-label={`Batch ${batch.id}`}>
      <h3>
        {number} Batch {batch.id}, {dateWords(batch.day)}
      </h3>
      <p>
        {page.adhesive?.title ?? batch.adhesive}.{" "}
        {batch.joints.length === 0 ? (
          batch.discarded === undefined ? (
            "It went into no joint."
          ) : (
            "It was thrown away."
          )
        ) : (
          <>
            Joints: <Inside kind="joint" ids={batch.joints} />.
          </>
        )}
        {page.people.length === 0 ? "" : ` At work that day: ${listed(page.people)}.`}
      </p>
      <BatchVerdictBox file={file} site={site} from={from} />
      <div class="pair">
        <ComponentTable page={page} site={site} from={from} />
        <RatioFigure file={file} page={page} />
      </div>
      <Facts rows={[...page.mix, ...page.climate, ...page.times]} />
      <PieceRows shown={site.shown} pieces={file.pieces} batch={batch.id} />
      <FindingTable site={site} findings={file.findings} caption={`Checks of batch ${batch.id}`} />
    </section>
  );
}

function PieceRows({
  shown,
  pieces,
  batch,
}: {
  readonly shown: Shown;
  readonly pieces: readonly PieceFile[];
  readonly batch: string;
}): JSX.Element {
  if (pieces.length === 0) return <None>No test pieces.</None>;
  return (
    <ListTable
      caption={`Test pieces of batch ${batch}`}
      heads={[
        "Piece",
        "Overlap / thickness",
        "Could have let pass",
        "Broken",
        "Cured",
        "Failed",
        "Load, stress",
        "Verdict",
        "Why",
      ]}
    >
      {pieces.map((file) => (
        <PieceRow shown={shown} file={file} />
      ))}
    </ListTable>
  );
}

function PieceRow({ shown, file }: { readonly shown: Shown; readonly file: PieceFile }): JSX.Element {
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
      <td>{[whyPiece(shown, file), ...amendedOf(shown, file)].join(" ")}</td>
    </tr>
  );
}

/** What was amended of a piece or stands though it was. */
const amendedOf = (shown: Shown, { findings }: PieceFile): string[] =>
  findings.filter(({ rule }) => rule === "amended" || rule === "seconded").map(shown.say);

function FindingTable({
  site,
  findings,
  caption,
}: Pick<Where, "site"> & { readonly findings: BatchFile["findings"]; readonly caption: string }): JSX.Element {
  return (
    <ListTable caption={caption} heads={["Check", "What was found", "Limit and its source"]}>
      {gravestFirst(findings.map((one) => toldFinding(site.shown.say, one))).map(({ severity, sentence, limit }) => (
        <tr>
          <td>
            <Mark of={severity} word={SEVERITY[severity]} />
          </td>
          <td>{sentence}</td>
          <td>
            {limit === undefined ? (
              ""
            ) : (
              <>
                {limit.text}. <SourceWords source={limit.from} />
              </>
            )}
          </td>
        </tr>
      ))}
    </ListTable>
  );
}
