import type { Edition } from "../pages/shown.ts";
import type { PreviewTeller } from "../preview/preview.ts";
import { type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";
import { problemWords, tellerFor } from "./teller.ts";

interface PreviewOptions extends RecordOptions {
  readonly port: number;
  readonly edition: Edition;
}

export async function previewCommand({ port, edition, ...options }: PreviewOptions, surroundings: Surroundings): Promise<number> {
  const { startPreview } = await import("../preview/preview.ts");
  const stopped = surroundings.untilStopped();
  const preview = await startPreview({ ...recordRequest(options, surroundings), port, editions: [edition] }, previewTeller(surroundings));
  await stopped;
  await preview.close();
  return EXIT.fine;
}

function previewTeller(surroundings: Surroundings): PreviewTeller {
  const { line, progress } = tellerFor(surroundings);
  return {
    progress,
    line: () => undefined,
    serving: (url) => line(`Serving at ${url} (stop with Ctrl+C).`),
    error: (text) => surroundings.err(`${text}\n`),
    built: (built, milliseconds) => {
      if (built instanceof Error) surroundings.err(`The site could not be built: ${built.stack ?? built.message}\n`);
      else if ("problems" in built) surroundings.err(`${problemWords(built.problems, surroundings.hasColours)} The last good site stays in view.\n`);
      else line(`Built ${built.editions.reduce((sum, { pages }) => sum + pages, 0)} pages in ${(milliseconds / 1000).toFixed(2)} s.`);
    },
  };
}
