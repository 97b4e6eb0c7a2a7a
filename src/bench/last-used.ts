/** What was mixed, read, cut and broken last: a page that asks for a value begins beside it, and takes none of it. */
import { defined } from "../defined.ts";
import { isLotPart, LOT_PARTS, partsNoted } from "../facts/build/adhesive-kind.ts";
import type { Batch, Component, Entry, InUse, Record } from "../facts/types.ts";
import type { Sizes, Snapshot, Tins } from "./snapshot.ts";

type LastUsed = Pick<Snapshot, "tins" | "readings" | "sizes" | "loads" | "timber" | "task">;

export function lastUsed(record: Record): LastUsed {
  const { entries } = record;
  const batches = entries.flatMap((entry) => entry.batches).filter(({ joints }) => joints.length > 0);
  const newestFirst = [...batches].reverse();
  const last = <T>(of: (batch: Batch) => T | undefined): T | undefined =>
    newestFirst.map(of).find((value) => value !== undefined);
  return {
    tins: tinsIn(record),
    readings: defined({
      temperature: last(({ temperature }) => temperature?.typed),
      humidity: last(({ humidity }) => humidity?.typed),
      moisture: last(({ moisture }) => moisture?.typed),
    }),
    sizes: sizesIn(entries),
    loads: loadsIn(entries),
    timber: last(({ timber }) => (timber.length > 0 ? timber : undefined)) ?? [],
    task: defined({
      gluing: taskOf(entries, (entry) => entry.batches.length > 0),
      breaking: taskOf(entries, (entry) => entry.tests.length > 0),
    }),
  };
}

/** Of each adhesive, the one that was mixed last first. A tin that is said to be in use stands before those of earlier cups. */
function tinsIn({ entries, adhesives }: Record): readonly Tins[] {
  const byAdhesive = new Map<string, Tins>();
  const put = (tins: Tins): void => {
    byAdhesive.delete(tins.adhesive);
    byAdhesive.set(tins.adhesive, tins);
  };
  let adhesive: string | undefined;
  for (const entry of entries) {
    const { inUse } = entry;
    adhesive = inUse?.adhesive ?? adhesive;
    if (inUse !== undefined && adhesive !== undefined) put(opened(byAdhesive.get(adhesive), adhesive, inUse));
    for (const batch of entry.batches) put(mixedIn(byAdhesive.get(batch.adhesive), batch));
  }
  for (const id of adhesives.keys())
    if (!byAdhesive.has(id)) byAdhesive.set(id, { adhesive: id, lots: {}, amounts: {} });
  const used = [...byAdhesive.values()];
  const isUsed = ({ lots }: Tins): boolean => Object.keys(lots).length > 0;
  return [...used.filter(isUsed).reverse(), ...used.filter((tins) => !isUsed(tins))];
}

function opened(before: Tins | undefined, adhesive: string, inUse: InUse): Tins {
  const lots = Object.fromEntries(
    LOT_PARTS.flatMap((part) => (inUse[part] === undefined ? [] : [[part, inUse[part]]])),
  );
  return defined({
    adhesive,
    lots: { ...before?.lots, ...lots },
    scale: inUse.scale?.typed ?? before?.scale,
    amounts: before?.amounts ?? {},
  });
}

function mixedIn(before: Tins | undefined, batch: Batch): Tins {
  const parts = partsNoted<Component>(batch);
  const lots = Object.fromEntries(
    parts.flatMap(({ part, noted }) => (isLotPart(part) && noted.lot !== undefined ? [[part, noted.lot]] : [])),
  );
  const amounts = Object.fromEntries(
    parts.flatMap(({ part, noted }) => {
      const typed = (noted.mass ?? noted.volume)?.typed;
      return typed === undefined ? [] : [[part, typed]];
    }),
  );
  return defined({
    adhesive: batch.adhesive,
    lots: { ...before?.lots, ...lots },
    scale: batch.scale?.typed ?? before?.scale,
    amounts: { ...before?.amounts, ...amounts },
  });
}

function sizesIn(entries: readonly Entry[]): { readonly [procedure: string]: Sizes } {
  const sizes: { [procedure: string]: Sizes } = {};
  for (const { thickness, width, overlap, procedure } of entries.flatMap(({ batches }) =>
    batches.flatMap(({ pieces }) => pieces),
  ))
    sizes[procedure] = defined({ thickness: thickness?.typed, width: width?.typed, overlap: overlap?.typed });
  return sizes;
}

function loadsIn(entries: readonly Entry[]): { readonly [procedure: string]: string } {
  const procedureOf = new Map(
    entries.flatMap(({ batches }) =>
      batches.flatMap(({ pieces }) => pieces.map(({ id, procedure }) => [id, procedure] as const)),
    ),
  );
  const loads: { [procedure: string]: string } = {};
  for (const { piece, load } of entries.flatMap(({ tests }) => tests)) {
    const procedure = procedureOf.get(piece);
    if (procedure !== undefined && load !== undefined) loads[procedure] = load.typed;
  }
  return loads;
}

/** The task of most lines of the last such entry that has any. */
function taskOf(entries: readonly Entry[], isSuch: (entry: Entry) => boolean): string | undefined {
  const lines =
    [...entries]
      .reverse()
      .filter(isSuch)
      .find(({ hours }) => hours.length > 0)?.hours ?? [];
  return lines[0]?.task;
}
