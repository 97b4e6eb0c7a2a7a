/** What was put on, where, how, and what the record shows of it. */
import type { JSX } from "preact";
import { type CoatRow, coatRows } from "../../../src/pages/ledgers/coats.ts";
import { WITHHELD } from "../../../src/facts/visibility.ts";
import type { Coat } from "../../../src/facts/types.ts";
import { Mark } from "../../parts/mark.tsx";
import { To } from "../../shell/link.tsx";
import { Noted } from "../../shell/page.tsx";
import { EntryLink, Id, ListTable, type Where } from "../parts.tsx";

interface TableProps extends Where {
  readonly rows: readonly CoatRow[];
  readonly caption: string;
}

export function CoatTable({ rows, caption, site, from }: TableProps): JSX.Element {
  return (
    <ListTable caption={caption} heads={["Where", "Assembly", "Coat", "Put on", "Lot", "How", "Verdict", "Taken off"]}>
      {rows.map((row) => (
        <CoatLine row={row} site={site} from={from} />
      ))}
    </ListTable>
  );
}

function CoatLine({ row, site, from }: Where & { readonly row: CoatRow }): JSX.Element {
  const { file, product, how, off } = row;
  const { coat } = file;
  return (
    <tr>
      <th scope="row" class="plainly">
        {coat.where}
        <Noted note={coat.note} />
      </th>
      <td>
        <To site={site} from={from} to={{ kind: "assembly", id: coat.assembly }}>
          {site.shown.record.assemblies.get(coat.assembly)?.title ?? coat.assembly}
        </To>
      </td>
      <td>
        {coat.coat} of{" "}
        <To site={site} from={from} to={{ kind: "finish", id: coat.finish }}>
          {product}
        </To>
      </td>
      <td>
        <EntryLink site={site} from={from} id={coat.entry} />
      </td>
      <td>
        <CoatLots coat={coat} site={site} from={from} />
      </td>
      <td class="stock__words">
        {how}
        <Apart coat={coat} />
      </td>
      <td class="stock__words">
        <Mark of={file.verdict} />
        <Told row={row} site={site} from={from} />
      </td>
      <td>{off === "" ? "" : off}</td>
    </tr>
  );
}

/** What was kept bare, and what was taken off before. */
function Apart({ coat: { bare, stripped } }: { readonly coat: Coat }): JSX.Element {
  return (
    <>
      {bare === undefined ? null : <p class="quiet">Kept bare: {bare}</p>}
      {stripped === undefined ? null : <p class="quiet">Taken off before: {stripped}</p>}
    </>
  );
}

function Told({ row: { file, told }, site, from }: Where & { readonly row: CoatRow }): JSX.Element {
  const { departure } = file.coat;
  return (
    <>
      {told.map((sentence) => (
        <p class="quiet">{sentence}</p>
      ))}
      {departure === undefined ? null : (
        <p class="quiet">
          Departure{" "}
          {departure === WITHHELD ? (
            "that this edition does not show"
          ) : (
            <Id site={site} from={from} kind="departure" id={departure} />
          )}
        </p>
      )}
    </>
  );
}

export function CoatLots({ coat: { lots }, site, from }: Where & { readonly coat: Coat }): JSX.Element {
  if (lots.length === 0) return <span class="quiet">not noted</span>;
  return (
    <>
      {lots.map((id, at) => (
        <>
          {at > 0 ? ", " : ""}
          {id === WITHHELD ? (
            "a lot that this edition does not show"
          ) : (
            <Id site={site} from={from} kind="lot" id={id} />
          )}
        </>
      ))}
    </>
  );
}

/** Those of an assembly itself, and what is planned of it: what is within it has a page of its own. */
export function CoatsOn({ id, ...where }: Where & { readonly id: string }): JSX.Element | null {
  const { record } = where.site.shown;
  const rows = coatRows(where.site.shown, ({ assembly }) => assembly === id);
  const planned = record.assemblies.get(id)?.coats ?? [];
  if (rows.length === 0 && planned.length === 0) return null;
  return (
    <section class="section">
      <h2>Put on</h2>
      {planned.map(({ where: place, finish, coats, before }) => (
        <p class="quiet">
          Planned {before.startsWith("return") ? "" : "before "}
          {before}: {place}, {record.finishes.get(finish)?.title ?? finish}
          {coats === undefined ? "" : `, ${coats} ${coats === 1 ? "coat" : "coats"}`}.
        </p>
      ))}
      {rows.length === 0 ? null : <CoatTable rows={rows} caption="What was put on" {...where} />}
    </section>
  );
}
