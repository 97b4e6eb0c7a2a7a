import type { JSX } from "preact";
import { dateShort, dateWords } from "../../src/words/dates.ts";
import { ended, listed } from "../../src/words/lists.ts";
import { signedPercent } from "../../src/words/numbers.ts";
import { anchor } from "../../src/pages/address.ts";
import { apart } from "../../src/pages/appendix/sheets.ts";
import type { BatchFile } from "../../src/evidence/types.ts";
import { type BatchPage, batchPage } from "../../src/pages/evidence/batch-page.ts";
import { byDefault } from "../../src/pages/evidence/by-default.ts";
import { RatioFigure } from "../evidence/ratio-figure.tsx";
import { ListTable, None, type Where } from "../evidence/parts.tsx";
import { BatchMark } from "../parts/mark.tsx";
import { NotedLine, NotMetLines } from "./appendix-batch-parts.tsx";
import { UsuallyHeld, usuallyHeld } from "./held.tsx";
import { Inside } from "./inside.tsx";
import { PieceRows } from "./appendix-pieces.tsx";

interface BatchesProps extends Where {
  readonly batches: readonly BatchFile[];
}

/** Those that are not shown, in full: what decided, what was noted, how the pieces broke, and each check that was not met. */
export function Exceptions({ batches, ...where }: BatchesProps): JSX.Element {
  const { exceptions } = apart(batches);
  if (exceptions.length === 0) return <None>None: every batch that is in a joint is shown.</None>;
  return <AllInFull files={exceptions} {...where} />;
}

/** Verdict, adhesive, joints and people, in a line. */
function WhereTo({
  file,
  page,
  ...where
}: Where & { readonly file: BatchFile; readonly page: BatchPage }): JSX.Element {
  const { batch } = file;
  return (
    <p class="appendix__opens">
      <BatchMark file={file} />
      {batch.discarded === undefined ? ". " : `: ${ended(batch.discarded)} `}
      {page.adhesive?.title ?? batch.adhesive}
      {byDefault(where.site.shown, batch, "adhesive")}.{" "}
      {batch.joints.length > 0 ? (
        <>
          Joints: <Inside kind="joint" ids={batch.joints} {...where} />.
        </>
      ) : batch.discarded === undefined ? (
        "It went into no joint."
      ) : (
        "It was thrown away."
      )}
      {page.people.length === 0 ? "" : ` At work that day: ${listed(page.people)}.`}
    </p>
  );
}

/** The others, a row each: what was held, and what to look at all the same. */
export function ShownRows({ batches, site, from }: BatchesProps): JSX.Element {
  const { rest } = apart(batches);
  if (rest.length === 0) return <None>None.</None>;
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <ListTable
      caption="Batches that are shown, and those that are in no joint, in the order they were mixed in"
      heads={["Batch", "Day", "Verdict", "Adhesive", number("Off ratio"), number("Pieces passed"), "Joints"]}
    >
      {rest.map((file) => (
        <ShownRow file={file} site={site} from={from} />
      ))}
    </ListTable>
  );
}

function ShownRow({ file, site, from }: Where & { readonly file: BatchFile }): JSX.Element {
  const { batch, ratio } = file;
  const counting = file.pieces.filter(({ piece }) => piece.trial === undefined);
  const passed = counting.filter(({ verdict }) => verdict === "pass").length;
  return (
    <tr>
      <th scope="row">
        <Inside kind="batch" ids={[batch.id]} site={site} from={from} />
      </th>
      <td class="day">{dateShort(batch.day)}</td>
      <td>
        <BatchMark file={file} />
      </td>
      <td>{site.shown.record.adhesives.get(batch.adhesive)?.title ?? batch.adhesive}</td>
      <td class="number">{ratio === undefined ? "" : signedPercent(ratio.error)}</td>
      <td class="number">{counting.length === 0 ? "none made" : `${passed} of ${counting.length}`}</td>
      <td>
        <Inside kind="joint" ids={batch.joints} site={site} from={from} />
      </td>
    </tr>
  );
}

/** What stands behind those rows: what was noted, how each piece broke, what to look at, and all that was held. */
export function Behind({ batches, ...where }: BatchesProps): JSX.Element {
  const { rest } = apart(batches);
  if (rest.length === 0) return <None>None.</None>;
  return <AllInFull files={rest} {...where} />;
}

/** Of those rows what has to be looked at all the same, with the pieces of which that is said. */
export function LookAgain({ batches, ...where }: BatchesProps): JSX.Element {
  const isOpen = ({ findings }: Pick<BatchFile, "findings">): boolean =>
    findings.some(({ severity }) => severity !== "meets");
  const files = apart(batches).rest.filter((file) => isOpen(file) || file.pieces.some(isOpen));
  if (files.length === 0) return <None>Nothing.</None>;
  return (
    <>
      {files.map(({ batch, findings, pieces }) => (
        <section class="appendix__batch" id={anchor("batch", batch.id)} aria-label={`Batch ${batch.id}`}>
          <h3 class="appendix__untold">
            Batch {batch.id}, {dateWords(batch.day)}
          </h3>
          {pieces.some(isOpen) ? (
            <PieceRows shown={where.site.shown} pieces={pieces.filter(isOpen)} batch={batch.id} />
          ) : null}
          <NotMetLines site={where.site} findings={findings} />
        </section>
      ))}
    </>
  );
}

function AllInFull({ files, ...where }: Where & { readonly files: readonly BatchFile[] }): JSX.Element {
  const usual = usuallyHeld(where.site.shown.say, files);
  return (
    <>
      <UsuallyHeld titles={usual} />
      {files.map((file) => (
        <InFull file={file} usual={usual} {...where} />
      ))}
    </>
  );
}

/** One batch: what it is, what was noted of it, how its pieces broke, and each check that was not met. */
function InFull({
  file,
  usual,
  site,
  from,
}: Where & { readonly file: BatchFile; readonly usual: readonly string[] }): JSX.Element {
  const page = batchPage(site.shown, file);
  const { batch, findings, pieces } = file;
  return (
    <section class="appendix__batch" id={anchor("batch", batch.id)} aria-label={`Batch ${batch.id}`}>
      <h3 class="appendix__untold">
        Batch {batch.id}, {dateWords(batch.day)}
      </h3>
      <WhereTo file={file} page={page} site={site} from={from} />
      <NotedLine page={page} site={site} findings={findings} usual={usual} />
      {findings.some(({ rule, severity }) => rule === "mix-ratio" && severity !== "meets") ? (
        <RatioFigure file={file} page={page} />
      ) : null}
      <PieceRows shown={site.shown} pieces={pieces} batch={batch.id} />
      <NotMetLines site={site} findings={findings} />
    </section>
  );
}
