import type { JSX } from "preact";
import { toldRules } from "../../src/words/findings/told.ts";
import { trialPage } from "../../src/pages/evidence/trial-page.ts";
import type { Sheet } from "../../src/pages/appendix/sheets.ts";
import { piecePhoto } from "../../src/pages/evidence/piece-facts.ts";
import { traceIndex } from "../../src/pages/evidence/trace-index.ts";
import { dateShort, dateWords } from "../../src/words/dates.ts";
import { Changes, whyWords } from "../parts/amended.tsx";
import { Photo } from "../parts/picture.tsx";
import { To } from "../shell/link.tsx";
import { Inside } from "./inside.tsx";
import { SourceWords } from "../parts/findings.tsx";
import { ListTable, None, type Where } from "../evidence/parts.tsx";
import { PieceTable } from "../evidence/piece.tsx";
import { Cautions, Conclusion, Outcomes } from "../evidence/trial.tsx";

export function AppendixTrials({ site, from }: Where): JSX.Element {
  const trials = [...site.shown.record.trials.values()];
  if (trials.length === 0) return <None>No trials.</None>;
  return (
    <>
      {trials.map((trial) => {
        const page = trialPage(site.shown, trial);
        return (
          <section aria-label={trial.title}>
            <h3>{trial.title}</h3>
            <p>{trial.question}</p>
            <p>
              Expected, as stated on {dateWords(trial.stated)}: {trial.expectation}
            </p>
            <Cautions page={page} />
            <Outcomes rows={page.rows} of={trial.title} />
            <Conclusion page={page} />
            <PieceTable pieces={page.pieces} caption={`Pieces of the trial: ${trial.title}`} site={site} from={from} />
          </section>
        );
      })}
    </>
  );
}

export function AppendixRules({ site }: Pick<Where, "site">): JSX.Element {
  return (
    <ListTable
      caption="What is asked, what follows, and where it comes from"
      heads={["Rule", "What it says", "Source"]}
    >
      {toldRules(site.shown.say).map(({ title, says, source }) => (
        <tr>
          <th scope="row">{title}</th>
          <td>{says}</td>
          <td>
            <SourceWords source={source} />
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

/** Every amendment: what stood there first, what stands now, why, and who saw the source. */
export function AppendixAmendments({ site, from }: Where): JSX.Element {
  const all = site.shown.record.entries.flatMap(({ amendments }) => amendments);
  if (all.length === 0) return <None>Nothing has been amended.</None>;
  return (
    <ListTable
      caption="Amendments, the oldest first: what was written first, and what stands now"
      heads={["Amended on", "Entry", "What was, and what is", "Why, and who saw the source"]}
    >
      {all.map((amendment) => (
        <tr>
          <td>
            <To site={site} from={from} to={{ kind: "entry", id: amendment.by }} class="id">
              {dateShort(amendment.day)}
            </To>
          </td>
          <td>
            <To site={site} from={from} to={{ kind: "entry", id: amendment.entry }} class="id" />
          </td>
          <td>
            <Changes site={site} from={from} amendment={amendment} />
          </td>
          <td>{whyWords(site, amendment)}</td>
        </tr>
      ))}
    </ListTable>
  );
}

/** Photographs of broken pieces, each with its id: in the archive, since they take much room. */
export function PiecePhotographs({ site, from, sheet }: Where & { readonly sheet: Sheet }): JSX.Element {
  const batches = [...sheet.groups.flatMap((group) => group.batches), ...sheet.loose];
  const photos = batches.flatMap(({ pieces }) =>
    pieces.flatMap((file) => {
      const photo = piecePhoto(site.shown, file);
      return photo === undefined ? [] : [{ id: file.piece.id, verdict: file.verdict, photo }];
    }),
  );
  if (photos.length === 0) return <None>No piece was photographed.</None>;
  return (
    <div class="plates">
      {photos.map(({ id, verdict, photo }) => (
        <Photo
          site={site}
          from={from}
          photo={{ ...photo, caption: `${id}, ${verdict}${photo.caption === undefined ? "" : `: ${photo.caption}`}` }}
          sizes="(min-width: 60rem) 18rem, 100vw"
        />
      ))}
    </div>
  );
}

/** Where each joint and batch stands: by page in a PDF, by sheet where there are several. */
export function AppendixIndex({ site, from }: Where): JSX.Element {
  const { record, evidence } = site.shown;
  const joints = [...evidence.joints.keys()].sort();
  const batches = traceIndex(site.shown)
    .batches.map(({ id }) => id)
    .filter((id) => evidence.batches.has(id))
    .sort();
  const lists = [
    { kind: "joint", title: "Joints", ids: joints },
    { kind: "batch", title: "Batches", ids: batches },
  ] as const;
  return (
    <>
      {lists.map(({ kind, title, ids }) =>
        ids.length === 0 ? null : (
          <section aria-label={`${title} of ${record.aircraft.name}`}>
            <h3>{title}</h3>
            <ul class="appendix__index bare">
              {ids.map((id) => (
                <li>
                  <Inside kind={kind} ids={[id]} site={site} from={from} />
                </li>
              ))}
            </ul>
          </section>
        ),
      )}
    </>
  );
}
