import type { JSX } from "preact";
import { addressOf } from "../../src/pages/address.ts";
import type { JointFile } from "../../src/evidence/types.ts";
import { jointPage, type JointBatch, type JointPage } from "../../src/pages/evidence/joint-page.ts";
import { madeOf } from "../../src/pages/evidence/trace.ts";
import { HOLD_MEANS, JOINT_MEANS, jointWords, stagesOpened } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import { ended, listed } from "../../src/words/lists.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { toldFinding } from "../../src/words/findings/told.ts";
import { HistoryLink } from "../archive/history-link.tsx";
import { Clip } from "../parts/clip.tsx";
import { Findings } from "../parts/findings.tsx";
import { To } from "../shell/link.tsx";
import { BatchMark, Mark } from "../parts/mark.tsx";
import { entriesOf } from "../../src/pages/evidence/by-default.ts";
import { Sealed } from "../parts/sealed.tsx";
import { Page } from "../shell/page.tsx";
import { GALLERY_SCRIPTS, Photo } from "../parts/picture.tsx";
import { TraceFigure } from "../parts/trace.tsx";
import { BatchVerdictBox } from "./batch.tsx";
import { Asked, Id, ListTable, None, Section, Title, type Where } from "./parts.tsx";
import { PieceTable } from "./piece.tsx";
import { StageLine } from "../day/day-stages.tsx";
import { Replaced } from "./replaced.tsx";

export function Joint({ site, file }: { readonly site: Where["site"]; readonly file: JointFile }): JSX.Element {
  const { joint, state } = file;
  const from = addressOf({ kind: "joint", id: joint.id }) ?? "";
  const page = jointPage(site.shown, file);
  const where = { site, from };
  return (
    <Page
      site={site}
      path={from}
      kind="joint"
      title={`Joint ${joint.id}`}
      description={`Joint ${joint.id}, ${joint.title}, in ${page.assemblyTitle}: ${state}.`}
      scripts={page.photos.length === 0 ? [] : GALLERY_SCRIPTS}
    >
      <Head page={page} {...where} />
      <JointVerdict page={page} {...where} />
      <Section id="made-of" title="Made of">
        <TraceFigure
          trace={madeOf(site.shown, file)}
          list={page.lots.length === 0 ? "made-of" : "lots-in-it"}
          {...where}
        />
        <Stages page={page} {...where} />
        {page.batches
          .filter(({ now }) => now)
          .map((batch) => (
            <Glued batch={batch} {...where} />
          ))}
        {page.glueHidden ? <None>The batch it was glued with is not shown in this edition.</None> : null}
        {state === "not glued" ? <None>Not glued yet.</None> : null}
        <JointLots page={page} {...where} />
      </Section>
      <Reworks page={page} {...where} />
      <JointHoldPoints page={page} {...where} />
      <Sessions page={page} {...where} />
    </Page>
  );
}

function Head({ page, ...where }: Where & { readonly page: JointPage }): JSX.Element {
  const { joint } = page.file;
  const { site } = where;
  return (
    <Title
      place={
        <To {...where} to={{ kind: "assembly", id: joint.assembly }}>
          {page.assemblyTitle}
        </To>
      }
      title={`Joint ${joint.id}`}
    >
      <p class="title__lead">
        {joint.title}
        {jointWords(joint)}
        {joint.drawing === undefined ? "" : `, drawing: ${joint.drawing}`}
        {joint.area === undefined ? "" : `, glued area ${quantityWords(joint.area, site.shown.record.aircraft.units)}`}.
      </p>
      <Asked asks={joint.asks} />
      <Sealed
        site={site}
        entries={page.batches.flatMap(({ entry, file }) => (entry === undefined ? [] : entriesOf(file.batch)))}
      />
      <HistoryLink {...where} of={{ kind: "joint", id: joint.id }} />
    </Title>
  );
}

function Sessions({ page, ...where }: Where & { readonly page: JointPage }): JSX.Element | null {
  return page.photos.length + page.clips.length === 0 ? null : (
    <Section id="photographs" title="Photographs of the sessions">
      <div class="plates">
        {page.photos.map((photo) => (
          <Photo {...where} photo={photo} sizes="(min-width: 60rem) 24rem, 100vw" opens />
        ))}
        {page.clips.map((clip) => (
          <Clip {...where} clip={clip} />
        ))}
      </div>
    </Section>
  );
}

function JointVerdict({ page, site, from }: Where & { readonly page: JointPage }): JSX.Element {
  const { file } = page;
  return (
    <>
      <div class={`verdict verdict--${file.state.replace(" ", "-")}`}>
        <p class="verdict__mark">
          <Mark of={file.state} />
        </p>
        <div class="verdict__body">
          <p>{JOINT_MEANS[file.state]}</p>
        </div>
      </div>
      {file.findings.length === 0 ? null : (
        <Section id="reasons" title="Why">
          <Findings
            site={site}
            from={from}
            findings={file.findings.map((one) => toldFinding(site.shown.say, one))}
            about={[{ kind: "joint", id: file.joint.id }]}
          />
        </Section>
      )}
    </>
  );
}

