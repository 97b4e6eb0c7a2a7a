import type { JSX } from "preact";
import type { HoldPointFile } from "../../src/evidence/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { needsTogether } from "../../src/pages/evidence/needs.ts";
import { HOLD_KIND } from "../../src/pages/evidence/verdict-words.ts";
import { toldNeed } from "../../src/words/findings/told.ts";
import { dateWords } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { To, ToEach } from "../shell/link.tsx";
import { Mark } from "./mark.tsx";

interface HoldPointProps {
  readonly site: Site;
  readonly from: string;
  readonly file: HoldPointFile;
  /** How many needs are said in full. */
  readonly most?: number;
  /** Where its title is a heading of the page. */
  readonly heading?: "h2" | "p";
}

/** So many changes since it was signed are told where its state is; all of them on its page. */
const MOST_CHANGES = 2;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What a hold point is, where it stands, and what it still needs. */
export function HoldPointCard({ site, from, file, most = 5, heading: Title = "p" }: HoldPointProps): JSX.Element {
  const { holdPoint, state, needs } = file;
  const assembly = site.shown.record.assemblies.get(holdPoint.assembly);
  const together = needsTogether(needs.map((one) => toldNeed(site.shown.say, one)));
  const left = together.slice(most).reduce((sum, { about }) => sum + about.length, 0);
  return (
    <div class="hold">
      <p class="hold__kind">
        {capital(HOLD_KIND[holdPoint.kind])},{" "}
        <To site={site} from={from} to={{ kind: "assembly", id: holdPoint.assembly }}>
          {assembly?.title ?? holdPoint.assembly}
        </To>
      </p>
      <Title class="hold__title">
        <To site={site} from={from} to={{ kind: "hold point", id: holdPoint.id }}>
          {holdPoint.title}
        </To>{" "}
        <Mark of={state} />
      </Title>
      <Signed site={site} file={file} />
      {state === "ready" ? <p>Nothing is open that this record looks at.</p> : null}
      {needs.length === 0 ? null : (
        <ul class="needs">
          {together.slice(0, most).map(({ about, sentence, needs: todo, blocks }) => (
            <li class={blocks ? "need need--blocks" : "need"}>
              <p class="need__about">
                <ToEach site={site} from={from} to={about} />
              </p>
              <p>{sentence}</p>
              <p class="need__todo">{todo}.</p>
            </li>
          ))}
          {left > 0 ? (
            <li>
              <To site={site} from={from} to={{ kind: "hold point", id: holdPoint.id }}>
                {most === 0 ? counted(left, "thing") : `${counted(left, "more thing")}`} to settle
              </To>
            </li>
          ) : null}
        </ul>
      )}
    </div>
  );
}

/** Who signed it, and the first of what changed since. */
function Signed({ site, file: { signed, changes } }: Pick<HoldPointProps, "site" | "file">): JSX.Element {
  return (
    <>
      {signed === undefined ? null : (
        <p class="small">
          Signed on {dateWords(signed.day)} by {site.shown.nameOf(signed.by)}.
        </p>
      )}
      {changes.slice(0, MOST_CHANGES).map((change) => (
        <p class="small">Since then: {site.shown.say(change)}</p>
      ))}
    </>
  );
}
