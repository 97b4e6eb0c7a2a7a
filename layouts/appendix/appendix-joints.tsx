import type { JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import type { Group } from "../../src/pages/appendix/sheets.ts";
import type { JointFile } from "../../src/evidence/types.ts";
import { assemblyPath, traceIndex } from "../../src/pages/evidence/trace-index.ts";
import { JOINT_MEANS, JOINT_STATES, jointWords, stageWords } from "../../src/pages/evidence/verdict-words.ts";
import type { Stage } from "../../src/facts/types.ts";
import { dateWords } from "../../src/words/dates.ts";
import { Plate } from "../parts/drawing.tsx";
import { Mark } from "../parts/mark.tsx";
import { Inside } from "./inside.tsx";
import type { Say } from "../../src/evidence/saying.ts";
import { ListTable, None, type Where } from "../evidence/parts.tsx";

interface JointsProps extends Where {
  readonly groups: readonly Group[];
  /** Those that are shown in a line together: they are many, and in full elsewhere. */
  readonly briefly?: boolean;
}

/** Joints by assembly: its drawing with each of them marked, and a row each with verdict, reasons, batches and lots. */
export function AppendixJoints({ site, from, groups, briefly = false }: JointsProps): JSX.Element {
  const withJoints = groups.filter(({ joints }) => joints.length > 0);
  if (withJoints.length === 0) return <None>The record names no joints.</None>;
  const { say } = site.shown;
  const withoutWhy = withJoints.flatMap(({ joints }) => joints.filter((file) => whyWords(say, file) === ""));
  const states = JOINT_STATES.filter((of) => withoutWhy.some(({ state }) => state === of));
  return (
    <>
      {states.map((of) => (
        <p class="small">
          <Mark of={of} /> {JOINT_MEANS[of]}
        </p>
      ))}
      {withJoints.map((group) => (
        <JointsOf group={group} site={site} from={from} briefly={briefly} />
      ))}
    </>
  );
}

interface GroupProps extends Where {
  readonly group: Group;
  readonly briefly: boolean;
}

function JointsOf({ group: { assembly, joints }, site, from, briefly }: GroupProps): JSX.Element {
  const { record } = site.shown;
  const index = traceIndex(site.shown);
  const title = assemblyPath(record, assembly);
  const drawn = record.assemblies.get(assembly);
  const isWhyTold = joints.some((file) => whyWords(site.shown.say, file) !== "");
  const rows = briefly ? joints.filter(({ state }) => state !== "shown") : joints;
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      {drawn === undefined ? null : <Plate site={site} from={from} assembly={drawn} joints={joints} />}
      {rows.length === 0 ? null : (
        <ListTable
          caption={rows.length === joints.length ? `Joints of ${title}` : `Joints of ${title} that are not shown`}
          heads={["Joint", "What it joins", "State", ...(isWhyTold ? ["Why"] : []), "Batches", "Lots", "Hold points"]}
        >
          {rows.map((file) => (
            <JointRow
              site={site}
              from={from}
              file={file}
              isWhyTold={isWhyTold}
              holdPoints={index.holdPointsOf.get(file.joint.id) ?? []}
              stages={index.stagesOf.get(file.joint.id) ?? []}
            />
          ))}
        </ListTable>
      )}
      {rows.length === joints.length ? null : <ShownJoints joints={joints.filter(({ state }) => state === "shown")} />}
    </section>
  );
}

/** In a line, each with its batches. */
function ShownJoints({ joints }: { readonly joints: readonly JointFile[] }): JSX.Element {
  return (
    <p>
      <Mark of="shown" />{" "}
      {joints.map(({ joint, batches }) => (
        <>
          {joint.id} ({batches.join(", ")}){" "}
        </>
      ))}
    </p>
  );
}

/** What of it is not met; nothing of one that stands as its state says, which is told once. */
const whyWords = (say: Say, { findings }: JointFile): string =>
  findings
    .filter(({ severity }) => severity !== "meets")
    .map(say)
    .join(" ");

function JointRow({
  site,
  from,
  file,
  isWhyTold,
  holdPoints,
  stages,
}: Where & {
  readonly file: JointFile;
  readonly isWhyTold: boolean;
  readonly holdPoints: readonly string[];
  readonly stages: readonly Stage[];
}): JSX.Element {
  const { joint, state, batches, superseded } = file;
  return (
    <tr id={anchor("joint", joint.id)}>
      <th scope="row" class="id">
        {joint.id}
      </th>
      <td>{joint.title + jointWords(joint)}</td>
      <td>
        <Mark of={state} />
      </td>
      {isWhyTold ? <td>{whyWords(site.shown.say, file)}</td> : null}
      <td>
        <Inside kind="batch" ids={batches} site={site} from={from} />
        {superseded.length === 0 ? null : (
          <>
            {" taken out: "}
            <Inside kind="batch" ids={superseded} site={site} from={from} />
          </>
        )}
        {stages.map((stage) => (
          <>
            {" "}
            {dateWords(stage.day)}: {stageWords(stage)}
            {stage.batches.length === 0 ? null : ", "}
            <Inside kind="batch" ids={stage.batches} site={site} from={from} />
            {stage.complete === true ? ", said to be complete." : "."}
          </>
        ))}
      </td>
      <td>{file.lots.join(", ")}</td>
      <td>
        <Inside kind="hold point" ids={holdPoints} site={site} from={from} />
      </td>
    </tr>
  );
}
