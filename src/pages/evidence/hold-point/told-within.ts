/** What is told of a hold point by the papers of those within it, which must be passed before it. */
import { comesFirst } from "../../../evidence/readiness/order.ts";
import type { HoldPointFile, JointFile, Need } from "../../../evidence/types.ts";
import type { HoldPoint, Kind } from "../../../facts/types.ts";
import type { Shown } from "../../../editions/shown.ts";
import { JOINT_STATES } from "../verdict-words.ts";

/** Of a hold point within, what its own paper tells since none further within asks for it. */
export interface Within {
  readonly file: HoldPointFile;
  /** The worst first. */
  readonly joints: readonly JointFile[];
  /** What it needs that the outer one needs too, in the same words. */
  readonly needs: readonly Need[];
}

export interface ToldWithin {
  readonly points: readonly Within[];
  /** Of the outer one what none within needs. */
  readonly needs: readonly Need[];
  readonly tells: (kind: Kind, id: string) => boolean;
  /** Those whose departures and open items one of these papers lists. */
  readonly assemblies: ReadonlySet<string>;
}

const NOTHING = { points: [], tells: () => false, assemblies: new Set<string>() };

/** Where a hold point tells all by itself. */
export const allByItself = ({ needs }: HoldPointFile): ToldWithin => ({ ...NOTHING, needs });

/** Each thing is told by the innermost hold point that asks for it, or by the one at hand if that asks for it alone. */
export function toldWithin(shown: Shown, file: HoldPointFile): ToldWithin {
  const earlier = earlierThan(shown, file, [...shown.evidence.holdPoints.values()]);
  const asked = new Map(earlier.map((one) => [one, askedBy(one)]));
  const of = askedBy(file);
  const points = earlier.map((one): Within => {
    const further = earlierThan(shown, one, earlier).flatMap((other) => asked.get(other) ?? []);
    const isTold = (what: keyof Asked, id: string): boolean =>
      of[what].has(id) && further.every((other) => !other[what].has(id));
    return {
      file: one,
      joints: one.joints
        .filter((id) => isTold("joints", id))
        .flatMap((id) => shown.evidence.joints.get(id) ?? [])
        .sort((a, b) => JOINT_STATES.indexOf(a.state) - JOINT_STATES.indexOf(b.state)),
      needs: one.needs.filter((need) => isTold("needs", said(need))),
    };
  });
  const all = [...asked.values()];
  const told = new Set(
    points.flatMap(({ joints, needs }) => [
      ...joints.map(({ joint }) => `joint ${joint.id}`),
      ...needs.map(({ about }) => `${about.kind} ${about.id}`),
    ]),
  );
  return {
    points,
    needs: file.needs.filter((need) => !all.some(({ needs }) => needs.has(said(need)))),
    tells: (kind, id) => told.has(`${kind} ${id}`),
    assemblies: new Set(
      points.flatMap(({ file: { holdPoint }, joints }) => [
        holdPoint.assembly,
        ...joints.map(({ joint }) => joint.assembly),
      ]),
    ),
  };
}

interface Asked {
  readonly joints: ReadonlySet<string>;
  readonly needs: ReadonlySet<string>;
}

const said = (need: Need): string => JSON.stringify(need);

const askedBy = ({ joints, needs }: HoldPointFile): Asked => ({
  joints: new Set(joints),
  needs: new Set(needs.map(said)),
});

/** Of hold points those inside one that must be passed before it. */
function earlierThan(
  { evidence }: Shown,
  { holdPoint }: HoldPointFile,
  of: readonly HoldPointFile[],
): readonly HoldPointFile[] {
  const own: ReadonlySet<string> = new Set(evidence.assemblies.get(holdPoint.assembly)?.within);
  const isInside = ({ assembly }: HoldPoint): boolean => holdPoint.kind === "flight" || own.has(assembly);
  return of.filter((other) => isInside(other.holdPoint) && comesFirst(other.holdPoint, holdPoint, own));
}
