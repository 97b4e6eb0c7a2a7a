/** Two sides held against each other. */
import type { JSX } from "preact";
import { type PairRow, pairs, type SideTold } from "../../../src/pages/evidence/evidence-lists.ts";
import { WITHHELD } from "../../../src/facts/visibility.ts";
import type { Noted, Quantity } from "../../../src/facts/types.ts";
import { Mark } from "../../parts/mark.tsx";
import { EntryLink, FigureCell, groupOf, Id, ListTable, None, VerdictCell, type Where } from "../parts.tsx";

export const number = (word: string): { word: string; number: true } => ({ word, number: true });

/** All pairs, or those with a side on one of the assemblies. */
export function PairTable({
  list,
  of,
  site,
  from,
}: Where & { readonly list?: string; readonly of?: ReadonlySet<string> }): JSX.Element {
  const rows = pairs(site.shown).filter(({ pair }) => of === undefined || pair.now.some((one) => of.has(one.assembly)));
  if (rows.length === 0) return <None>No sides were measured against each other.</None>;
  const groups = rows.map(({ pair }) => pair.verdict);
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
      {rows.map((row, at) => (
        <tr {...groupOf(list, groups, at)}>
          <PairCells row={row} site={site} from={from} />
        </tr>
      ))}
    </ListTable>
  );
}

function PairCells({ row, site, from }: Where & { readonly row: PairRow }): JSX.Element {
  const { pair, assemblies, sides, difference, departures } = row;
  return (
    <>
      <th scope="row">{pair.id}</th>
      <td>{assemblies.join(", ")}</td>
      {sides.map((all) => (
        <td>
          <Sides all={all} hidden={pair.verdict !== "one side"} site={site} from={from} />
        </td>
      ))}
      <FigureCell of={figureOf(pair.difference, pair.now[0]?.found)}>{difference}</FigureCell>
      <td class="number">
        {pair.tolerance?.typed ??
          (["out", "within", "estimated"].includes(pair.verdict) ? "not shown in this edition" : "not stated")}
      </td>
      <VerdictCell of={pair.verdict}>
        <Mark of={pair.verdict} />
        <Stands entries={pair.stands} site={site} from={from} />
      </VerdictCell>
      <td>
        <DepartureIds ids={departures} site={site} from={from} />
      </td>
    </>
  );
}

function Sides({
  all,
  hidden,
  site,
  from,
}: Where & { readonly all: readonly SideTold[]; readonly hidden: boolean }): JSX.Element {
  if (all.length === 0) return <span class="quiet">{hidden ? "not shown in this edition" : "not measured yet"}</span>;
  return (
    <>
      {all.map(({ side, found, entry }, at) => (
        <>
          {at > 0 ? "; " : ""}
          {side} {found}, <EntryLink site={site} from={from} id={entry} />
        </>
      ))}
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

export function DepartureId({ id, site, from }: Where & { readonly id: string }): JSX.Element {
  return id === WITHHELD ? <>not shown in this edition</> : <Id site={site} from={from} kind="departure" id={id} />;
}

/** Where an amendment that no second person saw would better the verdict. */
export function Stands({
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

/** A figure in the unit of what was found. */
export const figureOf = (
  value: number | undefined,
  found: Noted | undefined,
): Pick<Quantity, "value" | "unit"> | undefined =>
  value === undefined || found === undefined ? undefined : { value, unit: found.unit };
