/** The tree of assemblies, and the joints that hold points name. */
import { type CheckContext, expectId, expectPicture, report, soundOf } from "./context.ts";

type Parents = ReadonlyMap<string, string | undefined>;

export function checkAssemblies(context: CheckContext): void {
  const assemblies = soundOf(context, "assembly");
  const parents: Parents = new Map(assemblies.map(({ id, spec }) => [id, spec.parent]));
  const homes = new Map(
    assemblies.flatMap(({ id, spec }) => (spec.joints ?? []).map((joint) => [joint.id, id] as const)),
  );
  const told = new Set<string>();
  for (const filed of assemblies) {
    expectId(context, filed, ["parent"], ["assembly"], filed.spec.parent);
    expectPicture(context, filed, ["drawing", "file"], filed.spec.drawing?.file);
    const circle = circleFrom(filed.id, parents);
    if (circle && !told.has(filed.id)) {
      circle.forEach((id) => told.add(id));
      report(context, filed, ["parent"], {
        code: "part-of-itself",
        message:
          circle.length === 1
            ? "this assembly is a part of itself"
            : "these assemblies are parts of each other, round in a circle",
        expected: "assemblies that end at one without a parent",
        found: [...circle, filed.id].join(" in "),
        mend: "take `parent:` from the one that is not a part of another",
      });
    }
    (filed.spec.hold_points ?? []).forEach((point, at) =>
      (point.joints ?? []).forEach((joint, index) => {
        const path = ["hold_points", at, "joints", index];
        if (!expectId(context, filed, path, ["joint"], joint)) return;
        const home = homes.get(joint);
        if (home !== undefined && !isWithin(home, filed.id, parents)) {
          report(context, filed, path, {
            code: "foreign-joint",
            message: `${joint} is a joint of ${home}, which is no part of ${filed.id}`,
            expected: `a joint of ${filed.id} or of an assembly within it`,
            found: joint,
            mend: `move the hold point to the assembly that holds both, or take the joint away`,
          });
        }
      }),
    );
  }
}

/** The way from an assembly up to itself, or undefined. */
function circleFrom(start: string, parents: Parents): string[] | undefined {
  const way = [start];
  let at = parents.get(start);
  while (at !== undefined && at !== start && !way.includes(at)) {
    way.push(at);
    at = parents.get(at);
  }
  return at === start ? way : undefined;
}

function isWithin(inner: string, outer: string, parents: Parents): boolean {
  const seen = new Set<string>();
  for (let at: string | undefined = inner; at !== undefined && !seen.has(at); at = parents.get(at)) {
    if (at === outer) return true;
    seen.add(at);
  }
  return false;
}
