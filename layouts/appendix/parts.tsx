/** Parts of the appendix, in their order. */
import type { ComponentChildren, JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import { asMixed, isOfMany, type Sheet } from "../../src/pages/appendix/sheets.ts";
import type { BatchFile } from "../../src/evidence/types.ts";
import { departures, holdPoints, openItems } from "../../src/pages/evidence/evidence-lists.ts";
import { overview } from "../../src/pages/evidence/overview.ts";
import type { Site } from "../../src/editions/shown.ts";
import { BATCH_MEANS, JOINT_MEANS, NOT_LOOKED_AT } from "../../src/pages/evidence/verdict-words.ts";
import { Mark } from "../parts/mark.tsx";
import { Behind, Exceptions, ShownRows } from "./appendix-batches.tsx";
import { AppendixJoints } from "./appendix-joints.tsx";
import {
  AppendixAmendments,
  AppendixIndex,
  AppendixRules,
  AppendixTrials,
  PiecePhotographs,
} from "./appendix-rest.tsx";
import { StatisticsParts } from "../evidence/charts.tsx";
import { ClimateParts } from "../evidence/climate.tsx";
import { HoldPoint } from "../evidence/hold-point/hold-point.tsx";
import { CreditLedgers } from "../evidence/credit.tsx";
import { DepartureTable, OpenItemTable } from "../evidence/lists/lists.tsx";
import { MeasurementTable } from "../evidence/lists/measurements.tsx";
import { PairTable } from "../evidence/lists/pairs.tsx";
import { LotTable } from "../evidence/lists/batches-and-lots.tsx";
import { None, type Where } from "../evidence/parts.tsx";
import { StockParts } from "../evidence/stock.tsx";
import { WeightLedger } from "../evidence/weight.tsx";

/** A part of the appendix on one of its sheets. */
export interface Part {
  readonly id: string;
  readonly title: string;
  readonly make: (place: Place) => ComponentChildren;
}

interface Place {
  readonly site: Site;
  readonly from: string;
  readonly sheet: Sheet;
}

const batchesOf = ({ site, sheet: { groups, loose } }: Place): readonly BatchFile[] =>
  asMixed(site.shown, groups, loose);

const where = ({ site, from }: Place): Where => ({ site, from });

const EXCEPTIONS: Part = {
  id: "exceptions",
  title: "Batches that are not shown, in full",
  make: (place) => <Exceptions batches={batchesOf(place)} {...where(place)} />,
};
const JOINTS: Part = {
  id: "joints",
  title: "Joints",
  make: (place) => <AppendixJoints groups={place.sheet.groups} {...where(place)} />,
};
const SHOWN: Part = {
  id: "batches",
  title: "Batches that are shown",
  make: (place) => <ShownRows batches={batchesOf(place)} {...where(place)} />,
};
const BEHIND: Part = {
  id: "behind",
  title: "What stands behind those batches",
  make: (place) => <Behind batches={batchesOf(place)} {...where(place)} />,
};
const PHOTOGRAPHS: Part = {
  id: "photographs",
  title: "Photographs of test pieces",
  make: (place) => <PiecePhotographs sheet={place.sheet} {...where(place)} />,
};
const INDEX: Part = {
  id: "index",
  title: "Index of joints and batches",
  make: (place) => <AppendixIndex {...where(place)} />,
};

const OPENING: readonly Part[] = [
  { id: "standing", title: "Where it stands", make: ({ site }) => <Standing site={site} /> },
  { id: "hold-points", title: "Hold points and sign-off", make: (place) => <HoldPointList {...where(place)} /> },
];

const LISTS: readonly Part[] = [
  {
    id: "departures",
    title: "Departures",
    make: (place) => <DepartureTable items={departures(place.site.shown)} {...where(place)} />,
  },
  {
    id: "open-items",
    title: "Open items",
    make: (place) => <OpenItemTable items={openItems(place.site.shown)} {...where(place)} />,
  },
  { id: "amendments", title: "Amendments", make: (place) => <AppendixAmendments {...where(place)} /> },
  { id: "trials", title: "Trials", make: (place) => <AppendixTrials {...where(place)} /> },
  {
    id: "measurements",
    title: "Measurements",
    make: (place) => (
      <>
        <MeasurementTable {...where(place)} />
        <PairTable {...where(place)} />
      </>
    ),
  },
  {
    id: "lots",
    title: "Lots",
    make: (place) => <LotTable facts={overview(place.site.shown)} {...where(place)} list="none" />,
  },
  { id: "stock", title: "Stock", make: (place) => <StockParts {...where(place)} level="h3" /> },
  { id: "weight", title: "Weight", make: (place) => <WeightLedger {...where(place)} level="h3" /> },
  { id: "major-portion", title: "Major portion", make: (place) => <CreditLedgers {...where(place)} level="h3" /> },
  { id: "climate", title: "Climate of the workshop", make: (place) => <ClimateParts {...where(place)} level="h3" /> },
  { id: "statistics", title: "Statistics", make: (place) => <StatisticsParts {...where(place)} level="h3" /> },
];

const RULES: Part = {
  id: "rules",
  title: "Rules and their sources",
  make: ({ site }) => <AppendixRules site={site} />,
};

/**
 * What waits for a reader comes first, what is in order is brief, and all that stands behind it comes last. A sheet of one
 * assembly has its joints and batches; the first sheet has the rest.
 */
export function partsOf(site: Site, sheet: Sheet): readonly Part[] {
  const photographs = site.shown.edition === "archive" ? [PHOTOGRAPHS] : [];
  if (sheet.assembly !== undefined) return [EXCEPTIONS, JOINTS, SHOWN, BEHIND, ...photographs];
  const isOnlyOne = !isOfMany(site.shown);
  if (!isOnlyOne && sheet.loose.length === 0) return [...OPENING, INDEX, ...LISTS, RULES];
  const joints = isOnlyOne ? [JOINTS] : [];
  return [...OPENING, EXCEPTIONS, ...joints, SHOWN, ...LISTS, BEHIND, ...photographs, RULES, INDEX];
}

function Standing({ site }: { readonly site: Site }): JSX.Element {
  const { joints, batchVerdicts } = overview(site.shown);
  return (
    <table class="list">
      <caption>Joints by state and batches by verdict</caption>
      <thead>
        <tr>
          <th scope="col">Of</th>
          <th scope="col">Verdict</th>
          <th scope="col">What it means</th>
          <th scope="col" class="number">
            Number
          </th>
        </tr>
      </thead>
      <tbody>
        {joints.map(([state, count]) => (
          <tr>
            <td>Joints</td>
            <td>
              <Mark of={state} />
            </td>
            <td>{JOINT_MEANS[state]}</td>
            <td class="number">{count}</td>
          </tr>
        ))}
        {batchVerdicts.map(([verdict, count]) => (
          <tr>
            <td>Batches</td>
            <td>
              <Mark of={verdict} />
            </td>
            <td>{BATCH_MEANS[verdict]}</td>
            <td class="number">{count}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Of a hold point in a long record: the same joints are asked for by each that stands above them. */
const MOST_NEEDS = 20;

function HoldPointList({ site, from }: Where): JSX.Element {
  const all = holdPoints(site.shown);
  if (all.length === 0) return <None>The record names no hold points.</None>;
  return (
    <>
      <p class="quiet">
        {NOT_LOOKED_AT} Whatever comes of a look, each hold point has a page of its own to write it on; here is a place
        for those that may be signed as they stand.
      </p>
      {all.map((file) => (
        <HoldPoint
          file={file}
          site={site}
          from={from}
          id={anchor("hold point", file.holdPoint.id)}
          level="h3"
          among
          {...(isOfMany(site.shown) ? { mostNeeds: MOST_NEEDS } : {})}
        />
      ))}
    </>
  );
}
