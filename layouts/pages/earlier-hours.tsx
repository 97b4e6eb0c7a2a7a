import type { JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import type { EarlierView } from "../../src/pages/forecast/hours.ts";
import type { EarlierHours } from "../../src/facts/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { spanWords } from "../../src/words/dates.ts";
import { hoursWords } from "../../src/words/durations.ts";
import { ListTable } from "../evidence/parts.tsx";
import { Prose } from "../shell/page.tsx";

interface Props {
  readonly site: Site;
  readonly earlier: readonly EarlierView[];
  readonly from: string;
}

/** Tables of hours from before the record was kept, and their lines folded away. */
export function Earlier({ site, earlier, from }: Props): JSX.Element | null {
  if (earlier.length === 0) return null;
  return (
    <section class="section">
      <h2>From before this record</h2>
      <p class="measure">
        Hours that were noted elsewhere before this record was kept. They are counted in the sums above. Where only a
        month or a year is known they stand in no week, and the pace and the forecast take no notice of the time before
        its end.
      </p>
      <ListTable
        caption="Tables of earlier hours"
        heads={[
          "Table",
          "From",
          "To",
          { word: "Hours", number: true },
          { word: "Of these without a day", number: true },
        ]}
      >
        {earlier.map(({ table, minutes, spanned, first, last }) => (
          <tr id={anchor("earlier hours", table.id)}>
            <th scope="row">{table.title}</th>
            <td class="day">{spanWords(first)}</td>
            <td class="day">{spanWords(last)}</td>
            <td class="number">{hoursWords(minutes)}</td>
            <td class="number">{spanned === 0 ? "none" : hoursWords(spanned)}</td>
          </tr>
        ))}
      </ListTable>
      {earlier.map(({ table }) => (
        <SetAside of={table} />
      ))}
      {earlier.map((one) => (
        <EarlierLines site={site} of={one} />
      ))}
      {earlier
        .flatMap(({ table }) => table.body)
        .map((passage) => (
          <Prose site={site} html={site.prose(passage, from)} />
        ))}
    </section>
  );
}

/** What is in no sum is told where the sums are. */
function SetAside({ of: { title, setAside } }: { readonly of: EarlierHours }): JSX.Element | null {
  if (setAside === 0) return null;
  const lines = setAside === 1 ? "One line" : `${setAside} lines`;
  return (
    <p class="measure">
      {lines} of {title} {setAside === 1 ? "is" : "are"} in no sum: set aside, since no hours could be read there.
    </p>
  );
}

function EarlierLines({ site, of }: { readonly site: Site; readonly of: EarlierView }): JSX.Element {
  const { nameOf, record } = site.shown;
  const { lines } = of.table;
  return (
    <details>
      <summary>{of.table.title}, line by line</summary>
      {lines.length > MOST_LINES ? (
        <p>
          The first {MOST_LINES} of {lines.length}; the ledger of earlier hours has all.
        </p>
      ) : null}
      <ListTable
        caption={of.table.title}
        heads={["When", "Who", "Task", "Assembly", { word: "Hours", number: true }, "Where it comes from"]}
      >
        {lines.slice(0, MOST_LINES).map(({ span, who, task, assembly, minutes, source }) => (
          <tr>
            <td class="day">{spanWords(span.typed)}</td>
            <td>{nameOf(who)}</td>
            <td>{task}</td>
            <td>{assembly === undefined ? "" : (record.assemblies.get(assembly)?.title ?? "")}</td>
            <td class="number">{hoursWords(minutes)}</td>
            <td>{source}</td>
          </tr>
        ))}
      </ListTable>
    </details>
  );
}

/** So that the page stays light; the ledger has every line. */
const MOST_LINES = 400;
