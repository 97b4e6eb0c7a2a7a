import type { JSX } from "preact";
import { dateShort } from "../../../src/words/dates.ts";
import { counted } from "../../../src/words/lists.ts";
import { Photo } from "../../parts/picture.tsx";
import { To } from "../../shell/link.tsx";
import { None } from "../parts.tsx";
import { ByEye } from "./by-eye.tsx";
import { Numbered, type PartProps } from "./numbered.tsx";

/** Photographs of the days inside, with a line beside each for the bay that it shows. */
export function BayPhotographs({ page: { photos }, number, site, from }: PartProps): JSX.Element {
  return (
    <Numbered id="photographs" number={number} title="Photographs">
      {photos.shown.length === 0 ? (
        <None>The record has no photographs of what is inside.</None>
      ) : (
        <>
          <p class="quiet">
            The newest first. Which bay each shows the record does not say: write it beside the number.
            {photos.more === 0 ? "" : ` ${counted(photos.more, "older one")} with the entries of their days.`}
          </p>
          <ol class="bays bare">
            {photos.shown.map(({ photo, entry }, at) => (
              <li>
                <Photo site={site} from={from} photo={photo} sizes="11rem" widest={480} caption={false} opens />
                <p class="bays__words">
                  <strong>{at + 1}</strong>{" "}
                  <To site={site} from={from} to={{ kind: "entry", id: entry.id }}>
                    {dateShort(entry.day)}
                  </To>
                  {photo.caption === undefined ? "" : `: ${photo.caption}`}
                </p>
                <p class="bays__bay byeye__write">Bay</p>
              </li>
            ))}
          </ol>
        </>
      )}
      <ByEye looks={[{ words: "Each bay is photographed, with its number in the picture", write: true }]} />
    </Numbered>
  );
}
