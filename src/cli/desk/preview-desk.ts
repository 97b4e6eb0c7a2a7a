import { existsSync } from "node:fs";
import { join } from "node:path";
import { defined } from "../../defined.ts";
import { dueOf } from "../../desk/due/due.ts";
import { dueText } from "../../desk/due/told.ts";
import { entryText, pathOf } from "../../desk/entry/text.ts";
import { added, keep } from "../../desk/keep.ts";
import { FolderRefused } from "../../desk/whole-folder.ts";
import { editionOf } from "../../editions/edition.ts";
import { reckon } from "../../evidence/evidence.ts";
import type { PreviewDesk } from "../../preview/desk.ts";
import type { EditorLink } from "../../preview/editor.ts";
import { inOrder, problemText } from "../../problem.ts";
import { localDay } from "../../facts/time/local-day.ts";
import type { Surroundings } from "../surroundings.ts";
import { knownOf, readFor } from "./entry-command.ts";

/** What the builder's page of a preview shows and does. */
export function previewDesk(content: string, { now }: Pick<Surroundings, "now">, link?: EditorLink): PreviewDesk {
  return {
    told: async () => {
      const today = localDay(now());
      const read = await readFor(content, today, today);
      if ("problems" in read) return inOrder(read.problems).map(problemText).join("\n\n");
      const shown = editionOf(read.record, reckon(read.record), "archive");
      return dueText(shown, dueOf(shown));
    },
    begin: async () => {
      const today = localDay(now());
      const before = await readFor(content, today, today);
      const known = "record" in before ? knownOf(before.record, today, now().getTime() / 1000) : undefined;
      const title = freeTitle(content, today);
      const path = pathOf(today, title);
      const files = new Map([[path, Buffer.from(entryText(today, { title }, known))]]);
      try {
        const problems = await added(content, files, today, before);
        if (problems.length > 0) return { refused: problems.map(problemText).join("\n\n") };
        await keep(content, files);
      } catch (error) {
        if (error instanceof FolderRefused) return { refused: error.message };
        throw error;
      }
      return defined({ path: join(content, path), link: link?.({ file: path, line: 1, column: 1 }) });
    },
  };
}

/** `Session`, and a number where the day has had one. */
function freeTitle(content: string, day: string): string {
  for (let number = 1; ; number += 1) {
    const title = number === 1 ? "Session" : `Session ${number}`;
    if (!existsSync(join(content, pathOf(day, title)))) return title;
  }
}
