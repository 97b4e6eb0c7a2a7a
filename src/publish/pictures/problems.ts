import type { Problem } from "../../problem.ts";
import type { ProblemCode } from "../../problems/codes.ts";
import type { Objection } from "./drawing/objection.ts";
import type { Wanted } from "./wanted.ts";

/** A picture that cannot be decoded, told where the record names it. `error` is sharp's own. */
export function unreadable({ file, place }: Wanted, error: unknown): Problem {
  const reason = firstLine(error);
  const common = { ...place, found: reason };
  if (/pixel limit|exceeds/i.test(reason)) {
    return {
      ...common,
      code: "picture-too-large",
      message: `The picture \`${file}\` has too many pixels to be published`,
      mend: "save a smaller copy of it, not over 200 megapixels, and name that",
    };
  }
  if (/heif|heic|compression format/i.test(reason)) {
    return {
      ...common,
      code: "picture-unreadable",
      message: `The picture \`${file}\` is in a form that cannot be read here`,
      mend: "save it as JPEG (on a phone: set the camera to “most compatible”) and name that file",
    };
  }
  return {
    ...common,
    code: "picture-unreadable",
    message: `The picture \`${file}\` cannot be read: it is damaged, cut short, or no picture at all`,
    mend: "copy it again from the camera, or open it in a picture program and save it anew as JPEG or PNG",
  };
}

const DRAWING_CODES: { readonly [kind in Objection["kind"]]: ProblemCode } = {
  unreadable: "drawing-unreadable",
  large: "drawing-too-large",
  unsafe: "drawing-unsafe",
};

/** What keeps a drawing from being published, each told where it stands in the drawing. */
export function drawingProblems({ file }: Wanted, objections: readonly Objection[]): Problem[] {
  return objections.map(({ kind, why, ...place }) => ({
    file,
    ...place,
    code: DRAWING_CODES[kind],
    message: `In this drawing, ${why}`,
  }));
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split("\n")[0]?.trim() ?? "";
}
