import type { JSX } from "preact";
import { sheetPathsOf } from "../../src/pages/appendix/sheets.ts";
import { addressOf } from "../../src/pages/address.ts";
import type { PageFile, Site } from "../../src/editions/shown.ts";
import type { Ref } from "../../src/facts/types.ts";
import { Appendix } from "../appendix/appendix.tsx";
import { Batch } from "../evidence/batch.tsx";
import { Charts } from "../evidence/charts.tsx";
import { Climate } from "../evidence/climate.tsx";
import { HoldPointSheet } from "../evidence/hold-point/hold-point-page.tsx";
import { HoldPoints } from "../evidence/hold-point/hold-points.tsx";
import { Joints } from "../evidence/lists/joints.tsx";
import { Joint } from "../evidence/joint.tsx";
import { Departures, OpenItems } from "../evidence/lists/lists.tsx";
import { Lot } from "../evidence/lot.tsx";
import { Credit } from "../evidence/credit.tsx";
import { Measurements } from "../evidence/lists/measurements.tsx";
import { Overview } from "../evidence/overview.tsx";
import { Stock } from "../evidence/stock.tsx";
import { Weight } from "../evidence/weight.tsx";
import { Trial } from "../evidence/trial.tsx";
import { html } from "./page.tsx";

/** Pages on batches, joints, lots and what rests on them. */
export function evidencePages(site: Site): PageFile[] {
  const { evidence, record } = site.shown;
  return [
    page("evidence.html", () => <Overview site={site} />),
    page("joints.html", () => <Joints site={site} />),
    page("charts.html", () => <Charts site={site} />),
    page("climate.html", () => <Climate site={site} />),
    page("stock.html", () => <Stock site={site} />),
    ...sheetPathsOf(site.shown).map((path) => page(path, () => <Appendix site={site} path={path} />)),
    page("hold-points.html", () => <HoldPoints site={site} />),
    page("open-items.html", () => <OpenItems site={site} />),
    page("departures.html", () => <Departures site={site} />),
    page("measurements.html", () => <Measurements site={site} />),
    page("credit.html", () => <Credit site={site} />),
    page("weight.html", () => <Weight site={site} />),
    ...[...evidence.holdPoints].map(([id, file]) =>
      about({ kind: "hold point", id }, () => <HoldPointSheet site={site} file={file} />),
    ),
    ...[...evidence.batches].map(([id, file]) => about({ kind: "batch", id }, () => <Batch site={site} file={file} />)),
    ...[...evidence.joints].map(([id, file]) => about({ kind: "joint", id }, () => <Joint site={site} file={file} />)),
    ...[...evidence.lots].map(([id, file]) => about({ kind: "lot", id }, () => <Lot site={site} file={file} />)),
    ...[...record.trials].map(([id, trial]) => about({ kind: "trial", id }, () => <Trial site={site} trial={trial} />)),
  ];
}

function page(path: string, make: () => JSX.Element): PageFile {
  return { path, make: () => html(make()) };
}

function about(ref: Ref, make: () => JSX.Element): PageFile {
  return page(addressOf(ref) ?? "", make);
}
