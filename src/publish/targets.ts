import { addressOf, relative } from "../pages/address.ts";
import type { Site } from "../editions/shown.ts";
import { type Target, targetOf } from "../record/links.ts";
import { webAddress } from "../record/text/markdown.ts";
import type { FilePath, Photo } from "../facts/types.ts";

/**
 * Finds what links and images in prose lead to, as one edition shows it. `from` is the path of the page they stand
 * on.
 */
export interface Targets {
  /** Where a link leads; undefined where the edition does not show it. */
  readonly link: (target: string, from: string) => string | undefined;
  readonly photo: (target: string, from: string) => Pick<Photo, "file" | "alt"> | undefined;
}

/** Folders of the record by the folder of the site which tells of what is in them. */
const RECORD_FOLDERS: { readonly [folder: string]: string } = {
  entry: "entries",
  assembly: "assemblies",
  lot: "lots",
  trial: "trials",
};
/** Tried in turn for a page that shows prose from several folders. */
const ALL_FOLDERS = [
  "entries",
  "",
  "assemblies",
  "trials",
  "lots",
  "adhesives",
  "finishes",
  "procedures",
  "climate",
  "hours",
];

/** A link means here what it meant when the record was checked; of the record only what the edition shows is asked. */
export function targetsIn({
  shown,
  pictures,
  clips,
  files,
}: Pick<Site, "shown" | "pictures" | "clips" | "files">): Targets {
  const photos = photosByFile(shown.record);
  const address = (target: Target | undefined): string | undefined => {
    if (target === undefined || "web" in target) return undefined;
    if ("file" in target)
      return (
        files.get(target.file) ??
        clips.get(target.file)?.path ??
        pictures.get(target.file)?.sources.at(-1)?.files.at(-1)?.path
      );
    return shown.shows(target.ref) ? addressOf(target.ref) : undefined;
  };
  return {
    link: (href, from) =>
      first(standIns(from), (file) => {
        const target = targetOf(shown.record, file, href);
        if (target !== undefined && "web" in target) return webAddress(target.web);
        const found = address(target);
        return found === undefined ? undefined : relative(from, found);
      }),
    photo: (src, from) =>
      first(standIns(from), (file) => {
        const target = targetOf(shown.record, file, src);
        return target !== undefined && "file" in target && pictures.has(target.file)
          ? photos.get(target.file)
          : undefined;
      }),
  };
}

function photosByFile(record: Site["shown"]["record"]): ReadonlyMap<FilePath, Pick<Photo, "file" | "alt">> {
  const photos = [
    ...(record.aircraft.photo === undefined ? [] : [record.aircraft.photo]),
    ...record.entries.flatMap((entry) => entry.photos),
  ];
  const posters = record.entries.flatMap(({ clips }) => clips.map(({ poster, alt }) => ({ file: poster, alt })));
  return new Map([...posters, ...photos].map((photo) => [photo.file, photo]));
}

/** Files in each folder that the prose of a page may stand in: what a link leads to depends on the folder alone. */
function standIns(from: string): string[] {
  const own = RECORD_FOLDERS[from.slice(0, from.indexOf("/"))];
  return [...(own === undefined ? [] : [own]), ...ALL_FOLDERS].map((folder) =>
    folder === "" ? "-.md" : `${folder}/-.md`,
  );
}

function first<Found>(
  candidates: readonly string[],
  find: (candidate: string) => Found | undefined,
): Found | undefined {
  for (const candidate of candidates) {
    const found = find(candidate);
    if (found !== undefined) return found;
  }
  return undefined;
}
