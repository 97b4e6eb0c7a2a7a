import type { JSX } from "preact";
import { drawingWords, measurements, offWords } from "../../../src/pages/evidence/evidence-lists.ts";
import { quantityWords } from "../../../src/words/quantities.ts";
import type { MeasurementFile } from "../../../src/evidence/types.ts";
import { figureRead } from "../../../src/facts/quantity/ends.ts";
import type { Measurement } from "../../../src/facts/types.ts";
import { DepartureId, figureOf, number, PairTable, Stands } from "./pairs.tsx";
import { Mark } from "../../parts/mark.tsx";
import { Noted as NotedWords, Page } from "../../shell/page.tsx";
import { AssemblyLink, LIST_SCRIPTS, ListPlace } from "./lists.tsx";
import {
  EntryLink,
  FigureCell,
  groupOf,
  Id,
  ListTable,
  None,
  Section,
  Title,
  VerdictCell,
  type Where,
} from "../parts.tsx";

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
        <PairTable list="pairs" site={site} from={from} />
      </Section>
      <Section id="measurements" title="Against the drawing">
        <MeasurementTable list="measurements" site={site} from={from} />
      </Section>
      <Section id="how" title="What counts">
        <div class="prose">
          <p>
            Equal to a limit is within it. A measure that is out stands against every hold point of its assembly until
            it is measured again within the same limits, in the same words and on a later day, or a departure answers
            for it.
          </p>
          <p>
            Of each side of a pair all counts that no later measure of the same words, part and joint took the place of,
            and the worst of it. The difference is left minus right, front minus back, or upper minus lower; without a
            tolerance of its own a pair has no verdict.
          </p>
        </div>
      </Section>
    </Page>
  );
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

export function MeasurementTable({
  list,
  site,
  from,
  rows = measurements(site.shown),
}: Where & { readonly list?: string; readonly rows?: readonly MeasurementFile[] }): JSX.Element {
  if (rows.length === 0) return <None>No measurements.</None>;
  const groups = rows.map(({ verdict }) => verdict);
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
      {rows.map((row, at) => (
        <tr {...groupOf(list, groups, at)}>
          <MeasurementCells row={row} site={site} from={from} />
        </tr>
      ))}
    </ListTable>
  );
}

function MeasurementCells({ row, site, from }: Where & { readonly row: MeasurementFile }): JSX.Element {
  const { measurement } = row;
  const { units } = site.shown.record.aircraft;
  return (
    <>
      <td data-sort={measurement.entry}>
        <EntryLink site={site} from={from} id={measurement.entry} />
      </td>
      <td>
        {measurement.what}
        <NotedWords note={measurement.note} />
        {measurement.joint === undefined ? null : (
          <>
            , <Id site={site} from={from} kind="joint" id={measurement.joint} />
          </>
        )}
      </td>
      <td>
        <AssemblyLink site={site} from={from} id={measurement.assembly} />
      </td>
      <FigureCell of={measurement.drawing}>{drawingWords(site.shown, measurement)}</FigureCell>
      <FigureCell of={figureOf(measurement.tolerance?.plus, measurement.found)}>
        {measurement.tolerance?.typed ?? "none"}
      </FigureCell>
      <FigureCell of={figureOf(figureRead(measurement.found), measurement.found)}>
        {quantityWords(measurement.found, units)}
      </FigureCell>
      <FigureCell of={figureOf(row.off, measurement.found)}>{offWords(site.shown, row)}</FigureCell>
      <VerdictCell of={row.verdict}>
        <Mark of={row.verdict} />
        <Again again={row.again} site={site} from={from} />
        <Stands entries={row.stands} site={site} from={from} />
      </VerdictCell>
      <td>
        {measurement.departure === undefined ? "" : <DepartureId id={measurement.departure} site={site} from={from} />}
      </td>
    </>
  );
}
