/** The process in which PDFs are set, one after another. It ends when whoever began it does, or wants no more. */
import { writeFile } from "node:fs/promises";
import type { PaperMessage, PaperReply } from "./apart.ts";
import { openMaker } from "./typst.ts";

const opened = openMaker();

async function setOne({ paper, files, to }: PaperMessage): Promise<PaperReply> {
  const maker = await opened;
  if (maker === undefined) return { failed: "Typst is not here" };
  const bytes = await maker.set(paper, files);
  if (process.connected) await writeFile(to, bytes);
  return {};
}

process.on("message", (task: PaperMessage) => {
  void setOne(task)
    .catch(
      (error: unknown): PaperReply => ({
        failed: error instanceof Error ? (error.stack ?? error.message) : String(error),
      }),
    )
    .then((reply) => process.connected && process.send?.(reply));
});
process.once("disconnect", () => process.exit());
