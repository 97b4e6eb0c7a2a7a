import type { JSX } from "preact";
import { addressOf, relative } from "../../src/pages/address.ts";
import type { LotFile } from "../../src/evidence/types.ts";
import { lotPage, type LotPage, type LotUse } from "../../src/pages/evidence/lot-page.ts";
import { dateWords } from "../../src/words/dates.ts";
import { counted, ended } from "../../src/words/lists.ts";
import { whereUsed } from "../../src/pages/evidence/trace.ts";
import { To } from "../shell/link.tsx";
import { Findings } from "../parts/findings.tsx";
import { BatchMark, Mark } from "../parts/mark.tsx";
import { Page, Prose } from "../shell/page.tsx";
import { TraceFigure } from "../parts/trace.tsx";
import { EntryLink, Facts, Id, ListTable, None, Section, Title, type Where } from "./parts.tsx";
import { CoatTable } from "./materials/coats.tsx";
import { FittedTable } from "./materials/fitted.tsx";
import { RemainsSection } from "./materials/remains.tsx";
import { PieceTable } from "./piece.tsx";

export function Lot({ site, file }: { readonly site: Where["site"]; readonly file: LotFile }): JSX.Element {
  const { lot } = file;
  const from = addressOf({ kind: "lot", id: lot.id }) ?? "";
  const page = lotPage(site.shown, file);
  const where = { site, from };
  const certificate = lot.certificate === undefined ? undefined : site.files.get(lot.certificate);
  return (
    <Page
      site={site}
      path={from}
      kind="lot"
      title={`Lot ${lot.id}`}
      description={`Lot ${lot.id}, ${lot.title}: where it was used, down to the hold points.`}
    >
      <Title place={<a href={relative(from, "evidence.html#lots")}>Lots</a>} title={`Lot ${lot.id}`}>
        <p class="title__lead">{lot.title}</p>
      </Title>
      <Notices page={page} {...where} />
      <Section id="particulars" title="Particulars">
        <Facts rows={page.particulars} />
        {certificate === undefined ? null : (
          <p>
            <a href={relative(from, certificate)}>Certificate of lot {lot.id}</a>
          </p>
        )}
        {lot.body.map((passage) => (
          <Prose site={site} html={site.prose(passage, from)} />
        ))}
      </Section>
      <Fitted page={page} {...where} />
      <PutOn page={page} {...where} />
      {lot.material === "part" || lot.material === "finish" ? null : (
        <Section id="where-used" title="Where it was used">
          <TraceFigure trace={whereUsed(site.shown, file)} list="where-used-list" {...where} />
          <div id="where-used-list">
            <Uses page={page} {...where} />
          </div>
        </Section>
      )}
      <Cuts page={page} {...where} />
      <RemainsSection remains={page.remains} caption={`What was weighed as left in lot ${lot.id}`} {...where} />
      <LotHoldPoints page={page} {...where} />
      {page.pieces.length === 0 ? null : (
        <Section id="pieces" title="Test pieces made from it">
          <PieceTable pieces={page.pieces} caption={`Test pieces made from lot ${lot.id}`} {...where} />
        </Section>
      )}
    </Page>
  );
}

function Notices({ page, site, from }: Where & { readonly page: LotPage }): JSX.Element {
  return (
    <>
      <Recalls page={page} site={site} from={from} />
      {page.overdrawn.length === 0 ? null : <Findings site={site} from={from} findings={page.overdrawn} about={[]} />}
    </>
  );
}

function Recalls({
  page: { file, fitted, coats },
  site,
  from,
}: Where & { readonly page: LotPage }): JSX.Element | null {
  if (file.recalls.length === 0) return null;
  return (
    <div class="verdict verdict--recalled">
      <p class="verdict__mark">
        <Mark of="quarantined" word="recalled" />
      </p>
      <div class="verdict__body">
        {file.recalls.map((recall) => (
          <p>
            On{" "}
            <To site={site} from={from} to={{ kind: "entry", id: recall.entry }}>
              {dateWords(recall.day)}
            </To>
            : {ended(recall.why)}
            {recall.reference === undefined ? "" : ` Reference: ${ended(recall.reference)}`}
          </p>
        ))}
        <p>
          {fitted.length > 0
            ? fittedWords(fitted)
            : coats.length > 0
              ? coatWords(coats)
              : file.joints.length === 0
                ? "No joint holds it now."
                : `${counted(file.joints.length, "joint")} ${file.joints.length === 1 ? "holds" : "hold"} it now and ${file.joints.length === 1 ? "is" : "are"} quarantined until reworked.`}
          {file.formerJoints.length === 0 ? "" : ` It was taken out of ${counted(file.formerJoints.length, "joint")}.`}
        </p>
      </div>
    </div>
  );
}

