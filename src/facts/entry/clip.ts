/** A short film. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show } from "../decisions.ts";
import { audience, block, words } from "../field.ts";
import { file } from "../id.ts";
import { factOf, type InEntry } from "../typing.ts";
import type { Audience, FilePath, Path } from "../values.ts";

export const clipSchema = block({
  file: file("The clip, relative to this file: .mp4, .m4v or .webm.", "../clips/flex.mp4"),
  poster: file("The picture that stands for it until it is played, relative to this file.", "../photos/flex.jpg"),
  alt: words(
    "What is to be seen and heard, for those who cannot.",
    "The tip is pushed down a hand’s breadth and springs back",
  ),
  caption: words("A line below the clip.", "Twenty kilograms at the tip").optional(),
  for: audience().optional(),
});

/** A short film. Its poster, a picture of the record, stands in its place until it is asked for. */
export interface Clip {
  readonly place: Place;
  readonly file: FilePath;
  readonly poster: FilePath;
  readonly alt: string;
  readonly caption?: string;
  readonly audience: Audience;
}

export function clipOf(spec: z.output<typeof clipSchema>, path: Path, of: InEntry): Clip {
  return factOf<Clip>({
    place: of.at(path),
    file: of.path(spec.file),
    poster: of.path(spec.poster),
    alt: spec.alt,
    caption: spec.caption,
    audience: spec.for ?? "public",
  });
}

export const clipShown: Decisions<Clip> = {
  place: show,
  file: show,
  poster: show,
  alt: show,
  caption: show,
  audience: show,
};
