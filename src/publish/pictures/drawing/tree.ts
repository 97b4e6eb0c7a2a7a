/** A drawing as it will be written: nothing is in it but what `allowed.ts` names. */
export interface DrawnElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: (DrawnElement | string)[];
  /** Where it stands in its file; both from 1. */
  readonly line: number;
  readonly column: number;
}

export function isElement(node: DrawnElement | string): node is DrawnElement {
  return typeof node !== "string";
}
