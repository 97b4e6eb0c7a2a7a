/** Tables of earlier hours, found without problems, as facts. */
import type { EarlierHours, EarlierLine } from "../../facts/build/earlier-hours.ts";
import { factOf } from "../../facts/typing.ts";
import type { EarlierTable } from "./read.ts";

export function earlierOf({ file, id, beside, rows, setAside }: EarlierTable): EarlierHours {
  return {
    id,
    file,
    place: { file, line: 1, column: 1 },
    audience: beside?.spec?.for ?? "public",
    title: beside?.spec?.title ?? id,
    body: beside?.body ?? [],
    setAside,
    lines: rows.flatMap(({ row, span, who, task, time, minutes, assembly, source }) => {
      if (span === undefined || task === undefined || time === undefined || source === undefined)
        throw new Error(`${file} has problems and cannot be trusted`);
      const said = { place: row.place("span"), span, task, typed: time.typed, assembly, source };
      return who.map((one, at) => factOf<EarlierLine>({ ...said, who: one, minutes: minutes[at] ?? 0 }));
    }),
  };
}
