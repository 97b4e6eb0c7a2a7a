import type { JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import { papersOf } from "../../src/pages/appendix/papers.ts";
import { apart, asMixed, type Group, isOfMany } from "../../src/pages/appendix/sheets.ts";
import { departures, openItems } from "../../src/pages/evidence/evidence-lists.ts";
import type { Departure, Kind } from "../../src/facts/types.ts";
import type { HoldPointFile } from "../../src/evidence/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { allByItself, type ToldWithin as Told, toldWithin } from "../../src/pages/evidence/hold-point/told-within.ts";
import { traceIndex } from "../../src/pages/evidence/trace-index.ts";
import { DepartureTable, OpenItemTable } from "../evidence/lists/lists.tsx";
import { HoldPoint } from "../evidence/hold-point/hold-point.tsx";
import type { Where } from "../evidence/parts.tsx";
import { counted } from "../../src/words/lists.ts";
import { Exceptions, LookAgain, ShownRows } from "./appendix-batches.tsx";
import { AppendixJoints } from "./appendix-joints.tsx";
import type { AppendixSheet } from "./appendix.tsx";
import { ExceptionsBriefly, LookAgainBriefly, MOST_IN_FULL, ShownBriefly } from "./batches-briefly.tsx";
import { Opening } from "./opening.tsx";
import { ToldWithin } from "./told-within.tsx";

/**
 * One hold point with all that whoever signs it looks at: what is open, its joints on their drawings, and their batches.
 * What stands behind those that are shown is in the evidence: here it would make a book of a wing. Where very many are
 * not shown, what a hold point within asks for is told on that one's paper and named here; and where that leaves very
 * many still, those have a row each, with every check that was not met, and what is shown stands in lines.
 */
export function holdPointSheet(site: Site, file: HoldPointFile, from: string): AppendixSheet {
  const { holdPoint } = file;
  const where = { site, from };
  const all = groupsOf(site, file.joints);
  const isVast = apart(asMixed(site.shown, all)).exceptions.length > MOST_IN_FULL;
  const within = isVast ? toldWithin(site.shown, file) : allByItself(file);
  const groups = isVast
    ? groupsOf(
        site,
        file.joints.filter((id) => !within.tells("joint", id)),
      )
    : all;
  const title = `Hold point ${holdPoint.id}: ${holdPoint.title}`;
  const parts: readonly SheetPart[] = [
    [
      "hold-points",
      "State and sign-off",
      <HoldPoint
        file={{ ...file, needs: within.needs }}
        {...where}
        id={anchor("hold point", holdPoint.id)}
        level="h3"
      />,
    ],
    ...withinParts(site, within),
    ...gluedParts(groups, where),
    ...listParts([holdPoint.assembly, ...all.map(({ assembly }) => assembly)], within, where),
  ];
  return {
    title,
    front: <Opening site={site} title={title} />,
    body: parts.map(([id, heading, made], at) => (
      <section aria-labelledby={id}>
        <h2 id={id}>
          {at + 1} {heading}
        </h2>
        {made}
      </section>
    )),
  };
}

type SheetPart = readonly [id: string, heading: string, made: JSX.Element];

const withinParts = (site: Site, { points }: Told): SheetPart[] =>
  points.length === 0
    ? []
    : [["within", "Hold points within it, and where each is told", <ToldWithin points={points} site={site} />]];

/** Joints and batches that this paper tells. */
function gluedParts(groups: readonly Group[], where: Where): SheetPart[] {
  const batches = asMixed(where.site.shown, groups);
  const isLong = apart(batches).exceptions.length > MOST_IN_FULL;
  const [NotShown, Held] = isLong ? [ExceptionsBriefly, ShownBriefly] : [Exceptions, ShownInRows];
  const Again = isLong || isOfMany(where.site.shown) ? LookAgainBriefly : LookAgain;
  return [
    ["joints", "Joints that it asks for", <AppendixJoints groups={groups} briefly={isLong} {...where} />],
    [
      "exceptions",
      isLong ? "Batches that are not shown" : "Batches that are not shown, in full",
      <NotShown batches={batches} {...where} />,
    ],
    ["batches", "Batches that are shown", <Held batches={batches} {...where} />],
    ["again", "What to look at in those batches all the same", <Again batches={batches} {...where} />],
  ];
}

/** Of assemblies that a paper within lists, what is still to be accepted or closed and is not named with that paper. */
function listParts(assemblies: readonly string[], within: Told, where: Where): SheetPart[] {
  const { shown } = where.site;
  const of = new Set(assemblies);
  const isHere = ({ assembly }: { readonly assembly: string }): boolean => !within.assemblies.has(assembly);
  const isAccepted = ({ id }: Departure): boolean => shown.evidence.standings.get(id) === "accepted";
  const isNamed = (kind: Kind, { id }: { readonly id: string }): boolean => within.tells(kind, id);
  const differing = departures(shown).filter(({ assembly }) => of.has(assembly));
  const here = differing.filter((one) => isHere(one) || !(isAccepted(one) || isNamed("departure", one)));
  const items = openItems(shown).filter(({ assembly }) => of.has(assembly));
  const waiting = items.filter((one) => isHere(one) || !(one.closedIn !== undefined || isNamed("open item", one)));
  return [
    [
      "departures",
      "Departures on the same parts",
      <>
        <DepartureTable items={here} {...where} />
        <Elsewhere count={differing.length - here.length} one="departure" />
      </>,
    ],
    [
      "open-items",
      "Open items on the same parts",
      <>
        <OpenItemTable items={waiting} {...where} />
        <Elsewhere count={items.length - waiting.length} one="item" />
      </>,
    ],
  ];
}

/** How many more there are: those of which something is open have their names above. */
function Elsewhere({ count, one }: { readonly count: number; readonly one: string }): JSX.Element | null {
  return count === 0 ? null : (
    <p>
      {counted(count, `more ${one}`)} {count === 1 ? "stands" : "stand"} on the papers of the hold points within it;
      whatever is open of them is named there and above.
    </p>
  );
}

/** A row each, and where what stands behind them is told. */
function ShownInRows(props: Parameters<typeof ShownRows>[0]): JSX.Element {
  return (
    <>
      <ShownRows {...props} />
      <p class="small">
        What was noted of them, and how each of their pieces broke, stands in the evidence of the whole record (
        {papersOf(props.site.shown)[0]?.path}) and on the page of each batch.
      </p>
    </>
  );
}

/** Joints by assembly, with the batches that went into them. */
function groupsOf({ shown }: Site, joints: readonly string[]): readonly Group[] {
  const { record, evidence } = shown;
  const asked = new Set(joints);
  const index = traceIndex(shown);
  return index.assemblies.flatMap((assembly) => {
    const files = (record.assemblies.get(assembly)?.joints ?? []).flatMap(({ id }) =>
      asked.has(id) ? (evidence.joints.get(id) ?? []) : [],
    );
    const ids = new Set(files.flatMap(({ batches, superseded }) => [...batches, ...superseded]));
    const batches = index.batches.flatMap(({ id }) => (ids.has(id) ? (evidence.batches.get(id) ?? []) : []));
    return files.length === 0 ? [] : [{ assembly, joints: files, batches }];
  });
}
