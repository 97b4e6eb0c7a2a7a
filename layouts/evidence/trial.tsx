import type { JSX } from "preact";
import { addressOf, relative } from "../../src/pages/address.ts";
import {
  boundWords,
  intervalWords,
  trialPage,
  type PreparationRow,
  type TrialPage,
} from "../../src/pages/evidence/trial-page.ts";
import { PIECE_VERDICTS } from "../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../src/words/dates.ts";
import type { Trial as TrialFact } from "../../src/facts/types.ts";
import { SourceWords } from "../parts/findings.tsx";
import { Page, Prose } from "../shell/page.tsx";
import { ListTable, None, Section, Title, type Where } from "./parts.tsx";
import { PieceTable } from "./piece.tsx";

export function Trial({ site, trial }: { readonly site: Where["site"]; readonly trial: TrialFact }): JSX.Element {
  const from = addressOf({ kind: "trial", id: trial.id }) ?? "";
  const page = trialPage(site.shown, trial);
  const where = { site, from };
  return (
    <Page site={site} path={from} kind="trial" title={trial.title} description={trial.question}>
      <Title place={<a href={relative(from, "evidence.html#trials")}>Trials</a>} title={trial.title}>
        <p class="title__lead">{trial.question}</p>
      </Title>
      <Section id="expectation" title="What was expected">
        <p class="measure">{trial.expectation}</p>
        <p class="small quiet">Stated on {dateWords(trial.stated)}.</p>
      </Section>
      <Section id="cautions" title="What this can show">
        <Cautions page={page} />
      </Section>
      <Section id="outcomes" title="What came of it">
        <Outcomes rows={page.rows} of={trial.title} />
      </Section>
      <Section id="conclusion" title="What that shows">
        <Conclusion page={page} />
      </Section>
      {trial.body.length === 0 ? null : (
        <Section id="words" title="In the builder’s words">
          {trial.body.map((passage) => (
            <Prose site={site} html={site.prose(passage, from)} />
          ))}
        </Section>
      )}
      <Section id="pieces" title="Piece by piece">
        {page.rows.map((row) => (
          <PieceTable pieces={row.pieces} caption={row.id === "" ? row.what : `${row.id}: ${row.what}`} {...where} />
        ))}
      </Section>
    </Page>
  );
}

export function Cautions({ page }: { readonly page: TrialPage }): JSX.Element {
  const { cautions, standing } = page;
  return (
    <ul class="measure">
      {cautions.map((caution) => (
        <li>{caution}</li>
      ))}
      <li>
        {standing.says} <SourceWords source={standing.source} />
      </li>
    </ul>
  );
}

/** What is concluded, and the bounds that it rests on. */
export function Conclusion({ page }: { readonly page: TrialPage }): JSX.Element {
  const bounded = page.outcomes.filter(({ interval }) => interval !== undefined);
  return (
    <>
      <div class="prose">
        {page.conclusion.map((sentence) => (
          <p>{sentence}</p>
        ))}
      </div>
      {bounded.length === 0 ? null : (
        <ListTable
          caption="Bonds that held, of the pieces that show something, with exact bounds at 95 % confidence"
          heads={[
            "Preparation",
            { word: "Held", number: true },
            { word: "Interval", number: true },
            { word: "At least", number: true },
          ]}
        >
          {bounded.map(({ preparation, held, failed, interval, atLeast }) => (
            <tr>
              <th scope="row">{preparation.id}</th>
              <td class="number">
                {held} of {held + failed}
              </td>
              <td class="number">{interval === undefined ? "" : intervalWords(interval)}</td>
              <td class="number">{atLeast === undefined ? "" : boundWords(atLeast)}</td>
            </tr>
          ))}
        </ListTable>
      )}
    </>
  );
}

const RARER = { crushed: "Crushed", "face ply": "In the face veneer", "not opened": "Not opened" } as const;

export function Outcomes({ rows, of }: { readonly rows: readonly PreparationRow[]; readonly of: string }): JSX.Element {
  if (rows.every(({ pieces }) => pieces.length === 0)) return <None>No piece of this trial has been made.</None>;
  const rarer = (["crushed", "face ply", "not opened"] as const).filter((mode) =>
    rows.some(({ failures }) => failures[mode] > 0),
  );
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <ListTable
      caption={`${of}: where the pieces broke, and their verdicts`}
      heads={[
        "Preparation",
        number("Pieces"),
        number("Broke in the wood"),
        number("Mixed"),
        number("In the glue line"),
        ...rarer.map((mode) => number(RARER[mode])),
        ...PIECE_VERDICTS.map((verdict) => number(`Verdict: ${verdict}`)),
      ]}
    >
      {rows.map(({ id, what, pieces, failures, verdicts }) => (
        <tr>
          <th scope="row">
            {id} <span class="quiet plainly">{what}</span>
          </th>
          {[
            pieces.length,
            failures.wood,
            failures.mixed,
            failures["glue line"],
            ...rarer.map((mode) => failures[mode]),
            ...PIECE_VERDICTS.map((verdict) => verdicts[verdict]),
          ].map((count) => (
            <td class="number">{count}</td>
          ))}
        </tr>
      ))}
    </ListTable>
  );
}
