import type { Edition } from "../editions/shown.ts";
import type { PreviewTeller } from "../preview/preview.ts";
import { type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";
import { notesWords, problemWords, tellerFor } from "./teller.ts";

interface PreviewOptions extends RecordOptions {
  readonly port: number;
  readonly edition: Edition;
}

export async function previewCommand(
  { port, edition, ...options }: PreviewOptions,
  surroundings: Surroundings,
): Promise<number> {
  const { startPreview } = await import("../preview/preview.ts");
  const stopped = surroundings.untilStopped();
  const preview = await startPreview(
    { ...recordRequest(options, surroundings), port, edition },
    previewTeller(surroundings),
  );
  await stopped;
  await preview.close();
  return EXIT.fine;
}

function previewTeller(surroundings: Surroundings): PreviewTeller {
  const { line, progress } = tellerFor(surroundings);
  let noted = "";
  return {
    progress,
    line: () => undefined,
    serving: (url) => line(`Serving at ${url} (stop with Ctrl+C).`),
    error: (text) => surroundings.err(`${text}\n`),
    renewed: (renewed, milliseconds) => {
      if (renewed instanceof Error)
        return surroundings.err(`The site could not be made: ${renewed.stack ?? renewed.message}\n`);
      const notes = notesWords(renewed.notes);
      // After each edit the same notes once more would only hide what is new.
      if (notes !== "" && notes !== noted) line(notes);
      noted = notes;
      if ("problems" in renewed)
        surroundings.err(
          `${problemWords(renewed.problems, surroundings.hasColours)} The last good site stays in view.\n`,
        );
      else
        line(
          `Read and reckoned in ${(milliseconds / 1000).toFixed(2)} s; each of the ${renewed.pages} pages is made when you open it.`,
        );
    },
  };
}
