/** Of the hold point's page: its joints, what was seen of them, and what must not be trusted among them. */
import type { JSX } from "preact";
import type { JointFile } from "../../../src/evidence/types.ts";
import type { HoldPointPage } from "../../../src/pages/evidence/hold-point/hold-point-page.ts";
import { wordsBeside } from "../../../src/pages/evidence/needs.ts";
import { deciding, jointWords, stagesOpened } from "../../../src/pages/evidence/verdict-words.ts";
import { dateShort, dateWords } from "../../../src/words/dates.ts";
import { ended } from "../../../src/words/lists.ts";
import { quantityWords } from "../../../src/words/quantities.ts";
import { BatchMark, Mark } from "../../parts/mark.tsx";
import { To, ToEach } from "../../shell/link.tsx";
import { Id, ListTable, None, type Where } from "../parts.tsx";
import { Replaced } from "../replaced.tsx";
import { ByEye } from "./by-eye.tsx";
import { Numbered, type PartProps } from "./numbered.tsx";

type JointLine = HoldPointPage["joints"][number];

/** A box to be ticked on paper, with what it says at the head of its column. */
const Box = (): JSX.Element => <span class="checklist__box" aria-hidden="true" />;

export function InsideJoints({ page, number, ...where }: PartProps): JSX.Element {
  return (
    <Numbered id="joints" number={number} title="Joints, the worst first">
      {page.joints.length === 0 ? (
        <None>It asks for no joints.</None>
      ) : (
        <>
          <ListTable
            caption="Joints asked for, the worst first"
            heads={["Joint", "State", "Why, and what it takes", "Batches", "Lots bonded in it"]}
          >
            {page.joints.map((line) => (
              <JointRow line={line} {...where} />
            ))}
          </ListTable>
          <BondedLots page={page} {...where} />
        </>
      )}
    </Numbered>
  );
}

function JointRow({ line: { file, needs }, site, from }: Where & { readonly line: JointLine }): JSX.Element {
  const { joint, state, batches, lots } = file;
  const where = { site, from };
  return (
    <tr>
      <th scope="row" class="alike">
        <Id {...where} kind="joint" id={joint.id} />{" "}
        <span class="plainly">
          {joint.title}
          {jointWords(joint)}
          {joint.drawing === undefined ? "" : `; ${joint.drawing}`}
        </span>
      </th>
      <td>
        <Mark of={state} />
      </td>
      <td class="stock__words">
        {needs.length === 0 ? whyOf(file, site).map((words) => <p>{words}</p>) : null}
        {needs.map((need) => (
          <p>
            {wordsBeside(need)} <span class="checklist__takes">Takes: {need.needs}</span>
          </p>
        ))}
      </td>
      <td>
        {batches.map((id) => (
          <p>
            <Id {...where} kind="batch" id={id} /> <BatchMark file={site.shown.evidence.batches.get(id)} />
          </p>
        ))}
      </td>
      <td>
        <ToEach {...where} to={lots.map((id) => ({ kind: "lot", id }))} />
      </td>
    </tr>
  );
}

const whyOf = ({ state, findings }: JointFile, { shown }: Where["site"]): string[] =>
  state === "shown" ? [] : deciding(findings).map(shown.say);

/** Every lot that is bonded in one of the joints, once. */
function BondedLots({ page, site, from }: Where & Pick<PartProps, "page">): JSX.Element | null {
  const ids = [...new Set(page.joints.flatMap(({ file }) => file.lots))];
  if (ids.length === 0) return null;
  const { record, evidence } = site.shown;
  return (
    <ListTable
      caption="Lots bonded in these joints"
      heads={["Lot", "Notice", "What", "Maker’s number", "Received", "Good until", { word: "Joints", number: true }]}
    >
      {ids
        .flatMap((id) => record.lots.get(id) ?? [])
        .map((lot) => (
          <tr>
            <th scope="row">
              <Id site={site} from={from} kind="lot" id={lot.id} />
            </th>
            <td>
              {(evidence.lots.get(lot.id)?.recalls.length ?? 0) === 0 ? "" : <Mark of="recall" word="recalled" />}
            </td>
            <td>
              {lot.title}, {lot.species ?? lot.material}
            </td>
            <td>{lot.number ?? ""}</td>
            <td>{dateShort(lot.received)}</td>
            <td>{lot.expiry === undefined ? "" : dateShort(lot.expiry)}</td>
            <td class="number">{page.joints.filter(({ file }) => file.lots.includes(lot.id)).length}</td>
          </tr>
        ))}
    </ListTable>
  );
}

