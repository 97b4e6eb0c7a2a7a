/** A picture. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { audience, block, words } from "../field.ts";
import { file } from "../id.ts";
import { factOf } from "../typing.ts";
import type { Audience, FilePath, Path } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const photoSchema = block({
  file: file("The picture, relative to this file.", "../photos/jig.jpg"),
  alt: words("What is to be seen, for those who cannot see it.", "Both caps in the jig under light clamps"),
  caption: words("A line below the picture.", "Dry run first").optional(),
  for: audience().optional(),
});

export interface Photo {
  readonly place: Place;
  readonly file: FilePath;
  readonly alt: string;
  readonly caption?: string;
  readonly audience: Audience;
}

/** The file that a picture stands in, by its places and paths. */
interface Standing {
  readonly at: (path: Path) => Place;
  readonly path: (typed: string) => FilePath;
}

/** As typed; the aircraft's own picture is for everyone. */
type Typed = Omit<z.output<typeof photoSchema>, "for"> & { readonly for?: Audience | undefined };

export function photoOf(spec: Typed, path: Path, of: Standing): Photo {
  return factOf<Photo>({
    place: of.at(path),
    file: of.path(spec.file),
    alt: spec.alt,
    caption: spec.caption,
    audience: spec.for ?? "public",
  });
}

export const photoShown: Decisions<Photo> = { place: show, file: show, alt: show, caption: show, audience: show };

/** Hidden wherever one of the marks on its file says so. */
export const isFileShown = ({ file: one }: { readonly file: FilePath }, seer: Visibility): boolean =>
  !seer.hiddenFiles.has(one);
