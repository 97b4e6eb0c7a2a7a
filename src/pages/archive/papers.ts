/** Papers and drawings of a record, each with what names it. */
import type { FilePath, Ref } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";

export interface Paper {
  readonly title: string;
  readonly file: FilePath;
  readonly by: Ref;
}

/** Attachments by their entries, then scans of what was said at hold points, then certificates of lots, then data sheets. */
export function papersOf({ record }: Shown): Paper[] {
  const { entries, lots, adhesives, finishes } = record;
  const sheets = [
    ...[...adhesives.values()].map((of) => ({ ...of, kind: "adhesive" as const })),
    ...[...finishes.values()].map((of) => ({ ...of, kind: "finish" as const })),
  ];
  return [
    ...entries.flatMap(({ id, attachments }) =>
      attachments.map(({ title, file }): Paper => ({ title, file, by: { kind: "entry", id } })),
    ),
    ...entries.flatMap(({ id, inspections }) =>
      inspections.flatMap(({ holdPoint, result, reference, scan }): Paper[] => {
        const paper = reference === undefined ? "" : `, ${reference}`;
        const title = `Scan for hold point ${holdPoint}, ${result}${paper}`;
        return scan === undefined ? [] : [{ title, file: scan, by: { kind: "entry", id } }];
      }),
    ),
    ...[...lots.values()].flatMap(({ id, title, certificate }): Paper[] =>
      certificate === undefined
        ? []
        : [{ title: `Certificate of lot ${id}, ${title}`, file: certificate, by: { kind: "lot", id } }],
    ),
    ...sheets.flatMap(({ id, kind, title, sheetFile }): Paper[] =>
      sheetFile === undefined ? [] : [{ title: `Data sheet of ${title}`, file: sheetFile, by: { kind, id } }],
    ),
  ];
}

export function drawingsOf({ record }: Shown): Paper[] {
  return [...record.assemblies.values()].flatMap(({ id, title, drawing }): Paper[] =>
    drawing === undefined ? [] : [{ title, file: drawing.file, by: { kind: "assembly", id } }],
  );
}
