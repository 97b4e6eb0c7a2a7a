import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { Pictured } from "../../src/pages/story/pictured.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateShort } from "../../src/words/dates.ts";
import { Image } from "./picture.tsx";

/** Photographs side by side, each leading to its entry. */
export function Strip({
  site,
  from,
  pictures,
}: {
  readonly site: Site;
  readonly from: string;
  readonly pictures: readonly Pictured[];
}): JSX.Element {
  return (
    <ul class="strip">
      {pictures.map(({ entry, photo }) => (
        <li>
          <a href={relative(from, `entry/${entry.id}.html`)}>
            <Image site={site} from={from} photo={photo} sizes="(min-width: 46rem) 24rem, 50vw" widest={960} />
            <span class="strip__words">
              <span class="strip__title">{entry.title}</span> <span class="strip__day">{dateShort(entry.day)}</span>
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}
