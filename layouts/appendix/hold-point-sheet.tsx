import type { JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import { papersOf } from "../../src/pages/appendix/papers.ts";
import { apart, asMixed, type Group } from "../../src/pages/appendix/sheets.ts";
import { departures, openItems } from "../../src/pages/evidence/evidence-lists.ts";
import type { HoldPointFile } from "../../src/evidence/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { traceIndex } from "../../src/pages/evidence/trace-index.ts";
import { DepartureTable, OpenItemTable } from "../evidence/lists/lists.tsx";
import { HoldPoint } from "../evidence/hold-point/hold-point.tsx";
import { Exceptions, LookAgain, ShownRows } from "./appendix-batches.tsx";
import { AppendixJoints } from "./appendix-joints.tsx";
import type { AppendixSheet } from "./appendix.tsx";
import { ExceptionsBriefly, LookAgainBriefly, MOST_IN_FULL, ShownBriefly } from "./batches-briefly.tsx";
import { Opening } from "./opening.tsx";

/**
 * One hold point with all that whoever signs it looks at: what is open, its joints on their drawings, and their batches.
 * What stands behind those that are shown is in the evidence: here it would make a book of a wing. So it would where very
 * many are not shown: then those have a row each, with every check that was not met, and what is shown stands in lines.
 */
export function holdPointSheet(site: Site, file: HoldPointFile, from: string): AppendixSheet {
  const { holdPoint } = file;
  const where = { site, from };
  const groups = groupsOf(site, file);
  const batches = asMixed(site.shown, groups);
  const of = new Set([holdPoint.assembly, ...groups.map(({ assembly }) => assembly)]);
  const isLong = apart(batches).exceptions.length > MOST_IN_FULL;
  const [NotShown, Held, Again] = isLong
    ? [ExceptionsBriefly, ShownBriefly, LookAgainBriefly]
    : [Exceptions, ShownInRows, LookAgain];
  const title = `Hold point ${holdPoint.id}: ${holdPoint.title}`;
  const parts: readonly (readonly [string, string, JSX.Element])[] = [
    [
      "hold-points",
      "State and sign-off",
      <HoldPoint file={file} {...where} id={anchor("hold point", holdPoint.id)} level="h3" />,
    ],
    ["joints", "Joints that it asks for", <AppendixJoints groups={groups} briefly={isLong} {...where} />],
    [
      "exceptions",
      isLong ? "Batches that are not shown" : "Batches that are not shown, in full",
      <NotShown batches={batches} {...where} />,
    ],
    ["batches", "Batches that are shown", <Held batches={batches} {...where} />],
    ["again", "What to look at in those batches all the same", <Again batches={batches} {...where} />],
    [
      "departures",
      "Departures on the same parts",
      <DepartureTable items={departures(site.shown).filter(({ assembly }) => of.has(assembly))} {...where} />,
    ],
    [
      "open-items",
      "Open items on the same parts",
      <OpenItemTable items={openItems(site.shown).filter(({ assembly }) => of.has(assembly))} {...where} />,
    ],
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

/** Its joints by assembly, with the batches that went into them. */
function groupsOf({ shown }: Site, { joints }: HoldPointFile): readonly Group[] {
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
