/** Links, pictures and comments in prose. */
import { posix } from "node:path";
import type { Filed } from "../filed.ts";
import { resolveTarget, type LinkIndex } from "../links.ts";
import { beyond, inThousands, LIMITS } from "../../facts/limits.ts";
import { nearest } from "../../facts/nearest.ts";
import { type Fault, isFault, meaning, type Mending, onlyYouKnow, shown, writes } from "../../facts/reading.ts";
import { pathBetween } from "../file-index.ts";
import type { Mention } from "../text/prose.ts";
import type { FilePath } from "../../facts/types.ts";
import { type CheckContext, doubtful, soundOf } from "./context.ts";

interface Declared {
  readonly index: LinkIndex;
  readonly pictures: ReadonlySet<FilePath>;
  readonly clips: ReadonlySet<FilePath>;
  readonly files: ReadonlySet<FilePath>;
}

export function checkProse(context: CheckContext): void {
  let declared: Declared | undefined;
  const files: readonly (readonly Filed<unknown>[])[] = Object.values(context.draft.files);
  for (const filed of files.flat()) {
    for (const [index, { line }] of filed.body.entries()) {
      const mentions = filed.mentions[index] ?? [];
      if (mentions.length > 0) declared ??= declaredIn(context);
      if (declared)
        for (const mention of mentions) checkMention(context, filed, filed.source.lineStart(line), mention, declared);
    }
  }
}

/** Every file beside the record that a file of the record names. */
export function filesNamed(context: CheckContext): ReadonlySet<FilePath> {
  return declaredIn(context).files;
}

function declaredIn(context: CheckContext): Declared {
  const pictures = new Set<FilePath>();
  const clips = new Set<FilePath>();
  const files = new Set<FilePath>();
  const declare = (filed: Filed<unknown>, typed: string | undefined, picture: boolean, clip = false): void => {
    if (typed === undefined) return;
    const found = context.fileIndex.find(filed.file, typed);
    if (isFault(found)) return;
    files.add(found.value);
    if (picture) pictures.add(found.value);
    if (clip) clips.add(found.value);
  };
  for (const filed of soundOf(context, "aircraft")) declare(filed, filed.spec.photo?.file, true);
  for (const filed of soundOf(context, "assembly")) declare(filed, filed.spec.drawing?.file, false);
  for (const kind of ["adhesive", "finish"] as const)
    for (const filed of soundOf(context, kind)) declare(filed, filed.spec.sheet_file, false);
  for (const filed of soundOf(context, "lot")) declare(filed, filed.spec.certificate, false);
  for (const filed of soundOf(context, "entry")) {
    for (const { file } of filed.spec.photos ?? []) declare(filed, file, true);
    for (const { file, poster } of filed.spec.clips ?? []) {
      declare(filed, file, false, true);
      declare(filed, poster, true);
    }
    for (const { file } of filed.spec.attachments ?? []) declare(filed, file, false);
    for (const { photo } of filed.spec.tests ?? []) declare(filed, photo, false);
    for (const { scan } of filed.spec.inspections ?? []) declare(filed, scan, false);
  }
  return {
    pictures,
    clips,
    files,
    index: { refOf: (id) => context.ids.get(id), isDeclared: (file) => files.has(file) },
  };
}

function checkMention(
  context: CheckContext,
  filed: Filed<unknown>,
  start: number,
  mention: Mention,
  declared: Declared,
): void {
  const fault =
    mention.kind === "comment"
      ? COMMENT
      : mention.kind === "beyond"
        ? TOO_MANY
        : mention.kind === "image"
          ? imageFault(context, filed, mention.target, declared)
          : linkFault(context, filed, mention.target, declared);
  if (!fault) return;
  const at = start + mention.offset;
  const typed = filed.source.text.startsWith(mention.target, at) ? mention.target : "";
  context.problems.push(filed.source.problem(at, fault, typed));
}

const TOO_MANY = beyond(
  "this passage has more links and pictures than are read",
  inThousands(LIMITS.links),
  "part it over several entries",
);

