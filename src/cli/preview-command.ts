import type { Edition } from "../editions/shown.ts";
import type { PreviewTeller } from "../preview/preview.ts";
import { defined } from "../defined.ts";
import { DESK } from "../preview/desk.ts";
import { editorLink } from "../preview/editor.ts";
import { previewDesk } from "./desk/preview-desk.ts";
import { type RecordOptions, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";
import { notesWords, problemWords, tellerFor } from "./teller.ts";

interface PreviewOptions extends RecordOptions {
  readonly port: number;
  readonly edition: Edition;
  /** A pattern of links into an editor. */
  readonly editor?: string;
}

export async function previewCommand(
  { port, edition, editor, ...options }: PreviewOptions,
  surroundings: Surroundings,
): Promise<number> {
  const request = recordRequest(options, surroundings);
  const link = editor === undefined ? undefined : editorLink(editor, request.content);
  if (editor !== undefined && link === undefined)
    throw new WrongUse("A link into an editor has a scheme of its own and {path}, such as vscode://file{path}:{line}");
  const desk = previewDesk(request.content, surroundings, link);
  const { startPreview } = await import("../preview/preview.ts");
  const stopped = surroundings.untilStopped();
  const preview = await startPreview(defined({ ...request, port, edition, desk, link }), previewTeller(surroundings));
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
    serving: (url) => line(`Serving at ${url} (stop with Ctrl+C). What is due, and a new entry: ${url}${DESK}`),
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
