import type { JSX } from "preact";
import { waiting } from "../../src/pages/evidence/waiting.ts";
import { Id, ListTable, Section, type Where } from "./parts.tsx";

/** Nothing where no piece waits. */
export function Waiting({ site, from }: Where): JSX.Element | null {
  const rows = waiting(site.shown);
  if (rows.length === 0) return null;
  return (
    <Section id="waiting" title="Test pieces that wait to be broken">
      <ListTable
        caption="When they may be broken: by days and by warmth"
        heads={["Batch", "Pieces", "May be broken from", "Reckoned"]}
      >
        {rows.map(({ batch, pieces, from: hour, sortBy, now, by }) => (
          <tr>
            <th scope="row">
              <Id site={site} from={from} kind="batch" id={batch} />
            </th>
            <td>
              {pieces.map((id, at) => (
                <>
                  {at > 0 ? ", " : ""}
                  <Id site={site} from={from} kind="piece" id={id} />
                </>
              ))}
            </td>
            <td data-sort={sortBy}>
              {now ? <strong>{hour}</strong> : hour}
              {now ? " (reached)" : ""}
            </td>
            <td>{by}</td>
          </tr>
        ))}
      </ListTable>
    </Section>
  );
}
