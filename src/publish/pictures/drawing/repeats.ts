import { LIMITS } from "../../../facts/limits.ts";
import { type DrawnElement, isElement } from "./tree.ts";

/**
 * The reference by which a drawing draws more elements than it may, found by going through it as a browser does: ten
 * elements that each
 * use the one before ten times are ten thousand million shapes, at which a browser stands still. What refers to itself
 * is not drawn again.
 */
export function endlessIn(root: DrawnElement): DrawnElement | undefined {
  const byId = idsIn(root);
  const open = new Set<DrawnElement>();
  let drawn = 0;
  const goes = (element: DrawnElement): DrawnElement | undefined => {
    if (open.has(element)) return undefined;
    drawn += 1;
    if (drawn > LIMITS.drawing.drawn || open.size > LIMITS.drawing.chain) return element;
    open.add(element);
    let beyond: DrawnElement | undefined;
    for (const id of referencesOf(element)) {
      const target = byId.get(id);
      if (target !== undefined && goes(target) !== undefined) beyond = element;
      if (beyond !== undefined) return beyond;
    }
    for (const child of element.children.filter(isElement)) {
      beyond = goes(child);
      if (beyond !== undefined) return beyond;
    }
    open.delete(element);
    return undefined;
  };
  return goes(root);
}

function idsIn(root: DrawnElement): ReadonlyMap<string, DrawnElement> {
  const byId = new Map<string, DrawnElement>();
  const collect = (element: DrawnElement): void => {
    const id = element.attributes.get("id");
    if (id !== undefined && !byId.has(id)) byId.set(id, element);
    for (const child of element.children.filter(isElement)) collect(child);
  };
  collect(root);
  return byId;
}

function referencesOf({ attributes }: DrawnElement): string[] {
  return [...attributes].flatMap(([name, value]) =>
    name === "href" || name === "xlink:href"
      ? [value.slice(1)]
      : [...value.matchAll(/url\(["']?#([^"')]+)["']?\)/g)].map(([, id = ""]) => id),
  );
}
