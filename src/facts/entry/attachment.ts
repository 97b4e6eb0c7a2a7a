/** A paper that belongs to a day. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, show, withheldAs } from "../decisions.ts";
import { audience, block, words } from "../field.ts";
import { file } from "../id.ts";
import type { InEntry } from "../typing.ts";
import type { Audience, FilePath, Path } from "../values.ts";
import type { Visibility } from "../visibility.ts";
import { isFileShown } from "./photo.ts";

export const attachmentSchema = block({
  file: file("The file, relative to this one.", "../papers/invoice.pdf"),
  title: words("What it is.", "Invoice for the plywood"),
  for: audience().optional(),
});

export interface Attachment {
  readonly place: Place;
  readonly file: FilePath;
  readonly title: string;
  readonly audience: Audience;
}

export function attachmentOf(spec: z.output<typeof attachmentSchema>, path: Path, of: InEntry): Attachment {
  return { place: of.at(path), file: of.path(spec.file), title: spec.title, audience: spec.for ?? "public" };
}

export const attachmentShown: Decisions<Attachment> = { place: show, file: show, title: show, audience: show };

export const isAttachmentShown = withheldAs(
  "attachments",
  (one: Attachment, seer: Visibility): boolean => seer.may("attachments") && isFileShown(one, seer),
);
