/** Fields of facts that are not told in a place where facts are told, each with the reason. */

import type { Because } from "./because.ts";

const NOWHERE: readonly Because[] = [
  ["problems name it", "*.place"],
  ["it decides who sees the fact", "*.audience", "aircraft.publicShows"],
  ["it is reckoned with", "entries.dayStart", "entries.dayEnd", "before"],
  ["addresses are made from ids", "entries.file", "climate.file", "earlier.file"],
  ["hours are held against it when the record is checked", "aircraft.tasks"],
  ["it decides whether a change is shown", "entries.amendments.changes.needs"],
];

const PAGE: readonly Because[] = [
  ["people are called by what the edition calls them", "aircraft.people.*"],
  ["the minutes are told", "entries.hours.typed", "entries.visits.typed", "earlier.lines.typed"],
  ["its sides stand beside each other", "entries.measurements.pair", "entries.measurements.pairTolerance"],
  ["the day's page tells it", "entries.weighed.day", "entries.thermometer.entry"],
];

const STORY = "the appendix prints the evidence, not the story";
const ONLINE = "the appendix prints what was found; what it is held against stands on pages and on the sheet";

const APPENDIX: readonly Because[] = [
  [
    STORY,
    "aircraft.start",
    "aircraft.firstFlight",
    "aircraft.targetPerWeek",
    "aircraft.visit",
    "aircraft.photo.*",
    "aircraft.body",
    "assemblies.planned",
    "assemblies.finished",
    "assemblies.drawing",
    "assemblies.joints.at",
    "assemblies.body",
    "entries.title",
    "entries.assembly",
    "entries.hours.*",
    "entries.visits.*",
    "earlier.*",
    "entries.photos.*",
    "entries.clips.*",
    "entries.attachments.*",
    "entries.body",
  ],
  [
    ONLINE,
    "adhesives.sheet",
    "adhesives.sheetFile",
    "adhesives.workingLife",
    "adhesives.cure",
    "adhesives.shelfLife",
    "adhesives.service",
    "adhesives.storage",
    "adhesives.body",
    "procedures.*",
    "lots.supplier",
    "lots.certificate",
    "lots.thickness",
    "lots.moisture",
    "lots.grainSlope",
    "lots.rings",
    "lots.density",
    "lots.asked.*",
    "lots.body",
    "trials.body",
    "assemblies.joints.drawing",
  ],
  ["titles stand in place of ids", "assemblies.id", "assemblies.joints.assembly", "procedures.id"],
  [
    "a piece is one line of its batch there, its reckoned stress in it",
    "entries.batches.pieces.batch",
    "entries.batches.pieces.thickness",
    "entries.batches.pieces.width",
    "entries.batches.pieces.overlap",
    "entries.batches.pieces.legs.*",
    "entries.batches.pieces.scraps",
    "entries.tests.entry",
    "entries.tests.piece",
    "entries.tests.at",
    "entries.tests.photo",
    "entries.tests.judgedBy",
    "entries.tests.witness",
    "entries.tests.note",
  ],
  [
    "the finding that it brings about is printed",
    "entries.recalls.*",
    "entries.reworks.*",
    "entries.rejections.*",
    "entries.closed",
  ],
  ["findings tell what it shows of a cure", "entries.thermometer.*"],
  ["the day is told, in the row of its joint", "entries.stages.entry", "entries.stages.joint"],
  ["its hold point stands above it", "entries.inspections.holdPoint"],
  ["the day is told", "entries.cuts.entry"],
  ["the change stands beside its fact", "entries.amendments.entry", "entries.amendments.changes.about"],
  ["only that a text was struck out, on its own page", "entries.amendments.prose", "entries.amendments.withheld"],
];

const NO_NUMBERS = "ledgers are numbers, days and verdicts; words of a builder stand on pages";
const NO_LEDGER = "there is no ledger of these";

const LEDGER: readonly Because[] = [
  ["a visitor's time is no work", "entries.visits.*"],
  ["it is reckoned with", "entries.measurements.dimension"],
  [NO_LEDGER, "adhesives.*", "procedures.*", "trials.*", "climate.*", "entries.departures.*", "entries.raised.*"],
  [
    "the finding that it brings about is a row",
    "entries.recalls.*",
    "entries.reworks.*",
    "entries.rejections.*",
    "entries.closed",
  ],
  [
    NO_NUMBERS,
    "aircraft.type",
    "aircraft.visit",
    "aircraft.datum",
    "aircraft.photo.*",
    "aircraft.body",
    "assemblies.title",
    "assemblies.drawing",
    "assemblies.joints.at",
    "assemblies.body",
    "lots.number",
    "lots.supplier",
    "lots.certificate",
    "lots.body",
    "entries.title",
    "entries.photos.*",
    "entries.clips.*",
    "entries.attachments.*",
    "entries.inspections.remarks",
    "entries.inspections.result",
    "entries.inspections.scan",
    "entries.tests.photo",
    "entries.body",
    "earlier.title",
    "earlier.body",
  ],
  ["values are told with their units", "aircraft.units", "aircraft.timeZone"],
  ["findings tell what it shows of a cure", "entries.thermometer.*"],
  ["it is the language of prose, of which a ledger has none", "aircraft.language"],
  ["what it asks for is told with hold points and joints", "aircraft.firstFlight"],
  ["it is a plan", "aircraft.start", "aircraft.targetPerWeek", "assemblies.planned", "assemblies.finished"],
  ["the piece's row tells it", "entries.tests.piece"],
  ["its verdict tells that it was thrown away", "entries.batches.discarded"],
  ["the day is told", "entries.cuts.entry"],
  ["the hold point's row tells it", "entries.inspections.holdPoint"],
  [
    "of the wood itself only its amount is kept account of",
    "lots.species",
    "lots.thickness",
    "lots.moisture",
    "lots.grainSlope",
    "lots.rings",
    "lots.density",
    "lots.asked.*",
  ],
  ["it tells a reader that something is hidden, and hides in the ledger with it", "entries.amendments.withheld"],
];

export const UNTOLD = {
  page: [...NOWHERE, ...PAGE],
  appendix: [...NOWHERE, ...PAGE, ...APPENDIX],
  ledger: [...NOWHERE, PAGE[0] as Because, ...LEDGER],
};

/** Fields that hold nothing in the records made by `tests/pages/planted`. */
export const NOT_PLANTED: readonly Because[] = [
  ["the reckoning makes it from amendments that nobody seconded; no edition holds it", "before"],
];

/** Fields that hold nothing in the demo's record. */
export const NOT_IN_THE_DEMO: readonly Because[] = [
  ["the aircraft has not flown", "aircraft.firstFlight", "aircraft.people.mayReturn"],
  ["the fillets are for another evening", "entries.stages.complete"],
  ["a visitor's hand is no help", "entries.visits.hand"],
  ["the aircraft is not far enough to stand on scales", "entries.scales.*"],
  [
    "the rules that ask for it came after the demo's story was written; examples of the schemas show it",
    "assemblies.joints.structure",
    "adhesives.service",
    "adhesives.storage",
    "procedures.facePlyCounts",
    "lots.asked.*",
    "entries.batches.wood",
    "entries.batches.pieces.scraps",
    "entries.tests.judgedBy",
    "entries.departures.condition",
    "entries.reworks.replaced.*",
    "entries.reworks.stages",
    "assemblies.joints.stages",
    "entries.amendments.seenBy",
    "entries.amendments.changes.fixed",
    "entries.amendments.changes.worsens",
  ],
];