function Stages({ page, ...where }: Where & { readonly page: JointPage }): JSX.Element | null {
  if (page.stages.length === 0) return null;
  return (
    <ul class="lines bare">
      {page.stages.map((stage) => (
        <li>
          <To {...where} to={{ kind: "entry", id: stage.entry }}>
            {dateWords(stage.day)}
          </To>
          : <StageLine {...where} stage={stage} />
        </li>
      ))}
    </ul>
  );
}

/** One batch in the joint, with its verdict, reasons and pieces. */
function Glued({ batch: { file, people, entry }, site, from }: Where & { readonly batch: JointBatch }): JSX.Element {
  const { batch } = file;
  return (
    <article class="glued" aria-label={`Batch ${batch.id}`}>
      <h3>
        Batch <Id site={site} from={from} kind="batch" id={batch.id} />
      </h3>
      <p>
        Glued on{" "}
        <To site={site} from={from} to={{ kind: "entry", id: batch.entry }}>
          {dateWords(batch.day)}
        </To>
        {batch.mixed === undefined ? "" : `, mixed at ${batch.mixed.typed}`}
        {batch.closed === undefined ? "" : `, closed at ${batch.closed.typed}`}
        {people.length === 0 ? "" : `. At work that day: ${listed(people)}`}
        {entry === undefined ? "" : `. ${site.shown.record.adhesives.get(batch.adhesive)?.title ?? batch.adhesive}`}.
      </p>
      <BatchVerdictBox file={file} site={site} from={from} />
      <PieceTable pieces={file.pieces} caption={`Test pieces of batch ${batch.id}`} site={site} from={from} />
    </article>
  );
}

/** Each lot with the batch by which it came: what the trace draws, as a list. */
function JointLots({ page, site, from }: Where & { readonly page: JointPage }): JSX.Element | null {
  if (page.lots.length === 0) return null;
  return (
    <div id="lots-in-it">
      <ListTable
        caption="Lots by the batch that brought them"
        heads={["Lot", "What", "Maker’s number", "Received", "Batch", "Glue", "Notice"]}
      >
        {page.lots.map(({ lot, batch, now }) => (
          <tr>
            <td>
              <Id site={site} from={from} kind="lot" id={lot.id} />
            </td>
            <td>{lot.title}</td>
            <td>{lot.number ?? ""}</td>
            <td>{dateWords(lot.received)}</td>
            <td>
              <Id site={site} from={from} kind="batch" id={batch} />
            </td>
            <td>{now ? "in it now" : "taken out"}</td>
            <td>
              {(site.shown.evidence.lots.get(lot.id)?.recalls.length ?? 0) === 0 ? (
                ""
              ) : (
                <strong class="attention">recalled</strong>
              )}
            </td>
          </tr>
        ))}
      </ListTable>
    </div>
  );
}

function Reworks({ page, site, from }: Where & { readonly page: JointPage }): JSX.Element | null {
  const former = page.batches.filter(({ now }) => !now);
  if (former.length === 0 && page.file.reworks.length === 0) return null;
  return (
    <Section id="reworks" title="Taken out and made again">
      <ul class="lines bare">
        {page.file.reworks.map((rework) => (
          <li>
            <To site={site} from={from} to={{ kind: "entry", id: rework.entry }}>
              {dateWords(rework.day)}
            </To>
            : glue taken out{rework.stages === undefined ? "" : stagesOpened(rework.stages)}. {ended(rework.why)}
            <Replaced replaced={rework.replaced ?? []} site={site} from={from} />
          </li>
        ))}
        {former.map(({ file }) => (
          <li>
            Batch <Id site={site} from={from} kind="batch" id={file.batch.id} /> of {dateWords(file.batch.day)} is no
            longer in this joint. It was <BatchMark file={file} />.
          </li>
        ))}
      </ul>
    </Section>
  );
}

function JointHoldPoints({ page, site, from }: Where & { readonly page: JointPage }): JSX.Element | null {
  if (page.holdPoints.length === 0) return null;
  return (
    <Section id="hold-points" title="Hold points that ask for it">
      <ul class="lines bare">
        {page.holdPoints.map(({ holdPoint, state }) => (
          <li>
            <Id site={site} from={from} kind="hold point" id={holdPoint.id} /> {holdPoint.title}: <Mark of={state} />.{" "}
            {HOLD_MEANS[state]}
          </li>
        ))}
      </ul>
    </Section>
  );
}
