/** Parts bought in, where they were fitted and what took their place. */
import type { JSX } from "preact";
import { type FittedRow, fittedRows, isWithheld } from "../../../src/pages/ledgers/fitted.ts";
import { To } from "../../shell/link.tsx";
import { EntryLink, Id, ListTable, type Where } from "../parts.tsx";

export function FittedTable({
  rows,
  caption,
  site,
  from,
}: Where & { readonly rows: readonly FittedRow[]; readonly caption: string }): JSX.Element {
  return (
    <ListTable
      caption={caption}
      heads={[
        "Where",
        "Assembly",
        "Fitted",
        "Lot",
        "Serial number",
        { word: "How many", number: true },
        "Certificate",
        "In place of",
        "Taken out",
      ]}
    >
      {rows.map((row) => (
        <FittedLine row={row} site={site} from={from} />
      ))}
    </ListTable>
  );
}

function FittedLine({ row, site, from }: Where & { readonly row: FittedRow }): JSX.Element {
  const { stood, assembly, lot, count, serial, certificate, out: taken } = row;
  const { fitting, out } = stood;
  return (
    <tr>
      <th scope="row" class="plainly">
        {fitting.where}
      </th>
      <td>
        <To site={site} from={from} to={{ kind: "assembly", id: fitting.assembly }}>
          {assembly}
        </To>
      </td>
      <td>
        <EntryLink site={site} from={from} id={fitting.entry} />
      </td>
      <td>
        <FittedLot id={fitting.lot} site={site} from={from} /> {lot?.title}
        {lot?.number === undefined ? "" : `, no. ${lot.number}`}
      </td>
      <td>{serial}</td>
      <td class="number">{count}</td>
      <td>{certificate}</td>
      <td>
        {fitting.replaces === undefined ? null : <FittedLot id={fitting.replaces} site={site} from={from} />}
        {fitting.why === undefined ? "" : `: ${fitting.why}`}
      </td>
      <td>
        {out === undefined ? (
          "stands there"
        ) : (
          <>
            {taken}; now <FittedLot id={out.lot} site={site} from={from} />
          </>
        )}
      </td>
    </tr>
  );
}

export function FittedLot({ id, site, from }: Where & { readonly id: string }): JSX.Element {
  return isWithheld(id) ? (
    <>a lot that this edition does not show</>
  ) : (
    <Id site={site} from={from} kind="lot" id={id} />
  );
}

/** Those of an assembly itself: what is within it has a page of its own. */
export function FittedOn({ id, ...where }: Where & { readonly id: string }): JSX.Element | null {
  const rows = fittedRows(where.site.shown, ({ assembly }) => assembly === id);
  if (rows.length === 0) return null;
  return (
    <section class="section">
      <h2>Parts bought in</h2>
      <FittedTable rows={rows} caption="Parts bought in, and where they were fitted" {...where} />
    </section>
  );
}
