import type { JSX } from "preact";
import type { HoursLine } from "../../src/facts/types.ts";
import { minutesOf } from "../../src/pages/story/story.ts";
import { hoursWords } from "../../src/words/durations.ts";
import { Noted } from "../shell/page.tsx";
import { To } from "../shell/link.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

/** Who worked how long at what that day, and who looked on. */
export function Hours(props: SheetProps): JSX.Element | null {
  const { hours, visits } = props.entry;
  if (hours.length + visits.length === 0) return null;
  return (
    <SheetPart title="Hours">
      <table class="sheet__hours">
        <thead class="unseen">
          <tr>
            <th scope="col">Who and what</th>
            <th scope="col">Time</th>
          </tr>
        </thead>
        <tbody>
          {[...hours, ...visits].map((line) => (
            <Line {...props} line={line} isVisit={visits.includes(line)} />
          ))}
        </tbody>
        {hours.length < 2 ? null : (
          <tfoot>
            <tr>
              <th scope="row">{visits.length === 0 ? "Together" : "Worked together"}</th>
              <td class="number">{hoursWords(minutesOf(props.entry))}</td>
            </tr>
          </tfoot>
        )}
      </table>
    </SheetPart>
  );
}

interface LineProps extends SheetProps {
  readonly line: HoursLine;
  readonly isVisit: boolean;
}

function Line({ site, from, entry, line, isVisit }: LineProps): JSX.Element {
  const { who, task, minutes, assembly, hand, where } = line;
  const said = isVisit ? "visiting, not counted as worked" : hand && `${hand} hand`;
  return (
    <tr>
      <td>
        {[site.shown.nameOf(who), task, where, said].filter(Boolean).join(", ")}
        {assembly === undefined || assembly === entry.assembly ? null : (
          <>
            {" "}
            on{" "}
            <To site={site} from={from} to={{ kind: "assembly", id: assembly }}>
              {site.shown.record.assemblies.get(assembly)?.title ?? assembly}
            </To>
          </>
        )}
        {line.from === undefined ? null : (
          <span class="quiet">
            , {line.from} to {line.to}
          </span>
        )}
        <Noted note={line.note} />
      </td>
      <td class="number">{hoursWords(minutes)}</td>
    </tr>
  );
}
