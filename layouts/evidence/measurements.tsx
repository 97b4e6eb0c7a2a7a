import type { JSX } from "preact";
import { drawingWords, measurements, offWords, pairs } from "../../src/pages/evidence/evidence-lists.ts";
import { WITHHELD } from "../../src/facts/visibility.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import type { MeasurementFile } from "../../src/evidence/types.ts";
import type { Measurement } from "../../src/facts/types.ts";
import { Mark } from "../parts/mark.tsx";
import { Noted, Page } from "../shell/page.tsx";
import { AssemblyLink, LIST_SCRIPTS, ListPlace } from "./lists.tsx";
import { EntryLink, Id, ListTable, None, Section, Title, type Where } from "./parts.tsx";

const number = (word: string): { word: string; number: true } => ({ word, number: true });

export function Measurements({ site }: Pick<Where, "site">): JSX.Element {
  const from = "measurements.html";
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Measurements"
      scripts={LIST_SCRIPTS}
      description="What was measured, against the drawing and its tolerance, and sides against each other."
    >
      <Title place={<ListPlace from={from} />} title="Measurements">
        <p class="title__lead">
          What was measured, against the drawing and its tolerance, and sides against each other.
        </p>
      </Title>
      <Section id="pairs" title="Sides against each other">
        <PairTable list site={site} from={from} />
      </Section>
      <Section id="measurements" title="Against the drawing">
        <MeasurementTable list site={site} from={from} />
      </Section>
      <Section id="how" title="What counts">
        <div class="prose">
          <p>
            Equal to a limit is within it. A measure that is out stands against every hold point of its assembly until
            it is measured again within the same limits, in the same words and in a later entry, or a departure answers
            for it.
          </p>
          <p>
            Of each side of a pair the last measure counts. The difference is left minus right, front minus back, or
            upper minus lower; without a tolerance of its own a pair has no verdict.
          </p>
        </div>
      </Section>
    </Page>
  );
}

/** All pairs, or those with a side on one of the assemblies. */
export function PairTable({
  list = false,
  of,
  site,
  from,
}: Where & { readonly list?: boolean; readonly of?: ReadonlySet<string> }): JSX.Element {
  const rows = pairs(site.shown).filter(({ pair }) => of === undefined || pair.now.some((one) => of.has(one.assembly)));
  if (rows.length === 0) return <None>No sides were measured against each other.</None>;
  return (
    <ListTable
      list={list}
      caption="Pairs of sides, those that differ by too much first"
      heads={[
        "Pair",
        "Assembly",
        "One side",
        "The other",
        number("Difference"),
        number("May differ by"),
        "Verdict",
        "Departure",
      ]}
    >
      {rows.map(({ pair, assemblies, sides, difference, departures }) => (
        <tr>
          <th scope="row">{pair.id}</th>
          <td>{assemblies.join(", ")}</td>
          {[0, 1].map((at) => (
            <td>
              <Side side={sides[at]} hidden={pair.verdict !== "one side"} site={site} from={from} />
            </td>
          ))}
          <td class="number" data-sort={pair.difference}>
            {difference}
          </td>
          <td class="number">
            {pair.tolerance?.typed ??
              (["out", "within", "estimated"].includes(pair.verdict) ? "not shown in this edition" : "not stated")}
          </td>
          <td>
            <Mark of={pair.verdict} />
            <Stands entries={pair.stands} site={site} from={from} />
          </td>
          <td>
            <DepartureIds ids={departures} site={site} from={from} />
          </td>
        </tr>
      ))}
    </ListTable>
  );
}

function Side({
  side,
  hidden,
  site,
  from,
}: Where & {
  readonly side: { readonly side: string; readonly found: string; readonly entry: string } | undefined;
  readonly hidden: boolean;
}): JSX.Element {
  if (side === undefined) return <span class="quiet">{hidden ? "not shown in this edition" : "not measured yet"}</span>;
  return (
    <>
      {side.side} {side.found}, <EntryLink site={site} from={from} id={side.entry} />
    </>
  );
}

function DepartureIds({ ids, site, from }: Where & { readonly ids: readonly string[] }): JSX.Element {
  return (
    <>
      {ids.map((id, at) => (
        <>
          {at > 0 ? ", " : ""}
          <DepartureId id={id} site={site} from={from} />
        </>
      ))}
    </>
  );
}

function DepartureId({ id, site, from }: Where & { readonly id: string }): JSX.Element {
  return id === WITHHELD ? <>not shown in this edition</> : <Id site={site} from={from} kind="departure" id={id} />;
}

/** Where a measure that was out has since been found within its limits. */
export function Again({ again, site, from }: Where & { readonly again: Measurement | undefined }): JSX.Element | null {
  return again === undefined ? null : (
    <>
      {" "}
      then {again.found.typed}, <EntryLink site={site} from={from} id={again.entry} />
    </>
  );
}

/** Where an amendment that no second person saw would better the verdict. */
function Stands({
  entries,
  site,
  from,
}: Where & { readonly entries: readonly string[] | undefined }): JSX.Element | null {
  return entries === undefined ? null : (
    <p class="quiet">
      It stays so: amended by the builder alone
      {entries.map((id) => (
        <>
          , <EntryLink site={site} from={from} id={id} />
        </>
      ))}
      , and no second person who saw the source is named there.
    </p>
  );
}

export function MeasurementTable({
  list = false,
  site,
  from,
  rows = measurements(site.shown),
}: Where & { readonly list?: boolean; readonly rows?: readonly MeasurementFile[] }): JSX.Element {
  if (rows.length === 0) return <None>No measurements.</None>;
  return (
    <ListTable
      list={list}
      caption="Measurements, the oldest first"
      heads={[
        "Day",
        "What",
        "Assembly",
        number("Drawing"),
        number("Tolerance"),
        number("Found"),
        number("Off by"),
        "Verdict",
        "Departure",
      ]}
    >
      {rows.map((row) => (
        <MeasurementRow row={row} site={site} from={from} />
      ))}
    </ListTable>
  );
}

function MeasurementRow({ row, site, from }: Where & { readonly row: MeasurementFile }): JSX.Element {
  const { measurement } = row;
  const { units } = site.shown.record.aircraft;
  return (
    <tr>
      <td data-sort={measurement.entry}>
        <EntryLink site={site} from={from} id={measurement.entry} />
      </td>
      <td>
        {measurement.what}
        <Noted note={measurement.note} />
        {measurement.joint === undefined ? null : (
          <>
            , <Id site={site} from={from} kind="joint" id={measurement.joint} />
          </>
        )}
      </td>
      <td>
        <AssemblyLink site={site} from={from} id={measurement.assembly} />
      </td>
      <td class="number">{drawingWords(site.shown, measurement)}</td>
      <td class="number">{measurement.tolerance?.typed ?? "none"}</td>
      <td class="number">{quantityWords(measurement.found, units)}</td>
      <td class="number" data-sort={row.off}>
        {offWords(site.shown, row)}
      </td>
      <td>
        <Mark of={row.verdict} />
        <Again again={row.again} site={site} from={from} />
        <Stands entries={row.stands} site={site} from={from} />
      </td>
      <td>
        {measurement.departure === undefined ? "" : <DepartureId id={measurement.departure} site={site} from={from} />}
      </td>
    </tr>
  );
}
