import type { JSX } from "preact";
import { toldRules } from "../../src/words/findings/told.ts";
import { trialPage } from "../../src/pages/evidence/trial-page.ts";
import { dateWords } from "../../src/words/dates.ts";
import { SourceWords } from "../parts/findings.tsx";
import { ListTable, None, type Where } from "../evidence/parts.tsx";
import { PieceTable } from "../evidence/piece.tsx";
import { Cautions, Conclusion, Outcomes } from "../evidence/trial.tsx";

export function AppendixTrials({ site, from, number }: Where & { readonly number: number }): JSX.Element {
  const trials = [...site.shown.record.trials.values()];
  if (trials.length === 0) return <None>No trials.</None>;
  return (
    <>
      {trials.map((trial, at) => {
        const page = trialPage(site.shown, trial);
        return (
          <section aria-label={trial.title}>
            <h3>
              {number}.{at + 1} {trial.title}
            </h3>
            <p>{trial.question}</p>
            <p>
              Expected, as stated on {dateWords(trial.stated)}: {trial.expectation}
            </p>
            <Cautions page={page} />
            <Outcomes rows={page.rows} of={trial.title} />
            <Conclusion page={page} />
            <PieceTable pieces={page.pieces} caption={`Pieces of the trial: ${trial.title}`} site={site} from={from} />
          </section>
        );
      })}
    </>
  );
}

export function AppendixRules({ site }: Pick<Where, "site">): JSX.Element {
  return (
    <ListTable
      caption="What is asked, what follows, and where it comes from"
      heads={["Rule", "What it says", "Source"]}
    >
      {toldRules(site.shown.say).map(({ title, says, source }) => (
        <tr>
          <th scope="row">{title}</th>
          <td>{says}</td>
          <td>
            <SourceWords source={source} />
          </td>
        </tr>
      ))}
    </ListTable>
  );
}
