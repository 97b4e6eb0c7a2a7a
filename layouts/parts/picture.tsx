import type { ComponentChildren, JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { Picture, Site } from "../../src/editions/shown.ts";
import { tintClass } from "./placed.ts";
import type { Photo as PhotoFact } from "../../src/facts/types.ts";

export interface PhotoProps {
  readonly site: Site;
  readonly from: string;
  readonly photo: Pick<PhotoFact, "file" | "alt" | "caption">;
  /** The `sizes` of the image: how wide it is laid out. */
  readonly sizes?: string;
  /** Pixels beyond which no file is offered, where it is always laid out small. */
  readonly widest?: number;
  /** False only for the first picture of a page. */
  readonly lazy?: boolean;
  /** Without a caption the picture alone, for lists. */
  readonly caption?: boolean;
  /** Whether it is a link to its largest file. */
  readonly opens?: boolean;
  readonly class?: string;
}

const MIDDLE_WIDTH = 800;

type Files = Picture["sources"][number]["files"];

/** The first that is wide enough, and all that are narrower. */
function upTo(files: Files, widest: number): Files {
  const enough = files.findIndex(({ width }) => width >= widest);
  return enough < 0 ? files : files.slice(0, enough + 1);
}

/** The file nearest to a middling width, for what reads no `srcset`. */
export function fallbackOf(files: Files): string {
  return upTo(files, MIDDLE_WIDTH).at(-1)?.path ?? "";
}

function srcset(from: string, files: Files): string {
  return files.map(({ path, width }) => `${relative(from, path)} ${width}w`).join(", ");
}

/** An image with its size stated, so that nothing moves when it comes. */
export function Image({ site, from, photo, sizes = "100vw", widest = Infinity, lazy = true }: PhotoProps): JSX.Element {
  const picture = site.pictures.get(photo.file);
  const file = site.files.get(photo.file);
  if (picture === undefined) {
    return file === undefined ? (
      <span class="photo__missing">{photo.alt}</span>
    ) : (
      <img src={relative(from, file)} alt={photo.alt} loading={lazy ? "lazy" : undefined} />
    );
  }
  const offered = picture.sources.map(({ type, files }) => ({ type, files: upTo(files, widest) }));
  const common = offered.at(-1)?.files ?? [];
  const widths = (files: Files): { srcset?: string; sizes?: string } =>
    files.length < 2 ? {} : { srcset: srcset(from, files), sizes };
  return (
    <picture>
      {offered.slice(0, -1).map(({ type, files }) => (
        <source type={type} srcset={srcset(from, files)} {...widths(files)} />
      ))}
      <img
        src={relative(from, fallbackOf(common))}
        {...widths(common)}
        width={picture.width}
        height={picture.height}
        alt={photo.alt}
        loading={lazy ? "lazy" : undefined}
        fetchpriority={lazy ? undefined : "high"}
        decoding="async"
        class={tintClass(picture.colour)}
      />
    </picture>
  );
}

/** Files in `assets/` that a page takes whose photographs can be opened large. */
export const GALLERY_SCRIPTS = ["gallery.js"] as const;

interface LargeProps extends Pick<PhotoProps, "site" | "from"> {
  readonly file: PhotoFact["file"];
  readonly children?: ComponentChildren;
}

/** A link from a picture to its largest file; where there is none the picture alone. */
export function Large({ site, from, file, children }: LargeProps): JSX.Element {
  const large = site.pictures.get(file)?.sources.at(-1)?.files.at(-1)?.path;
  if (large === undefined) return <>{children}</>;
  return (
    <a class="photo__large" href={relative(from, large)}>
      {children}
    </a>
  );
}

/** A photograph with its caption, a link to its largest file where it `opens`. */
export function Photo(props: PhotoProps): JSX.Element {
  const { site, from, photo, caption = true, opens = false, class: name } = props;
  return (
    <figure class={name === undefined ? "photo" : `photo ${name}`}>
      {opens ? (
        <Large site={site} from={from} file={photo.file}>
          <Image {...props} />
        </Large>
      ) : (
        <Image {...props} />
      )}
      {caption && photo.caption !== undefined ? <figcaption>{photo.caption}</figcaption> : null}
    </figure>
  );
}
