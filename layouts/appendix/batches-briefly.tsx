/** Batches of a hold point that has too many of them to tell each in full: a row each, and where that stands. */
import type { JSX } from "preact";
import type { BatchFile } from "../../src/evidence/types.ts";
import { papersOf } from "../../src/pages/appendix/papers.ts";
import { apart, placeOf } from "../../src/pages/appendix/sheets.ts";
import { gravestFirst } from "../../src/pages/evidence/verdict-words.ts";
import { indexBy } from "../../src/evidence/record-index.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { dateShort } from "../../src/words/dates.ts";
import { ListTable, None, type Where } from "../evidence/parts.tsx";
import { SEVERITY } from "../parts/findings.tsx";
import { BatchMark, Mark } from "../parts/mark.tsx";
import { pieceWords } from "./appendix-pieces.tsx";

/** Of batches told in full: some seven pages, which whoever signs still reads. */
export const MOST_IN_FULL = 40;

interface BrieflyProps extends Pick<Where, "site"> {
  readonly batches: readonly BatchFile[];
}

/** Those that are shown by where they stand in full, in the order they were mixed in. */
export function ShownBriefly({ batches, site }: BrieflyProps): JSX.Element {
  const { rest } = apart(batches);
  if (rest.length === 0) return <None>None.</None>;
  return (
    <ListTable
      caption="Batches that are shown, and those that are in no joint, with their joints"
      heads={["In full in", "Batches"]}
    >
      {[...indexBy(rest, ({ batch }) => paperOf(site.shown, batch.id))].map(([paper, files]) => (
        <tr>
          <td>{paper}</td>
          <td>
            {files.map(({ batch, verdict }) => (
              <>
                {batch.id}
                {verdict === "shown" ? "" : ` ${verdict}`} ({jointsOf(batch, "in no joint")}){" "}
              </>
            ))}
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

/** What has to be looked at in them all the same: each sentence once, with all of which it is said. */
export function LookAgainBriefly({ batches, site: { shown } }: BrieflyProps): JSX.Element {
  const said = apart(batches).rest.flatMap(({ batch, findings, pieces }) =>
    [{ id: batch.id, findings }, ...pieces.map((file) => ({ id: file.piece.id, findings: file.findings }))].flatMap(
      ({ id, findings: all }) =>
        all
          .filter(({ severity }) => severity !== "meets")
          .map((finding) => ({ id, severity: finding.severity, sentence: shown.say(finding) })),
    ),
  );
  if (said.length === 0) return <None>Nothing.</None>;
  const alike = [...indexBy(said, ({ severity, sentence }) => `${severity} ${sentence}`).values()];
  return (
    <ListTable
      caption="What to look at in batches that are shown, and of which of them and of their pieces it is said"
      heads={["What to look at", "Said of"]}
    >
      {gravestFirst(alike.flatMap(([first, ...more]) => (first === undefined ? [] : [{ ...first, more }]))).map(
        ({ id, severity, sentence, more }) => (
          <tr>
            <td>
              <Mark of={severity} word={SEVERITY[severity]} /> {sentence}
            </td>
            <td>{[id, ...more.map((one) => one.id)].join(", ")}</td>
          </tr>
        ),
      )}
    </ListTable>
  );
}

/** Those that are not shown, with every check that was not met. */
export function ExceptionsBriefly({ batches, site }: BrieflyProps): JSX.Element {
  const { shown } = site;
  return (
    <ListTable
      caption="Batches that are not shown, in the order they were mixed in, with every check that was not met"
      heads={["Batch", "Day", "Verdict", "Joints", "What was not met, and what to look at", "In full in"]}
    >
      {apart(batches).exceptions.map((file) => {
        const { batch } = file;
        return (
          <tr>
            <th scope="row" class="id">
              {batch.id}
            </th>
            <td class="day">{dateShort(batch.day)}</td>
            <td>
              <BatchMark file={file} />
            </td>
            <td>{jointsOf(batch)}</td>
            <td>
              <NotMet shown={shown} file={file} />
            </td>
            <td>{paperOf(shown, batch.id)}</td>
          </tr>
        );
      })}
    </ListTable>
  );
}

/** Each with its verdict, those of its pieces after its own. */
function NotMet({
  shown,
  file: { findings, pieces },
}: {
  readonly shown: Shown;
  readonly file: BatchFile;
}): JSX.Element {
  return (
    <>
      {gravestFirst(findings)
        .filter(({ severity }) => severity !== "meets")
        .map((finding) => (
          <>
            <Mark of={finding.severity} word={SEVERITY[finding.severity]} /> {shown.say(finding)}{" "}
          </>
        ))}
      {pieces
        .map((piece) => ({ piece, words: pieceWords(shown, piece) }))
        .filter(({ words }) => words !== "")
        .map(({ piece, words }) => (
          <>
            {piece.piece.id}: <Mark of={piece.verdict} /> {words}{" "}
          </>
        ))}
    </>
  );
}

/** Without links: they are many, and each costs as much as ten words. */
const jointsOf = ({ joints }: BatchFile["batch"], none = ""): string =>
  joints.length === 0 ? none : joints.join(", ");

/** What the PDF is called in which a batch stands in full. */
function paperOf(shown: Shown, batch: string): string {
  const [sheet = ""] = placeOf(shown, "batch", batch).split("#");
  return shown.memo.once(shown, paperBySheet).get(sheet) ?? "";
}

/** What the PDF of each sheet of the evidence is called. */
const paperBySheet = (shown: Shown): ReadonlyMap<string, string> =>
  new Map(
    papersOf(shown).flatMap((paper) =>
      "sheet" in paper ? [[paper.sheet.path, paper.path.slice(paper.path.lastIndexOf("/") + 1)] as const] : [],
    ),
  );
