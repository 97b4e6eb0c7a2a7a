/**
 * What is kept on the phone. A tap is kept once its transaction is complete, written through to the disk: the browser's
 * other storage was seen to lose a second and more where the browser was killed.
 */
import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { BenchEvent } from "../../bench/event.ts";
import type { Letter, Snapshot } from "../../bench/snapshot.ts";
import type { Taken } from "../../bench/taken.ts";

/** A file of the camera, as it is. */
export interface Photograph {
  readonly name: string;
  readonly session: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

interface Kept extends DBSchema {
  events: { key: string; value: BenchEvent };
  /** Records that open sessions began with, by their digest. */
  records: { key: string; value: Snapshot };
  taken: { key: string; value: Taken };
  photographs: { key: string; value: Photograph };
  /** What this phone is at the bench. */
  phone: { key: string; value: Letter };
}

const STRICT = { durability: "strict" } as const;

export class Store {
  readonly #db: IDBPDatabase<Kept>;

  private constructor(db: IDBPDatabase<Kept>) {
    this.#db = db;
  }

  static async open(): Promise<Store> {
    return new Store(
      await openDB<Kept>("scarfline-bench", 3, {
        upgrade(db, before) {
          if (before < 1) {
            db.createObjectStore("events", { keyPath: "id" });
            db.createObjectStore("records");
            db.createObjectStore("taken", { keyPath: "session" });
          }
          if (before < 2) db.createObjectStore("photographs", { keyPath: "name" });
          if (before < 3) db.createObjectStore("phone");
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

  async letter(): Promise<Letter> {
    return (await this.#db.get("phone", "letter")) ?? "";
  }

  async keepLetter(letter: Letter): Promise<void> {
    const done = this.#db.transaction("phone", "readwrite", STRICT);
    await done.store.put(letter, "letter");
    await done.done;
  }

  record(digest: string): Promise<Snapshot | undefined> {
    return this.#db.get("records", digest);
  }

  photographs(): Promise<Photograph[]> {
    return this.#db.getAll("photographs");
  }

  /** With the first tap of a session goes the record that it began with, with that of a camera its file. */
  async keep(event: BenchEvent, record?: Snapshot, photograph?: Photograph): Promise<void> {
    const done = this.#db.transaction(["events", "records", "photographs"], "readwrite", STRICT);
    if (photograph !== undefined) await done.objectStore("photographs").add(photograph);
    await done.objectStore("events").add(event);
    if (record !== undefined) await done.objectStore("records").put(record, event.record);
    await done.done;
  }

  /** Of a session that has arrived only its numbers stay, so that none is given twice. Whether another is kept. */
  async forget(session: string, taken: Taken): Promise<boolean> {
    const done = this.#db.transaction(["events", "records", "taken", "photographs"], "readwrite", STRICT);
    const events = await done.objectStore("events").getAll();
    const others = events.filter((event) => event.session !== session);
    for (const event of events) if (event.session === session) await done.objectStore("events").delete(event.id);
    for (const one of await done.objectStore("photographs").getAll())
      if (one.session === session) await done.objectStore("photographs").delete(one.name);
    const used = new Set(others.map(({ record }) => record));
    for (const digest of await done.objectStore("records").getAllKeys())
      if (!used.has(digest)) await done.objectStore("records").delete(digest);
    await done.objectStore("taken").put(taken);
    await done.done;
    return others.length > 0;
  }
}
