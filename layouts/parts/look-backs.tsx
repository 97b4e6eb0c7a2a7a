import type { JSX } from "preact";
import type { LookBackView } from "../../src/pages/forecast/forecast-ahead.ts";
import { dateShort } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { grouped, percent } from "../../src/words/numbers.ts";

/** How forecasts made at earlier dates would have done. */
export function LookBacks({ looks }: { readonly looks: readonly LookBackView[] }): JSX.Element {
  const some = looks.filter(({ tried }) => tried.length > 0);
  return (
    <section class="section">
      <h2>How earlier forecasts would have done</h2>
      {some.length === 0 ? (
        <p class="quiet">No month’s end has eight whole weeks before it and four after it yet.</p>
      ) : (
        <>
          <p class="measure">
            At the end of each past month the hours of the next weeks were forecast from the weeks known then and held
            against what was worked. A band that is meant to hold 80 % should hold about four times in five; with so few
            months, and months that overlap, it may well be three or five. Whether the date of completion holds cannot
            be known before there is one.
          </p>
          {some.map((look) => (
            <LookBackTable look={look} />
          ))}
        </>
      )}
    </section>
  );
}

function LookBackTable({ look: { ahead, tried, held } }: { readonly look: LookBackView }): JSX.Element {
  const hours = (minutes: number): string => grouped(minutes / 60, 1);
  return (
    <>
      <p class="measure">
        <strong>{ahead} weeks ahead:</strong> the band held {counted(held, "time")} of {tried.length} (
        {percent(held / tried.length)}).
      </p>
      <details class="chart__table">
        <summary>Each month, {ahead} weeks ahead</summary>
        <section class="scroll" tabIndex={0} aria-label={`Forecasts ${ahead} weeks ahead`}>
          <table class="data">
            <caption>Hours of the next {ahead} weeks</caption>
            <thead>
              <tr>
                <th scope="col">Known up to</th>
                <th scope="col" class="number">
                  Band of 80 %
                </th>
                <th scope="col" class="number">
                  Worked
                </th>
                <th scope="col">The band</th>
              </tr>
            </thead>
            <tbody>
              {tried.map(({ day, low, high, worked, held: did }) => (
                <tr>
                  <th scope="row">{dateShort(day)}</th>
                  <td class="number">
                    {hours(low)} to {hours(high)}
                  </td>
                  <td class="number">{hours(worked)}</td>
                  <td>{did ? "held" : worked < low ? "was too high" : "was too low"}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </>
  );
}
