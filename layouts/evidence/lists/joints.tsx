import type { JSX } from "preact";
import { jointRows, type JointRow } from "../../../src/pages/evidence/overview.ts";
import { jointWords } from "../../../src/pages/evidence/verdict-words.ts";
import { counted } from "../../../src/words/lists.ts";
import { quantityWords } from "../../../src/words/quantities.ts";
import { ToEach } from "../../shell/link.tsx";
import { Page } from "../../shell/page.tsx";
import { AssemblyLink, LIST_SCRIPTS, ListPlace } from "./lists.tsx";
import { FigureCell, groupOf, Id, ListTable, None, Title, VerdictCell, type Where } from "../parts.tsx";

/** The index of all joints, whether anything blocks by them or not. */
export function Joints({ site }: Pick<Where, "site">): JSX.Element {
  const from = "joints.html";
  const rows = jointRows(site.shown);
  const groups = rows.map(({ file }) => file.state);
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Joints"
      scripts={LIST_SCRIPTS}
      description="Every glued joint, how it stands, and why."
    >
      <Title place={<ListPlace from={from} />} title="Joints">
        <p class="title__lead">Every glued joint, how it stands, and why.</p>
      </Title>
      {rows.length === 0 ? (
        <None>The record names no joints.</None>
      ) : (
        <ListTable
          list="joints"
          caption="Joints, the worst first"
          heads={["Joint", "State", "Because", "Assembly", "Batches", "Lots", { word: "Glued area", number: true }]}
        >
          {rows.map((row, at) => (
            <tr {...groupOf("joints", groups, at)}>
              <Cells row={row} site={site} from={from} />
            </tr>
          ))}
        </ListTable>
      )}
    </Page>
  );
}

function Cells({ row: { file, reasons }, site, from }: Where & { readonly row: JointRow }): JSX.Element {
  const { joint, state, batches, lots } = file;
  return (
    <>
      <th scope="row" class="alike">
        <Id site={site} from={from} kind="joint" id={joint.id} />{" "}
        <span class="plainly">
          {joint.title}
          {jointWords(joint)}
        </span>
      </th>
      <VerdictCell of={state} />
      <td class="because">
        {reasons[0] ?? ""}
        {reasons.length > 1 ? ` And ${counted(reasons.length - 1, "more reason")}.` : ""}
      </td>
      <td>
        <AssemblyLink site={site} from={from} id={joint.assembly} />
      </td>
      <td>
        <ToEach site={site} from={from} to={batches.map((id) => ({ kind: "batch", id }))} />
      </td>
      <td>
        <ToEach site={site} from={from} to={lots.map((id) => ({ kind: "lot", id }))} />
      </td>
      <FigureCell of={joint.area}>
        {joint.area === undefined ? "" : quantityWords(joint.area, site.shown.record.aircraft.units)}
      </FigureCell>
    </>
  );
}
