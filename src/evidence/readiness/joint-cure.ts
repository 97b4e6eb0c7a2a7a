/** Whether what is in a joint has cured, and what was done to the joint before it had. */
import { defined } from "../../defined.ts";
import type { Batch, Day, JointSpec } from "../../facts/types.ts";
import { type JointCure, jointCure } from "../cure/joint-cure.ts";
import type { Finder } from "../finding.ts";
import { lookUp, orderOf, type RecordIndex } from "../record-index.ts";
import type { Finding } from "../types.ts";
import { insideOf, jointsOf } from "./order.ts";

/** That of the batch in the joint that cures last; one of which nothing shows when counts as later than all. */
export function lastCure(index: RecordIndex, joint: JointSpec, batches: readonly Batch[]): JointCure | undefined {
  const end = ({ at = Number.POSITIVE_INFINITY }: JointCure): number => at;
  const cures = batches.map((batch) => jointCure(index, joint, batch));
  return cures.reduce<JointCure | undefined>((a, b) => (a === undefined || end(b) > end(a) ? b : a), undefined);
}

/** Of each session that which cures last: what was done after one session may have been too soon for it, whatever came later. */
export function cureFindings(
  index: RecordIndex,
  joint: JointSpec,
  sessions: readonly (readonly Batch[])[],
  find: Finder,
): Finding[] {
  const cures = new Set(sessions.flatMap((batches) => lastCure(index, joint, batches) ?? []));
  return [...cures].flatMap((cure) => [stateOf(index, cure, find), ...tooSoon(index, joint, cure, find)]);
}

function stateOf(index: RecordIndex, cure: JointCure, find: Finder): Finding {
  const { batch, at, expected, from, time, shown, limit } = cure;
  const beside = { limit, alsoOn: refsOf(cure) };
  const hour = (instant: number | undefined): string | undefined =>
    instant === undefined ? undefined : index.clock.hourBy(instant);
  if (at !== undefined && at <= index.now) {
    const { assumed } = cure;
    const values = defined({ batch: batch.id, until: index.clock.hourBy(at), assumed });
    return find("joint-cure/reached", "meets", values, beside);
  }
  const end = at ?? expected;
  const isAhead = from + time > index.now || (end !== undefined && end > index.now);
  return isAhead
    ? find("joint-cure/waits", "waits", { batch: batch.id, until: hour(end) }, beside)
    : find("joint-cure/not-shown", "unproven", { batch: batch.id, shown, asked: time }, beside);
}

const refsOf = ({ batch, restsOn }: JointCure) => [
  { kind: "batch", id: batch.id } as const,
  { kind: "entry", id: batch.entry } as const,
  ...restsOn,
];

function tooSoon(index: RecordIndex, joint: JointSpec, cure: JointCure, find: Finder): Finding[] {
  const { batch, at } = cure;
  const glued = orderOf(index, batch.entry);
  const isTooSoon = ({ entry }: { readonly entry: string }): boolean =>
    orderOf(index, entry) > glued && lookUp(index.entries, entry).dayStart < (at ?? Number.POSITIVE_INFINITY);
  const until = at === undefined ? {} : { until: index.clock.hourBy(at) };
  const of = (day: Day) => ({ batch: batch.id, day, ...until });
  const beside = (entry: string) => ({ alsoOn: [...refsOf(cure), { kind: "entry", id: entry } as const] });
  const above = aboveOf(index, joint.assembly);
  const { signed, opened, weighed, scales } = index.memo.once(index, eventsIn);
  return [
    ...(signed.get(joint.id) ?? []).filter(isTooSoon).map(({ day, entry, holdPoint, kind }) => {
      const rests = beside(entry);
      const alsoOn = [...rests.alsoOn, { kind: "hold point", id: holdPoint } as const];
      return find("joint-cure/signed", "caution", { ...of(day), holdPoint, kind }, { alsoOn });
    }),
    ...[...new Set(above.flatMap((id) => opened.get(id) ?? []))].filter(isTooSoon).flatMap(({ day, entry, joints }) => {
      const others = joints.filter((id) => id !== joint.id);
      return others.length === 0
        ? []
        : [find("joint-cure/reworked", "caution", { ...of(day), joints: others }, beside(entry))];
    }),
    ...above
      .flatMap((id) => weighed.get(id) ?? [])
      .filter(isTooSoon)
      .map(({ day, entry, part }) => find("joint-cure/weighed", "caution", { ...of(day), part }, beside(entry))),
    ...scales.filter(isTooSoon).map(({ day, entry }) => find("joint-cure/weighed", "caution", of(day), beside(entry))),
  ];
}

/** The assembly and those that hold it. */
function aboveOf({ record }: RecordIndex, id: string): string[] {
  const found: string[] = [];
  for (let at: string | undefined = id; at !== undefined; at = record.assemblies.get(at)?.parent) found.push(at);
  return found;
}

/** What loads joints or closes them in: by joint, by assembly, or of the whole aircraft. */
function eventsIn(index: RecordIndex) {
  const entries = index.record.entries;
  const joint = (id: string): JointSpec => lookUp(index.joints, id);
  const looks = [...index.inspections.values()].flat().filter(({ result }) => result === "signed");
  return {
    signed: listed(
      looks.flatMap(({ holdPoint, day, entry }) => {
        const point = lookUp(index.holdPoints, holdPoint);
        const seen = { day, entry, holdPoint, kind: point.kind };
        return jointsOf(point, insideOf(index, point)).map((id) => [id, seen] as const);
      }),
    ),
    opened: listed(
      entries
        .flatMap(({ reworks }) => reworks)
        .flatMap((one) => [...new Set(one.joints.map((id) => joint(id).assembly))].map((id) => [id, one] as const)),
    ),
    weighed: listed(entries.flatMap(({ weighed }) => weighed).map((one) => [one.assembly, one] as const)),
    scales: entries.flatMap(({ scales }) => scales ?? []),
  };
}

function listed<T>(pairs: readonly (readonly [string, T])[]): ReadonlyMap<string, readonly T[]> {
  const map = new Map<string, T[]>();
  for (const [key, value] of pairs) {
    const list = map.get(key);
    if (list === undefined) map.set(key, [value]);
    else list.push(value);
  }
  return map;
}
