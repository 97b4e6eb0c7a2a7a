import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { Site } from "../../src/editions/shown.ts";
import { playedWords } from "../../src/words/durations.ts";
import { bytesWords } from "../../src/words/numbers.ts";
import type { Clip as ClipFact } from "../../src/facts/types.ts";
import { fallbackOf } from "./picture.tsx";
import { frameClass, tintClass } from "./placed.ts";

interface ClipProps {
  readonly site: Site;
  readonly from: string;
  readonly clip: ClipFact;
}

/**
 * A clip by its poster, in the browser's own player. Nothing of it is loaded before somebody asks for it, and nothing
 * moves when it is.
 * On paper, where players print their buttons, the poster stands alone.
 */
export function Clip({ site, from, clip }: ClipProps): JSX.Element | null {
  const film = site.clips.get(clip.file);
  if (film === undefined) return null;
  const poster = site.pictures.get(clip.poster);
  const fallback = fallbackOf(poster?.sources.at(-1)?.files ?? []);
  const still = fallback === "" ? undefined : relative(from, fallback);
  const { width, height, path, seconds, bytes, type } = film;
  const place = [frameClass(width, height), tintClass(poster?.colour)].filter(Boolean).join(" ");
  return (
    <figure class="photo clip">
      <video
        controls
        playsInline
        preload="none"
        width={width}
        height={height}
        poster={still}
        aria-label={clip.alt}
        class={place}
      >
        <source src={relative(from, path)} type={type} />
      </video>
      {still === undefined ? null : (
        <img class="clip__still" src={still} width={poster?.width} height={poster?.height} alt={clip.alt} />
      )}
      <figcaption>
        {clip.caption === undefined ? null : <>{clip.caption} </>}
        <span class="clip__file">
          <a href={relative(from, path)}>The clip by itself</a>, {playedWords(seconds)}, {bytesWords(bytes)}
        </span>
      </figcaption>
    </figure>
  );
}
