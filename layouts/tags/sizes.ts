/** Sheets of labels as they are sold for printers, A4 (210 × 297 mm), by their sizes in mm. Common practice, no source. */
export interface TagSheet {
  /** Of its page. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly across: number;
  readonly down: number;
  /** From the paper's edge to the first label. */
  readonly left: number;
  readonly top: number;
  /** From one label to the next beside it; those below each other touch. */
  readonly gap: number;
  /** Side of the code with its quiet zone. */
  readonly code: number;
}

export const TAG_SHEETS: readonly TagSheet[] = [
  { name: "70x37", width: 70, height: 37, across: 3, down: 8, left: 0, top: 0.5, gap: 0, code: 29 },
  { name: "63x38", width: 63.5, height: 38.1, across: 3, down: 7, left: 7.2, top: 15.1, gap: 2.5, code: 30 },
  { name: "99x38", width: 99.1, height: 38.1, across: 2, down: 7, left: 4.7, top: 15.1, gap: 2.5, code: 30 },
  { name: "38x21", width: 38.1, height: 21.2, across: 5, down: 13, left: 4.7, top: 10.7, gap: 2.5, code: 18.5 },
];

export const sizeWords = ({ width, height, across, down }: TagSheet): string =>
  `${width} × ${height} mm, ${across * down} a sheet`;

/** Lower labels have smaller letters, mm. */
const LOW = 25;

/** Rules of a sheet on paper: what lies on screen one after another stands there where its label is. */
export function tagRules({ width, height, across, down, left, top, gap, code }: TagSheet): string {
  return [
    "@page{size:210mm 297mm;margin:0}",
    `.tag{width:${width}mm;height:${height}mm}`,
    `.tag svg{width:${code}mm;height:${code}mm}`,
    ...(height < LOW
      ? [".tag{font-size:2.3mm}.tag__id{font-size:3.1mm}.tag__kind{font-size:2mm}.tag__name{display:none}"]
      : []),
    "@media print{",
    `.tags__sheet{width:210mm;height:297mm;padding:${top}mm 0 0 ${left}mm;display:grid;grid-template-columns:repeat(${across},${width}mm);`,
    `grid-template-rows:repeat(${down},${height}mm);gap:0 ${gap}mm}`,
    "}",
  ].join("");
}
