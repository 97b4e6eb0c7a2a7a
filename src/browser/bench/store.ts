/**
 * What is kept on the phone. A tap is kept once its transaction is complete, written through to the disk: the browser's
 * other storage was seen to lose a second and more where the browser was killed.
 */
import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { BenchEvent } from "../../bench/event.ts";
import type { Snapshot } from "../../bench/snapshot.ts";
import type { Taken } from "../../bench/taken.ts";

interface Kept extends DBSchema {
  events: { key: string; value: BenchEvent };
  /** Records that open sessions began with, by their digest. */
  records: { key: string; value: Snapshot };
  taken: { key: string; value: Taken };
}

const STRICT = { durability: "strict" } as const;

export class Store {
  readonly #db: IDBPDatabase<Kept>;

  private constructor(db: IDBPDatabase<Kept>) {
    this.#db = db;
  }

  static async open(): Promise<Store> {
    return new Store(
      await openDB<Kept>("scarfline-bench", 1, {
        upgrade(db) {
          db.createObjectStore("events", { keyPath: "id" });
          db.createObjectStore("records");
          db.createObjectStore("taken", { keyPath: "session" });
        },
      }),
    );
  }

  events(): Promise<BenchEvent[]> {
    return this.#db.getAll("events");
  }

  taken(): Promise<Taken[]> {
    return this.#db.getAll("taken");
  }

  record(digest: string): Promise<Snapshot | undefined> {
    return this.#db.get("records", digest);
  }

  /** With the first tap of a session goes the record that it began with. */
  async keep(event: BenchEvent, record?: Snapshot): Promise<void> {
    const done = this.#db.transaction(["events", "records"], "readwrite", STRICT);
    await done.objectStore("events").add(event);
    if (record !== undefined) await done.objectStore("records").put(record, event.record);
    await done.done;
  }

  /** Of a session that has arrived only its numbers stay, so that none is given twice. Whether another is kept. */
  async forget(session: string, taken: Taken): Promise<boolean> {
    const done = this.#db.transaction(["events", "records", "taken"], "readwrite", STRICT);
    const events = await done.objectStore("events").getAll();
    const others = events.filter((event) => event.session !== session);
    for (const event of events) if (event.session === session) await done.objectStore("events").delete(event.id);
    const used = new Set(others.map(({ record }) => record));
    for (const digest of await done.objectStore("records").getAllKeys())
      if (!used.has(digest)) await done.objectStore("records").delete(digest);
    await done.objectStore("taken").put(taken);
    await done.done;
    return others.length > 0;
  }
}
