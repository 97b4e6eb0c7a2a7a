import type { JSX } from "preact";
import { amendmentsTo, changesOf } from "../../src/pages/story/amended.ts";
import { dateWords } from "../../src/words/dates.ts";
import { ended } from "../../src/words/lists.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Amendment, Change, Entry, Ref, Said } from "../../src/facts/types.ts";
import { To } from "../shell/link.tsx";
import { Prose } from "../shell/page.tsx";

interface Where {
  readonly site: Site;
  readonly from: string;
}

/** On the page of an entry that was amended: what is no longer as it was first written, since when and why. */
export function AmendedNote({ site, from, entry }: Where & { readonly entry: Entry }): JSX.Element | null {
  const all = amendmentsTo(site.shown, entry.id);
  if (all.length === 0) return null;
  return (
    <section class="amended" aria-label="Amended since">
      {all.map((amendment) => (
        <div class="amended__one">
          <h2>
            Amended on{" "}
            <To site={site} from={from} to={{ kind: "entry", id: amendment.by }}>
              <time dateTime={amendment.day}>{dateWords(amendment.day)}</time>
            </To>
          </h2>
          <Reason site={site} amendment={amendment} />
          <Changes site={site} from={from} amendment={amendment} />
        </div>
      ))}
    </section>
  );
}

/** On the page of an entry that amends others. */
export function AmendsNote({ site, from, entry }: Where & { readonly entry: Entry }): JSX.Element | null {
  if (entry.amendments.length === 0) return null;
  const { entries } = site.shown.record;
  return (
    <section class="amended" aria-label="What this entry amends">
      {entry.amendments.map((amendment) => {
        const amended = entries.find(({ id }) => id === amendment.entry);
        return (
          <div class="amended__one">
            <h2>
              Amends{" "}
              <To site={site} from={from} to={{ kind: "entry", id: amendment.entry }}>
                {amended === undefined ? "an entry" : `${amended.title}, ${dateWords(amended.day)}`}
              </To>
            </h2>
            <Reason site={site} amendment={amendment} />
            <Changes site={site} from={from} amendment={amendment} />
          </div>
        );
      })}
    </section>
  );
}

/** On the page of a thing: every value of it that was changed. */
export function ChangesOf({ site, from, about }: Where & { readonly about: readonly Ref[] }): JSX.Element | null {
  const all = about.flatMap((ref) => changesOf(site.shown, ref));
  if (all.length === 0) return null;
  return (
    <ul class="changes bare">
      {all.map(({ amendment, change }) => (
        <li>
          Amended on{" "}
          <To site={site} from={from} to={{ kind: "entry", id: amendment.by }}>
            <time dateTime={amendment.day}>{dateWords(amendment.day)}</time>
          </To>
          : <ChangeWords site={site} from={from} change={change} />, because: {whyWords(site, amendment)}
        </li>
      ))}
    </ul>
  );
}

function Reason({ site, amendment }: Pick<Where, "site"> & { readonly amendment: Amendment }): JSX.Element {
  return <p class="amended__why">Because: {whyWords(site, amendment)}</p>;
}

/** Why, and who saw the source of what is right. */
export function whyWords(site: Site, { why, seenBy }: Pick<Amendment, "why" | "seenBy">): string {
  return seenBy === undefined ? why : `${ended(why)} Source seen by ${site.shown.nameOf(seenBy)}.`;
}

export function Changes({
  site,
  from,
  amendment: { changes, prose, withheld },
}: Where & { readonly amendment: Amendment }): JSX.Element {
  return (
    <ul class="changes bare">
      {prose ? <li>The text of the day is struck out; it can still be read.</li> : null}
      {changes.map((change) => (
        <li>
          <ChangeWords site={site} from={from} change={change} />
        </li>
      ))}
      {withheld ? <li class="quiet">Some of what it changes is not shown in this edition.</li> : null}
    </ul>
  );
}

/** The line through a text is not seen by everyone, so words say the same. */
function ChangeWords({
  site,
  from,
  change: { fact, value, was, is, fixed, worsens },
}: Where & { readonly change: Change }): JSX.Element {
  return (
    <>
      {value === undefined ? fact : `${fact}, ${value}`}: was{" "}
      {was === undefined ? (
        "not written down"
      ) : (
        <del>
          <SaidWords site={site} from={from} said={was} />
        </del>
      )}
      ,{" "}
      {is === undefined ? (
        "is struck out"
      ) : (
        <>
          is{" "}
          <ins>
            <SaidWords site={site} from={from} said={is} />
          </ins>
        </>
      )}
      {fixed ? "; this does not count, because the piece had been broken" : null}
      {worsens ? "; this can worsen a verdict and never better it, because the piece had been broken" : null}
    </>
  );
}

function SaidWords({ site, from, said }: Where & { readonly said: Said }): JSX.Element {
  return (
    <>
      {said.map((part) =>
        typeof part === "string" ? (
          part
        ) : part.kind === "person" ? (
          site.shown.nameOf(part.id)
        ) : (
          <To site={site} from={from} to={part} />
        ),
      )}
    </>
  );
}

/** The story of a day, struck out where an amendment says so. */
export function Story({ site, from, entry }: Where & { readonly entry: Entry }): JSX.Element {
  const story = entry.body.map((passage) => (
    <Prose
      site={site}
      html={site.prose(passage, from)}
      class={passage.audience === "public" ? "" : `prose--${passage.audience}`}
    />
  ));
  const struck = amendmentsTo(site.shown, entry.id)
    .filter(({ prose }) => prose)
    .at(-1);
  if (struck === undefined || story.length === 0) return <>{story}</>;
  return (
    <div class="struck">
      <p class="struck__note">
        Struck out on{" "}
        <To site={site} from={from} to={{ kind: "entry", id: struck.by }}>
          {dateWords(struck.day)}
        </To>
        , because: {ended(whyWords(site, struck))} What was written first:
      </p>
      <del>{story}</del>
      <p class="struck__note">End of the text that is struck out.</p>
    </div>
  );
}
