import type { JSX } from "preact";
import type { Chart } from "../../src/pages/forecast/chart.ts";
import { dayText } from "../../src/reckoning/time/calendar.ts";
import { dateShort, monthWords } from "../../src/words/dates.ts";
import { grouped } from "../../src/words/numbers.ts";

interface Line {
  readonly when: string;
  readonly values: readonly number[];
}

/** The last week of each month for sums, every week for bars. */
function linesOf(chart: Chart): Line[] {
  const columns = chart.against === undefined ? chart.series : [...chart.series, chart.against];
  const all = chart.days.map((day, at) => ({
    day: dayText(day),
    values: columns.map(({ values }) => values[at] ?? 0),
  }));
  if (chart.form === "bars") return all.map(({ day, values }) => ({ when: dateShort(day), values }));
  const ends = all.filter(({ day }, at) => all[at + 1]?.day.slice(0, 7) !== day.slice(0, 7));
  return ends.map(({ day, values }) => ({ when: monthWords(day), values }));
}

/** The figures of a chart, folded away. */
export function ChartTable({ chart }: { readonly chart: Chart }): JSX.Element {
  const names = [...chart.series, ...(chart.against === undefined ? [] : [chart.against])].map(({ name }) => name);
  const first = chart.form === "bars" ? "Week from" : "By the end of";
  return (
    <details class="chart__table">
      <summary>These figures as a table</summary>
      <section class="scroll" tabIndex={0} aria-label={`${chart.title}, as a table`}>
        <table class="data">
          <caption>{chart.title}, in hours</caption>
          <thead>
            <tr>
              <th scope="col">{first}</th>
              {names.map((name) => (
                <th scope="col" class="number">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {linesOf(chart).map(({ when, values }) => (
              <tr>
                <th scope="row">{when}</th>
                {values.map((value) => (
                  <td class="number">{grouped(value, 1)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