export function SeenOfJoints({ page, number, ...where }: PartProps): JSX.Element {
  const glued = page.joints.filter(({ file }) => file.batches.length > 0);
  return (
    <Numbered id="seen" number={number} title="Joints seen, squeeze-out, gaps">
      {glued.length === 0 ? (
        <None>None of them is glued by what this edition shows.</None>
      ) : (
        <ListTable
          caption="As noted when they were glued, with boxes for what is seen now"
          heads={[
            "Joint",
            "Squeezed out",
            "Greatest gap when tried dry",
            "Dry spots seen",
            "Seen now",
            "Squeeze-out all along",
            "No gap",
          ]}
        >
          {glued.map(({ file }) => (
            <SeenRow file={file} {...where} />
          ))}
        </ListTable>
      )}
      <ByEye
        looks={[
          { words: "Every joint above was seen, with lamp and mirror where it needs them" },
          { words: "Tapped or pulled where it can be; no movement, no dull sound" },
          { words: "No crack, no crushed fibre, no stain beside a joint" },
        ]}
      />
    </Numbered>
  );
}

function SeenRow({ file, site, from }: Where & { readonly file: JointFile }): JSX.Element {
  const { units } = site.shown.record.aircraft;
  const noted = file.batches.flatMap((id) => site.shown.evidence.batches.get(id)?.batch.glueUp ?? []);
  const all = (words: readonly (string | undefined)[]): string =>
    words.every((one) => one === undefined) ? "not noted" : words.map((one) => one ?? "not noted").join("; ");
  return (
    <tr>
      <th scope="row">
        <Id site={site} from={from} kind="joint" id={file.joint.id} />
      </th>
      <td>{all(noted.map((one) => one.squeezeOut))}</td>
      <td>{all(noted.map((one) => one.gap && quantityWords(one.gap, units)))}</td>
      <td>{all(noted.map((one) => one.drySpots))}</td>
      <td>
        <Box />
      </td>
      <td>
        <Box />
      </td>
      <td>
        <Box />
      </td>
    </tr>
  );
}

/** Recalled, past its date, rejected, taken out and made again. */
export function Untrusted({ page: { bonded }, number, site, from }: PartProps): JSX.Element {
  const where = { site, from };
  const { recalled, expired, rejected, reworks } = bonded;
  const none = recalled.length + expired.length + rejected.length + reworks.length === 0;
  return (
    <Numbered id="untrusted" number={number} title="Recalled, out of date, rejected; rework">
      {none ? <None>Nothing of these by what this edition shows.</None> : null}
      <ul class="lines bare">
        {recalled.map(({ lot, joints }) => (
          <li>
            Lot <Id {...where} kind="lot" id={lot.id} />, {lot.title}, <strong class="attention">recalled</strong>, is
            in <ToEach {...where} to={joints.map((id) => ({ kind: "joint", id }))} />.
          </li>
        ))}
        {expired.map(({ file, sentences }) => (
          <li>
            Batch <Id {...where} kind="batch" id={file.batch.id} />: {sentences.join(" ")}
          </li>
        ))}
        {rejected.map((file) => (
          <li>
            Batch <Id {...where} kind="batch" id={file.batch.id} /> of {dateWords(file.batch.day)}:{" "}
            <BatchMark file={file} /> {deciding(file.findings).map(site.shown.say).join(" ")}
          </li>
        ))}
        {reworks.map(({ joint, rework }) => (
          <li>
            Joint <Id {...where} kind="joint" id={joint} />: glue taken out on{" "}
            <To {...where} to={{ kind: "entry", id: rework.entry }}>
              {dateWords(rework.day)}
            </To>
            {rework.stages === undefined ? "" : stagesOpened(rework.stages)}. {ended(rework.why)}
            <Replaced replaced={rework.replaced ?? []} {...where} />
          </li>
        ))}
      </ul>
    </Numbered>
  );
}
