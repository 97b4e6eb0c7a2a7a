/** Of a hold point with very much inside it: what the papers of the hold points within it tell, and where. */
import type { JSX } from "preact";
import { indexBy } from "../../src/evidence/record-index.ts";
import type { JointFile, Need } from "../../src/evidence/types.ts";
import { paperOfHoldPoint } from "../../src/pages/appendix/papers.ts";
import { apart } from "../../src/pages/appendix/sheets.ts";
import type { Within } from "../../src/pages/evidence/hold-point/told-within.ts";
import { batchMark, JOINT_STATES } from "../../src/pages/evidence/verdict-words.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { counted } from "../../src/words/lists.ts";
import { ListTable, type Where } from "../evidence/parts.tsx";
import { Mark } from "../parts/mark.tsx";

/** A row each: how it stands, each joint and batch that is not shown by its name, what is open, and the paper that says why. */
export function ToldWithin({
  points,
  site: { shown },
}: Pick<Where, "site"> & { readonly points: readonly Within[] }): JSX.Element {
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <>
      <p>
        {counted(points.length, "hold point")} within it must be passed first, each with a paper of its own. A joint is
        told on the paper of the innermost hold point that asks for it, with every reason, its batches and what it
        takes, and so is whatever else is open. All that is not shown, or open, stands here by name.
      </p>
      <ListTable
        caption="Hold points within it, each with what it asks for itself that is not shown or open"
        heads={[
          "Hold point",
          "State",
          "Not shown, or open",
          number("Shown"),
          number("To be put right"),
          number("Still to be done"),
          "Told in",
        ]}
      >
        {points.map((point) => (
          <PointRow point={point} shown={shown} />
        ))}
      </ListTable>
    </>
  );
}

function PointRow({ point, shown }: { readonly point: Within; readonly shown: Shown }): JSX.Element {
  const { holdPoint, state, needs } = point.file;
  const blocking = needs.filter(({ blocks }) => blocks).length;
  const told = point.joints.map((joint) => ({ joint, batches: notShownOf(shown, joint) }));
  const open = told.filter(({ joint, batches }) => joint.state !== "shown" || batches.length > 0);
  const named = new Set(open.map(({ joint }) => joint.joint.id));
  const others = point.needs.filter(({ about }) => about.kind !== "joint" || !named.has(about.id));
  return (
    <tr>
      <th scope="row">
        {holdPoint.id} <span class="plainly">{holdPoint.title}</span>
      </th>
      <td>
        <Mark of={state} />
      </td>
      <td>
        {JOINT_STATES.map((of) => ({ of, some: open.filter(({ joint }) => joint.state === of) }))
          .filter(({ some }) => some.length > 0)
          .map(({ of, some }) => (
            <>
              <Mark of={of} /> {some.map(({ joint, batches }) => [joint.joint.id, ...batches].join(" ")).join("; ")}.{" "}
            </>
          ))}
        {others.length === 0 ? "" : `Open: ${openWords(others)}.`}
      </td>
      <td class="number">{told.length - open.length}</td>
      <td class="number">{blocking}</td>
      <td class="number">{needs.length - blocking}</td>
      <td>{paperOf(shown, holdPoint.id)}</td>
    </tr>
  );
}

/** By what they are about: `departure D-102, D-122; open item O-4`. */
const openWords = (needs: readonly Need[]): string =>
  [...indexBy(needs, ({ about }) => about.kind)]
    .map(([kind, some]) => `${kind} ${some.map(({ about }) => about.id).join(", ")}`)
    .join("; ");

/** Those taken out too: `B-0034 rejected`. */
function notShownOf({ evidence }: Shown, { batches, superseded }: JointFile): string[] {
  const files = [...batches, ...superseded].flatMap((id) => evidence.batches.get(id) ?? []);
  return apart(files).exceptions.map((file) => `${file.batch.id} ${batchMark(file).word}`);
}

function paperOf(shown: Shown, id: string): string {
  const path = paperOfHoldPoint(shown, id)?.path ?? "";
  return path.slice(path.lastIndexOf("/") + 1);
}
