/** What the appendix says of one batch in few lines. */
import type { JSX } from "preact";
import type { BatchFile } from "../../src/evidence/types.ts";
import { type BatchPage, type FactRow, NOT_NOTED } from "../../src/pages/evidence/batch-page.ts";
import { PART_WORDS } from "../../src/pages/evidence/part-words.ts";
import { gravestFirst } from "../../src/pages/evidence/verdict-words.ts";
import { toldFinding, type ToldSource } from "../../src/words/findings/told.ts";
import { listed } from "../../src/words/lists.ts";
import { SEVERITY, SourceWords } from "../parts/findings.tsx";
import { Mark } from "../parts/mark.tsx";
import { heldTitles, heldWords } from "./held.tsx";
import type { Where } from "../evidence/parts.tsx";

type OnlySite = Pick<Where, "site">;
type WithFindings = OnlySite & { readonly findings: BatchFile["findings"] };

/** `Resin 42.0 g, lot R-1 no. 204, keeps: until 1 March 2027; …`. */
function partsWords(page: BatchPage): string {
  const parts = page.components.map(({ part, amount, lot, keeps, usual }) => {
    const of =
      lot === undefined
        ? "lot not noted, or not shown"
        : `lot ${lot.id}${lot.number === undefined ? "" : ` no. ${lot.number}`}${usual}`;
    return `${PART_WORDS[part]} ${amount}${part === "water" ? "" : `, ${of}, keeps: ${keeps}`}`;
  });
  const wood = page.timber.map(
    ({ id, title, material, species }) =>
      `${material === "plywood" ? "plywood" : "timber"} ${id} (${title}${species === undefined ? "" : `, ${species}`})`,
  );
  return [...parts, ...wood].join("; ");
}

interface NotedProps extends WithFindings {
  readonly page: BatchPage;
  /** Names of the rules that most batches beside it held. */
  readonly usual: readonly string[];
}

/** What it was mixed of, whatever was noted of it, each with what it is held against, what was not, and the rules that were held. */
export function NotedLine({ page, site, findings, usual }: NotedProps): JSX.Element {
  const own = heldTitles(site.shown.say, findings);
  const rows = [...page.mix, ...page.climate, ...page.times, ...page.glueUp];
  const noted = rows.filter((row) => row.noted !== NOT_NOTED);
  const missing = rows.filter((row) => row.noted === NOT_NOTED);
  return (
    <p class="small">
      {partsWords(page)}.{" "}
      {noted.map((row, at) => (
        <>
          {at > 0 ? "; " : ""}
          <span class="quiet">{row.word}:</span> {row.noted}
          {limitWords(row)}
        </>
      ))}
      .
      {missing.length === 0 ? null : (
        <>
          {" "}
          <span class="quiet">Not noted:</span>{" "}
          {listed(missing.map((row) => `${row.word.charAt(0).toLowerCase()}${row.word.slice(1)}${limitWords(row)}`))}.
        </>
      )}
      {own.length === 0 ? null : (
        <>
          {" "}
          <span class="quiet">Held:</span> {heldWords(own, usual)}.
        </>
      )}
    </p>
  );
}

const limitWords = ({ limit }: FactRow): string => (limit === undefined ? "" : ` (limit ${limit})`);

/** Every check that was not met, the gravest first, with its limit and where that comes from: those alike run together. */
export function NotMetLines({ site, findings }: WithFindings): JSX.Element | null {
  const told = gravestFirst(findings.filter(({ severity }) => severity !== "meets")).map((one) =>
    toldFinding(site.shown.say, one),
  );
  const severities = [...new Set(told.map(({ severity }) => severity))];
  return (
    <>
      {severities.map((of) => (
        <p>
          <Mark of={of} word={SEVERITY[of]} />
          {told
            .filter(({ severity }) => severity === of)
            .map(({ sentence, limit }) => (
              <>
                {" "}
                {sentence}
                {limit === undefined ? null : (
                  <>
                    {" "}
                    <span class="quiet">
                      Limit: {limit.text}; <LimitSource source={limit.from} />.
                    </span>
                  </>
                )}
              </>
            ))}
        </p>
      ))}
    </>
  );
}

/** How a source is known needs no word where it is this record. */
function LimitSource({ source }: { readonly source: ToldSource }): JSX.Element {
  return source.known === "record" ? <>{source.text}</> : <SourceWords source={source} />;
}
