import type { JSX } from "preact";
import { relative } from "../src/pages/address.ts";
import type { Picture, Site } from "../src/pages/shown.ts";
import type { Photo as PhotoFact } from "../src/record/types.ts";

interface PhotoProps {
  readonly site: Site;
  readonly from: string;
  readonly photo: Pick<PhotoFact, "file" | "alt" | "caption">;
  /** The `sizes` of the image: how wide it is laid out. */
  readonly sizes?: string;
  /** False only for the first picture of a page. */
  readonly lazy?: boolean;
  /** Without a caption the picture alone, for lists. */
  readonly caption?: boolean;
  readonly class?: string;
}

const MIDDLE_WIDTH = 800;

/** Of a format's files the one nearest to a middling width, for browsers that read no `srcset`. */
function fallbackOf(picture: Picture): string {
  const files = picture.sources[picture.sources.length - 1]?.files ?? [];
  const fit = files.find(({ width }) => width >= MIDDLE_WIDTH) ?? files[files.length - 1];
  return fit?.path ?? "";
}

function srcset(from: string, files: Picture["sources"][number]["files"]): string {
  return files.map(({ path, width }) => `${relative(from, path)} ${width}w`).join(", ");
}

/** An image with its size stated, so that nothing moves when it comes. */
export function Image({ site, from, photo, sizes = "100vw", lazy = true }: PhotoProps): JSX.Element {
  const picture = site.pictures.get(photo.file);
  const file = site.files.get(photo.file);
  if (picture === undefined) {
    return file === undefined ? <span class="photo__missing">{photo.alt}</span> : <img src={relative(from, file)} alt={photo.alt} loading={lazy ? "lazy" : undefined} />;
  }
  const better = picture.sources.slice(0, -1);
  const common = picture.sources[picture.sources.length - 1];
  return (
    <picture>
      {better.map(({ type, files }) => <source type={type} srcset={srcset(from, files)} sizes={sizes} />)}
      <img
        src={relative(from, fallbackOf(picture))}
        srcset={common === undefined || common.files.length < 2 ? undefined : srcset(from, common.files)}
        sizes={sizes}
        width={picture.width}
        height={picture.height}
        alt={photo.alt}
        loading={lazy ? "lazy" : undefined}
        decoding="async"
        style={`background-color:${picture.colour}`}
      />
    </picture>
  );
}

/** A photograph with its caption. */
export function Photo(props: PhotoProps): JSX.Element {
  const { photo, caption = true, class: name } = props;
  return (
    <figure class={name === undefined ? "photo" : `photo ${name}`}>
      <Image {...props} />
      {caption && photo.caption !== undefined ? <figcaption>{photo.caption}</figcaption> : null}
    </figure>
  );
}