const COMMENT: Fault = {
  code: "html-comment",
  message: "readers would see this comment: HTML in prose is shown as typed",
  expected: "`::: archive` for what only the archive may hold",
  found: "<!--",
  mend: "take the comment out, or put it into a passage for the archive",
};

const LINK_EXPECTED = "an id such as B-014, an entry's file name, a declared file, or a web address";

function linkFault(
  context: CheckContext,
  filed: Filed<unknown>,
  href: string,
  { index, files }: Declared,
): Fault | undefined {
  if (resolveTarget(index, filed.file, href)) return undefined;
  const said = (message: string, mend: string | Mending): Fault => ({
    code: "prose-link",
    message,
    expected: LINK_EXPECTED,
    ...(href !== "" && { found: shown(href) }),
    ...(typeof mend === "string" ? onlyYouKnow(mend) : mend),
  });
  if (href === "") return said("this link leads nowhere", "say where it leads, or take the brackets away");
  if (/^[a-z][a-z0-9+.-]*:/i.test(href))
    return said("links of this kind are not shown", "give an address that begins with https://, http:// or mailto:");
  if (href.startsWith("//") || /^www\./i.test(href))
    return said("this web address has no beginning", writes(`https://${href.replace(/^\/+/, "")}`));
  if (href.includes("#"))
    return said(
      "a link leads to a whole page, not to a place in it",
      href.startsWith("#") ? "take the link away" : writes(href.slice(0, href.indexOf("#"))),
    );
  if (context.ids.get(href)?.kind === "person") return said("people have no pages", "leave the name without a link");
  if (doubtful(context, posix.basename(href))) return undefined;
  const onDisk = context.fileIndex.find(filed.file, href);
  if (!isFault(onDisk))
    return said(
      "this file is declared nowhere in the record",
      "add it to `photos` or `attachments` of an entry, so that it is known for whom it is",
    );
  if (/\.\w{2,4}$/.test(href) && !href.endsWith(".md")) return onDisk.fault;
  return said("this link leads to nothing in the record", mendFor(context, filed, href, files));
}

function mendFor(context: CheckContext, filed: Filed<unknown>, href: string, files: ReadonlySet<FilePath>): Mending {
  const ids = [...context.ids.all()].filter(({ kind }) => kind !== "person");
  const name = posix.basename(href, ".md");
  const meant = nearest(
    href.endsWith(".md") ? name : href,
    ids.filter(({ kind }) => !href.endsWith(".md") || kind === "entry" || !name.includes("-20")).map(({ id }) => id),
  );
  if (meant !== undefined) return meaning(href.endsWith(".md") ? `${meant}.md` : meant);
  const file = nearest(
    href,
    [...files].map((path) => pathBetween(filed.file, path)),
  );
  return file === undefined ? onlyYouKnow("name an id or a file that the record has") : meaning(file);
}

function imageFault(
  context: CheckContext,
  filed: Filed<unknown>,
  src: string,
  { pictures, clips }: Declared,
): Fault | undefined {
  const said = (message: string, mend: string): Fault => ({
    code: "prose-picture",
    message,
    expected: "a picture that stands under `photos`, by its path",
    found: shown(src),
    mend,
  });
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(src))
    return said(
      "pictures are not fetched from elsewhere",
      "put the picture into the record's folder and declare it under `photos`",
    );
  const found = context.fileIndex.find(filed.file, decodeURIComponentSafely(src));
  if (isFault(found)) return found.fault;
  if (pictures.has(found.value) || doubtful(context, posix.basename(found.value))) return undefined;
  if (clips.has(found.value))
    return said("a clip is shown below the prose, not within it", "take the ! away, so that it is a link to the clip");
  return said(
    "this picture is not declared",
    `add { file: ${pathBetween(filed.file, found.value)}, alt: … } to \`photos\`${filed.file.startsWith("entries/") ? "" : " of an entry"}`,
  );
}

function decodeURIComponentSafely(src: string): string {
  try {
    return decodeURIComponent(src);
  } catch {
    return src;
  }
}
