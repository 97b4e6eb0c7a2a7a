import type { JSX } from "preact";
import type { JointFile } from "../../src/evidence/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { jointWords } from "../../src/pages/evidence/verdict-words.ts";
import { jointReasons } from "../../src/pages/evidence/overview.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { To, ToEach } from "../shell/link.tsx";
import { Mark } from "./mark.tsx";

interface JointTableProps {
  readonly site: Site;
  readonly from: string;
  readonly joints: readonly JointFile[];
}

/** Each joint with its state, and one step from here its batches, test pieces and lots. */
export function JointTable({ site, from, joints }: JointTableProps): JSX.Element {
  const { units } = site.shown.record.aircraft;
  return (
    <section class="scroll" tabIndex={0} aria-label="Joints">
      <table class="joints">
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">State</th>
            <th scope="col">Batches</th>
            <th scope="col">Test pieces</th>
            <th scope="col">Lots</th>
            <th scope="col" class="number">
              Glue face
            </th>
          </tr>
        </thead>
        <tbody>
          {joints.map((file) => (
            <tr>
              <th scope="row">
                <To site={site} from={from} to={{ kind: "joint", id: file.joint.id }} />{" "}
                <span class="joints__title">
                  {file.joint.title}
                  {jointWords(file.joint)}
                </span>
              </th>
              <td>
                <Mark of={file.state} />
                <Why site={site} file={file} />
              </td>
              <td>
                <Batches site={site} from={from} file={file} />
              </td>
              <td>
                <Pieces site={site} from={from} file={file} />
              </td>
              <td>
                <ToEach site={site} from={from} to={file.lots.map((id) => ({ kind: "lot", id }))} />
              </td>
              <td class="number">{file.joint.area === undefined ? "" : quantityWords(file.joint.area, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** The first thing that decided a state that is not as it should be, or would be in time. */
function Why({ site, file }: Omit<CellProps, "from">): JSX.Element | null {
  const [first] = file.state === "shown" || file.state === "not glued" ? [] : jointReasons(site.shown.say, file);
  return first === undefined ? null : <span class="joints__why">{first}</span>;
}

interface CellProps {
  readonly site: Site;
  readonly from: string;
  readonly file: JointFile;
}

function Batches({ site, from, file }: CellProps): JSX.Element {
  return (
    <>
      <ToEach site={site} from={from} to={file.batches.map((id) => ({ kind: "batch", id }))} />
      {file.superseded.length === 0 ? null : (
        <span class="quiet">
          {" "}
          (taken out: <ToEach site={site} from={from} to={file.superseded.map((id) => ({ kind: "batch", id }))} />)
        </span>
      )}
    </>
  );
}

/** Pieces of the joint's batches by verdict: `2 pass, 1 inconclusive`. */
function Pieces({ site, file }: CellProps): JSX.Element {
  const counts = new Map<string, number>();
  for (const id of file.batches) {
    for (const { piece, verdict } of site.shown.evidence.batches.get(id)?.pieces ?? []) {
      if (piece.trial === undefined) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    }
  }
  return <>{[...counts].map(([verdict, count]) => `${count} ${verdict}`).join(", ")}</>;
}
