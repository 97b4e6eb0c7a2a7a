import type { JSX } from "preact";
import type { Remains } from "../../../src/pages/ledgers/remains.ts";
import { Findings } from "../../parts/findings.tsx";
import { To } from "../../shell/link.tsx";
import { Noted } from "../../shell/page.tsx";
import { Id, type Level, ListTable, Section, type Where } from "../parts.tsx";

/** What was weighed as left in lots, and whether that is what the batches have left. */
export function RemainsSection({
  remains: { rows, findings },
  caption,
  level,
  site,
  from,
}: Where & { readonly remains: Remains; readonly caption: string; readonly level?: Level }): JSX.Element | null {
  if (rows.length + findings.length === 0) return null;
  return (
    <Section id="weighed-as-left" title="What was weighed as left" {...(level === undefined ? {} : { level })}>
      <ListTable caption={caption} heads={["Day", "Lot", { word: "Left", number: true }]}>
        {rows.map(({ entry, day, lot, left, note }) => (
          <tr>
            <td>
              <To site={site} from={from} to={{ kind: "entry", id: entry }}>
                {day}
              </To>
              <Noted note={note} />
            </td>
            <th scope="row">
              <Id site={site} from={from} kind="lot" id={lot} />
            </th>
            <td class="number">{left}</td>
          </tr>
        ))}
      </ListTable>
      <Findings site={site} from={from} findings={findings} about={[]} />
    </Section>
  );
}
