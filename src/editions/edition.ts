import type { Evidence } from "../evidence/types.ts";
import type { Catalogue } from "../words/findings/catalogue.ts";
import { sayIn } from "../words/findings/catalogue.ts";
import { ENGLISH } from "../words/findings/english.ts";
import { Memo } from "../memo.ts";
import type { Record, Ref } from "../facts/types.ts";
import type { Edition, NamedSeal, Shown } from "./shown.ts";
import { UNNAMED, type Visibility } from "../facts/visibility.ts";
import { visibilityOf } from "./visibility.ts";
import { redactedEvidence } from "./redacted-evidence.ts";
import { redactedRecord } from "./redacted-record.ts";

export const SOMEONE = "someone this edition does not name";

/**
 * What an edition shows of a record: the one place where that is decided.
 *
 * `evidence` must be that of the whole record; verdicts, states and findings keep what they say there.
 * The result is built anew and holds nothing else: no page, feed, ledger or search index made from it can tell
 * what it does not hold. The archive shows everything. Each edition names the last seal: one that only few know of proves little,
 * and nobody gets from a digest to what it was made from.
 */
export function editionOf(
  record: Record,
  evidence: Evidence,
  edition: Edition,
  seal?: NamedSeal,
  catalogue: Catalogue = ENGLISH,
): Shown {
  const say = sayIn(catalogue, record.aircraft.units);
  if (edition === "archive")
    return { ...shownOf(edition, record, evidence, []), say, ...(seal !== undefined && { seal }) };
  const visibility = visibilityOf(record, edition);
  const redacted = redactedRecord(record, visibility);
  return {
    ...shownOf(edition, redacted, redactedEvidence(record, evidence, redacted, visibility), leftOut(visibility)),
    say,
    ...sealFor(redacted, seal),
  };
}

/** The last seal, with nothing of entries that the edition does not show, and none of the seals before it. */
function sealFor({ entries }: Record, seal: NamedSeal | undefined): { readonly seal?: NamedSeal } {
  if (seal === undefined) return {};
  const { number, date, digest, since } = seal;
  const shown = new Set(entries.map(({ id }) => id));
  return { seal: { number, date, digest, since: new Map([...since].filter(([id]) => shown.has(id))) } };
}

function shownOf(
  edition: Edition,
  record: Record,
  evidence: Evidence,
  leavesOut: readonly string[],
): Omit<Shown, "say"> {
  const { people } = record.aircraft;
  return {
    edition,
    record,
    evidence,
    leavesOut,
    shows: showing(record, evidence),
    nameOf: (id) => people.get(id)?.name ?? SOMEONE,
    memo: new Memo(),
  };
}

function showing(record: Record, evidence: Evidence): (ref: Ref) => boolean {
  const entries = new Set(record.entries.map((entry) => entry.id));
  const logs = new Set(record.climate.map((log) => log.id));
  const having: { readonly [kind in Ref["kind"]]: { readonly has: (id: string) => boolean } } = {
    entry: entries,
    assembly: record.assemblies,
    joint: evidence.joints,
    "hold point": evidence.holdPoints,
    batch: evidence.batches,
    piece: evidence.pieces,
    lot: record.lots,
    adhesive: record.adhesives,
    finish: record.finishes,
    procedure: record.procedures,
    trial: record.trials,
    departure: evidence.departures,
    "open item": evidence.openItems,
    person: record.aircraft.people,
    "climate log": logs,
    "earlier hours": new Set(record.earlier.map((table) => table.id)),
  };
  return ({ kind, id }) => id !== UNNAMED && having[kind].has(id);
}

/** The same words whatever the record holds, so that they do not tell whether there is such a thing in it. */
function leftOut(visibility: Visibility): string[] {
  const marked =
    "entries, passages, photographs, clips, attachments, people, lots, trials, climate logs, tables of earlier hours, departures and open items";
  const costs = visibility.may("costs") ? [] : ["what lots cost"];
  if (visibility.edition === "inspector") return [`${marked} that the builder marked for the archive alone`, ...costs];
  const withheld = [
    ["names", "full names of people, and their authorities; public names stand in their place"],
    ["suppliers", "who supplied the lots"],
    ["certificates", "certificates of lots"],
    ["attachments", "attached files: scans, data sheets, documents"],
    ["ledgers", "the ledgers as CSV and JSON"],
  ] as const;
  return [
    `${marked} that the builder marked for the inspector or the archive`,
    ...withheld.filter(([kind]) => !visibility.may(kind)).map(([, words]) => words),
    ...costs,
    "what files of photographs and clips hold beside the picture and the sound: place, time, camera, owner",
  ];
}
