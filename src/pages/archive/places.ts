/** Where what lies in an archive, as far as this record has it. */
import type { Shown } from "../../editions/shown.ts";
import type { FilePath, Record } from "../../facts/types.ts";
import { filledLedgers } from "../ledgers/ledgers.ts";
import { PAGES } from "./guide.ts";
import { drawingsOf, papersOf } from "./papers.ts";

interface Place {
  readonly what: string;
  /** Files and folders below `data/` of the bag. */
  readonly folders: readonly string[];
  /** The page of the site that leads to it. */
  readonly page?: string;
}

/** Those that hold nothing are left out. `hasPapers`: whether PDFs are made beside the pages. */
export function placesOf(shown: Shown, hasPapers: boolean): Place[] {
  const all = [...madePlaces(shown, hasPapers), ...filePlaces(shown), ...otherPlaces(shown)];
  return all.filter(({ folders }) => folders.length > 0);
}

function madePlaces(shown: Shown, hasPapers: boolean): Place[] {
  return [
    {
      what: "The record as pages: open them in any browser, with no network and no server",
      folders: ["site/index.html"],
      page: "home.html",
    },
    {
      what: "The evidence and each hold point as PDFs, to be printed and signed",
      folders: hasPapers ? ["site/paper/"] : [],
      page: "appendix.html",
    },
    { what: "What the builder wrote: text files with their facts on top", folders: ["record/"] },
    {
      what: "Ledgers: numbers and verdicts as CSV and JSON, and what each column is",
      folders: filledLedgers(shown).length > 0 ? ["ledgers/"] : [],
      page: PAGES.ledgers,
    },
  ];
}

function filePlaces(shown: Shown): Place[] {
  const { record } = shown;
  return [
    {
      what: "Papers: letters, certificates, data sheets, scans of signatures",
      folders: foldersOf(papersOf(shown).map(({ file }) => file)),
      page: PAGES.papers,
    },
    { what: "Pictures as they were taken", folders: foldersOf(picturesOf(record)), page: "entries.html" },
    { what: "Clips as they were taken", folders: foldersOf(clipsOf(record)), page: "entries.html" },
    {
      what: "Readings of loggers, as the loggers wrote them",
      folders: foldersOf(record.climate.map(({ file }) => file)),
      page: "climate.html",
    },
    {
      what: "Tables of hours from before the record was kept",
      folders: foldersOf(record.earlier.map(({ file }) => file)),
      page: "hours.html",
    },
    { what: "Drawings", folders: foldersOf(drawingsOf(shown).map(({ file }) => file)), page: "assemblies.html" },
  ];
}

function otherPlaces({ seal }: Shown): Place[] {
  return [
    {
      what: "Pages, layouts and a style sheet of the builder’s own, if any: they are no evidence, and the pages of the evidence are made without them",
      folders: ["record/pages/", "record/layouts/", "record/style.css"],
    },
    {
      what: "Seals: digests of all files, by date",
      folders: seal === undefined ? [] : ["record/seals.txt", "record/seals/"],
      page: "about.html#seal",
    },
    { what: "Rules that judged, and where each comes from", folders: ["rules.json"], page: "about.html#rules" },
    { what: "Digests of every file of the record", folders: ["record.sha256"] },
  ];
}

/** The folders right below the record's that these files lie in, or the record's own. */
function foldersOf(files: readonly FilePath[]): string[] {
  const folders = files.map((file) => `record/${file.includes("/") ? `${file.split("/", 1)[0]}/` : ""}`);
  return [...new Set(folders)].sort();
}

const picturesOf = ({ aircraft, entries }: Record): FilePath[] =>
  [...(aircraft.photo === undefined ? [] : [aircraft.photo]), ...entries.flatMap(({ photos }) => photos)].map(
    ({ file }) => file,
  );

const clipsOf = ({ entries }: Record): FilePath[] => entries.flatMap(({ clips }) => clips.map(({ file }) => file));
