import { addressOf, relative } from "../pages/address.ts";
import type { Shown, Site } from "../pages/shown.ts";
import { resolved } from "../pages/veiled-prose.ts";
import type { FilePath, Photo, Ref } from "../record/types.ts";

/** Finds what links and images in prose lead to, as one edition shows it. `from` is the path of the page they stand on. */
export interface Targets {
  /** Where a link leads; undefined where the edition does not show it. */
  readonly link: (target: string, from: string) => string | undefined;
  readonly photo: (target: string, from: string) => Pick<Photo, "file" | "alt"> | undefined;
}

const OUTSIDE = /^(https?:|mailto:)/i;

/** Folders of the record by the folder of the site which tells of what is in them. */
const RECORD_FOLDERS: { readonly [folder: string]: string } = { entry: "entries", assembly: "assemblies", lot: "lots", trial: "trials" };
const KINDS: { readonly [folder: string]: Ref["kind"] } = { entries: "entry", assemblies: "assembly", lots: "lot", trials: "trial", adhesives: "adhesive", procedures: "procedure" };
/** Tried in turn for a page that shows prose from several folders. */
const ALL_FOLDERS = ["entries", "", "assemblies", "trials", "lots", "adhesives", "procedures"];

export function targetsIn({ shown, pictures, files }: Pick<Site, "shown" | "pictures" | "files">): Targets {
  const refs = refsById(shown);
  const photos = photosByFile(shown);
  const addressOfShown = (ref: Ref | undefined): string | undefined => (ref !== undefined && shown.shows(ref) ? addressOf(ref) : undefined);
  const pictureAddress = (file: FilePath): string | undefined => pictures.get(file)?.sources.at(-1)?.files.at(-1)?.path;
  return {
    link: (target, from) => {
      if (OUTSIDE.test(target)) return target;
      const bare = decoded(target);
      const address = addressOfShown(refs.get(bare)) ?? first(paths(bare, from), (path) => addressOfShown(fileRef(path)) ?? files.get(path) ?? pictureAddress(path));
      return address === undefined ? undefined : relative(from, address);
    },
    photo: (target, from) => first(paths(decoded(target), from), (path) => (pictures.has(path) ? photos.get(path) : undefined)),
  };
}

function refsById({ record, evidence }: Shown): ReadonlyMap<string, Ref> {
  const ids: readonly (readonly [Ref["kind"], Iterable<string>])[] = [
    ["assembly", record.assemblies.keys()], ["adhesive", record.adhesives.keys()], ["procedure", record.procedures.keys()],
    ["lot", record.lots.keys()], ["trial", record.trials.keys()], ["joint", evidence.joints.keys()], ["batch", evidence.batches.keys()],
    ["piece", evidence.pieces.keys()], ["departure", evidence.departures.keys()], ["open item", evidence.openItems.keys()],
    ["hold point", evidence.holdPoints.keys()], ["entry", record.entries.map((entry) => entry.id)],
  ];
  return new Map(ids.flatMap(([kind, each]) => [...each].map((id) => [id, { kind, id }] as const)));
}

function photosByFile({ record }: Shown): ReadonlyMap<FilePath, Photo> {
  const photos = [...(record.aircraft.photo === undefined ? [] : [record.aircraft.photo]), ...record.entries.flatMap((entry) => entry.photos)];
  return new Map(photos.map((photo) => [photo.file, photo]));
}

function paths(target: string, from: string): string[] {
  const own = RECORD_FOLDERS[from.slice(0, from.indexOf("/"))];
  return [...(own === undefined ? [] : [own]), ...ALL_FOLDERS].map((folder) => resolved(folder, target));
}

function fileRef(path: string): Ref | undefined {
  const [, folder = "", id = ""] = /^(\w+)\/(.+)\.md$/.exec(path) ?? [];
  const kind = KINDS[folder];
  return kind === undefined ? undefined : { kind, id };
}

function first<Found>(candidates: readonly string[], find: (candidate: string) => Found | undefined): Found | undefined {
  for (const candidate of candidates) {
    const found = find(candidate);
    if (found !== undefined) return found;
  }
  return undefined;
}

function decoded(target: string): string {
  try {
    return decodeURIComponent(target);
  } catch {
    return target;
  }
}
