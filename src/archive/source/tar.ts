import { createReadStream } from "node:fs";
import { Parser, type ReadEntry } from "tar";
import { Damaged, type BagSource } from "./source.ts";
import { Members, withoutBaseFolder } from "./members.ts";

/** Longer names and notes in an archive than this are refused by the parser, so that they cannot fill the memory. */
const LARGEST_NAME = 64 * 1024;

/** A bag in a `.tar`, compressed by gzip or not. It is read from its beginning to its end for each visit. */
export function tarSource(path: string): BagSource {
  let base = "";
  return {
    name: path,
    list: async (findings) => {
      const members = new Members(findings);
      await walk(path, async (entry) => {
        entry.resume();
        const name = entry.path.replace(/^\.\//, "");
        if (entry.type === "File" || entry.type === "OldFile" || entry.type === "ContiguousFile")
          members.add(name, entry.size);
        else if (entry.type === "Directory" || entry.type === "GNUDumpDir") members.count();
        else members.refuse(name, kindWords(entry.type));
      });
      const found = withoutBaseFolder(members.end(), findings);
      base = found.base;
      return found.members;
    },
    visit: async (wanted, use) => {
      const seen = new Set<string>();
      await walk(path, async (entry) => {
        const name = entry.path.replace(/^\.\//, "");
        const inner = name.slice(base.length);
        const isFile = entry.type.endsWith("File") && name.startsWith(base) && !seen.has(inner);
        if (!isFile || !wanted(inner)) return void entry.resume();
        seen.add(inner);
        await use(inner, entry as AsyncIterable<Uint8Array>);
        entry.resume();
      });
    },
    close: () => Promise.resolve(),
  };
}

/** Gives one entry after the other to `use`, which must read it to its end. */
async function walk(path: string, use: (entry: ReadEntry) => Promise<void>): Promise<void> {
  const input = createReadStream(path, { highWaterMark: 256 * 1024 });
  let chain = Promise.resolve();
  await new Promise<void>((resolve, reject) => {
    const fail = (error: unknown): void => {
      input.destroy();
      reject(error);
    };
    const parser = new Parser({ strict: false, maxMetaEntrySize: LARGEST_NAME });
    parser.on("entry", (entry: ReadEntry) => {
      chain = chain.then(() => use(entry));
      chain.catch(fail);
    });
    parser.on("ignoredEntry", (entry: ReadEntry) =>
      fail(new Damaged(`holds something that cannot be read at ${entry.path || "an unnamed place"}`)),
    );
    parser.on("warn", (code: string, message: string) => {
      if (code !== "TAR_ENTRY_INFO") fail(new Damaged(`is damaged: ${message}`));
    });
    parser.on("error", (error: Error) => fail(new Damaged(`is damaged: ${error.message}`)));
    parser.on("end", () => chain.then(resolve, reject));
    input.on("error", fail);
    input.pipe(parser as unknown as NodeJS.WritableStream);
  });
}

function kindWords(type: string): string {
  if (type === "SymbolicLink") return "a symbolic link";
  return type === "Link" ? "a link to another file of the archive" : `of a kind that no record has (${type})`;
}
