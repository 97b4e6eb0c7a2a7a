/** Changed copies of one record, read again and again: only a file whose bytes are not the record's own is parsed anew. */
import type { Memory } from "../../src/record/filed.ts";
import { readRecord } from "../../src/record/read.ts";

export const TODAY = "2025-12-31";

/** A reader of copies of the record in `base`. Each copy is read as if it were the first: none learns from another. */
export function readerOfCopies(base: string): (folder: string) => ReturnType<typeof readRecord> {
  let known: Promise<Memory> | undefined;
  const learn = async (): Promise<Memory> => {
    const memory: Memory = new Map();
    await readRecord(base, { today: TODAY, memory });
    return memory;
  };
  return async (folder) => {
    known ??= learn();
    return readRecord(folder, { today: TODAY, memory: new Map(await known) });
  };
}