function fittedWords(fitted: LotPage["fitted"]): string {
  const now = fitted.filter(({ stood }) => stood.out === undefined).length;
  return now === 0
    ? "It was taken out wherever it was fitted."
    : `It stands in ${counted(now, "place")}; hold points ask for it until a line says what took its place.`;
}

function coatWords(coats: LotPage["coats"]): string {
  const now = coats.filter(({ off }) => off === "").length;
  return now === 0
    ? "It was taken off wherever it was put on."
    : `It is in ${counted(now, "coat")}; hold points ask for it until a line says that all was taken off there.`;
}

function PutOn({ page, ...where }: Where & { readonly page: LotPage }): JSX.Element | null {
  if (page.coats.length === 0) return null;
  return (
    <Section id="put-on" title="Where it was put on">
      <CoatTable rows={page.coats} caption={`Coats of lot ${page.file.lot.id}`} {...where} />
    </Section>
  );
}

function Fitted({ page, ...where }: Where & { readonly page: LotPage }): JSX.Element | null {
  if (page.fitted.length === 0) return null;
  return (
    <Section id="fitted" title="Where it was fitted">
      <FittedTable rows={page.fitted} caption={`Where parts of lot ${page.file.lot.id} were fitted`} {...where} />
    </Section>
  );
}

function Uses({ page, site, from }: Where & { readonly page: LotPage }): JSX.Element {
  if (page.uses.length === 0) return <None>No batch that this edition shows used it.</None>;
  return (
    <ListTable
      list="uses"
      caption="From the lot to batches, joints and hold points"
      heads={["Batch", "Verdict", "Joint", "What it joins", "State", "Lot", "Assembly", "Hold points"]}
    >
      {page.uses.flatMap((use) => useRows(use, { site, from }))}
    </ListTable>
  );
}

function useRows({ batch, joints }: LotUse, where: Where): JSX.Element[] {
  const cells = (
    <>
      <td>
        <Id {...where} kind="batch" id={batch.batch.id} />
      </td>
      <td>
        <BatchMark file={batch} />
      </td>
    </>
  );
  if (joints.length === 0)
    return [
      <tr>
        {cells}
        <td colSpan={6} class="quiet">
          {batch.batch.discarded === undefined ? "went into no joint" : "thrown away"}
        </td>
      </tr>,
    ];
  return joints.map(({ file, now, holdPoints }) => (
    <tr>
      {cells}
      <td>
        <Id {...where} kind="joint" id={file.joint.id} />
      </td>
      <td>{file.joint.title}</td>
      <td>
        <Mark of={file.state} />
      </td>
      <td>{now ? "in it now" : "taken out"}</td>
      <td>
        <To {...where} to={{ kind: "assembly", id: file.joint.assembly }}>
          {where.site.shown.record.assemblies.get(file.joint.assembly)?.title ?? file.joint.assembly}
        </To>
      </td>
      <td>
        {holdPoints.map(({ holdPoint }, at) => (
          <>
            {at > 0 ? ", " : ""}
            <Id {...where} kind="hold point" id={holdPoint.id} />
          </>
        ))}
      </td>
    </tr>
  ));
}

function Cuts({ page, site, from }: Where & { readonly page: LotPage }): JSX.Element | null {
  if (page.cuts.length === 0) return null;
  return (
    <Section id="cuts" title="What was cut from it">
      <p class="measure">
        {page.cutWords} What is left stands under <a href={relative(from, "stock.html")}>Stock</a>.
      </p>
      <ListTable
        caption={`Cuts from lot ${page.file.lot.id} by day`}
        heads={["Day", "Entry", { word: "Cut", number: true }, { word: "Together", number: true }]}
      >
        {page.cuts.map(({ entry, title, amount, sum }) => (
          <tr>
            <td>
              <EntryLink site={site} from={from} id={entry} />
            </td>
            <th scope="row" class="plainly">
              {title}
            </th>
            <td class="number">{amount}</td>
            <td class="number">{sum}</td>
          </tr>
        ))}
      </ListTable>
    </Section>
  );
}

function LotHoldPoints({ page, site, from }: Where & { readonly page: LotPage }): JSX.Element | null {
  if (page.holdPoints.length === 0) return null;
  return (
    <Section id="hold-points" title="Hold points it reaches">
      <ul class="lines bare">
        {page.holdPoints.map(({ holdPoint, state }) => (
          <li>
            <Id site={site} from={from} kind="hold point" id={holdPoint.id} /> {holdPoint.title}: <Mark of={state} />
          </li>
        ))}
      </ul>
    </Section>
  );
}
