import type { JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import type { JointFile } from "../../src/evidence/types.ts";
import { assemblyPath, traceIndex } from "../../src/pages/evidence/trace-index.ts";
import { JOINT_MEANS, jointWords, stageWords } from "../../src/pages/evidence/verdict-words.ts";
import type { Kind, Stage } from "../../src/facts/types.ts";
import { dateWords } from "../../src/words/dates.ts";
import { Mark } from "../parts/mark.tsx";
import { ListTable, None, type Where } from "../evidence/parts.tsx";

/** Joints by assembly, each with its verdict, reasons, batches and lots. */
export function AppendixJoints({ site, number }: Where & { readonly number: number }): JSX.Element {
  const { record, evidence } = site.shown;
  const index = traceIndex(site.shown);
  const groups = index.assemblies.flatMap((id) => {
    const joints = (record.assemblies.get(id)?.joints ?? []).flatMap((joint) => evidence.joints.get(joint.id) ?? []);
    return joints.length === 0 ? [] : [{ id, joints }];
  });
  if (groups.length === 0) return <None>The record names no joints.</None>;
  return (
    <>
      {groups.map(({ id, joints }, at) => (
        <section aria-label={assemblyPath(record, id)}>
          <h3>
            {number}.{at + 1} {assemblyPath(record, id)}
          </h3>
          <ListTable
            caption={`Joints of ${assemblyPath(record, id)}`}
            heads={["Joint", "What it joins", "State", "Why", "Batches", "Lots", "Hold points"]}
          >
            {joints.map((file) => (
              <JointRow
                site={site}
                file={file}
                holdPoints={index.holdPointsOf.get(file.joint.id) ?? []}
                stages={index.stagesOf.get(file.joint.id) ?? []}
              />
            ))}
          </ListTable>
        </section>
      ))}
    </>
  );
}

function JointRow({
  site,
  file,
  holdPoints,
  stages,
}: Pick<Where, "site"> & {
  readonly file: JointFile;
  readonly holdPoints: readonly string[];
  readonly stages: readonly Stage[];
}): JSX.Element {
  const { joint, state, findings, batches, superseded, lots } = file;
  const reasons = findings.filter(({ severity }) => severity !== "meets").map(site.shown.say);
  return (
    <tr id={anchor("joint", joint.id)}>
      <th scope="row" class="id">
        {joint.id}
      </th>
      <td>
        {joint.title}
        {jointWords(joint)}
      </td>
      <td>
        <Mark of={state} />
      </td>
      <td>{reasons.length === 0 ? JOINT_MEANS[state] : reasons.join(" ")}</td>
      <td>
        <Inside kind="batch" ids={batches} />
        {superseded.length === 0 ? null : (
          <>
            {" "}
            taken out: <Inside kind="batch" ids={superseded} />
          </>
        )}
        {stages.map((stage) => (
          <>
            {" "}
            {dateWords(stage.day)}: {stageWords(stage)}
            {stage.batches.length === 0 ? null : ", "}
            <Inside kind="batch" ids={stage.batches} />
            {stage.complete === true ? ", said to be complete" : ""}.
          </>
        ))}
      </td>
      <td>{lots.join(", ")}</td>
      <td>
        <Inside kind="hold point" ids={holdPoints} />
      </td>
    </tr>
  );
}

/** Links within the document, which stay good in a PDF. */
export function Inside({ kind, ids }: { readonly kind: Kind; readonly ids: readonly string[] }): JSX.Element {
  return (
    <>
      {ids.map((id, at) => (
        <>
          {at > 0 ? ", " : ""}
          <a class="id" href={`#${anchor(kind, id)}`}>
            {id}
          </a>
        </>
      ))}
    </>
  );
}
