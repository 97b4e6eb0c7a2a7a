/** Whole drawings as the pages hold them. `npx vitest run -u tests/charts` renews them: look at what changed before committing it. */
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { ChartFigure } from "../../layouts/parts/chart.tsx";
import { Mark } from "../../layouts/parts/mark.tsx";
import { withShapes } from "../../layouts/parts/shapes.tsx";
import { Timeline } from "../../layouts/parts/timeline.tsx";
import type { Chart } from "../../src/pages/forecast/chart.ts";
import type { Marked } from "../../src/pages/evidence/marked.ts";

const lined = (html: string): string => `${html.replaceAll("><", ">\n<")}\n`;

const LINES: Chart = {
  id: "sum",
  title: "Hours to date",
  says: "Two & a half weeks.",
  form: "lines",
  filled: true,
  days: [20090, 20097, 20104],
  series: [
    { name: "Ada", values: [0, 6.5, 9] },
    { name: "<Bo>", values: [0, 2, 8.5] },
  ],
  against: { name: "As meant", values: [0, 8, 16] },
};
const BARS: Chart = {
  ...LINES,
  id: "weeks",
  title: "Hours in each week",
  form: "bars",
  filled: false,
  against: { name: "Meant", values: [8, 8, 8] },
};
const MARKS: readonly Marked[] = [
  "shown",
  "rejected",
  "pending",
  "not shown",
  "in no joint",
  "inconclusive",
  "too early",
  "quarantined",
  "opened",
  "not glued",
  "ready",
  "signed",
  "not signed",
  "departure",
  "rework",
  "raised",
  "closed",
];

describe("Drawings", () => {
  it("of lines are as they were", async () => {
    await expect(lined(renderToString(<ChartFigure chart={LINES} />))).toMatchFileSnapshot("goldens/lines.html");
  });

  it("of bars are as they were", async () => {
    await expect(lined(renderToString(<ChartFigure chart={BARS} />))).toMatchFileSnapshot("goldens/bars.html");
  });

  it("of a line of time are as they were", async () => {
    const input = {
      from: 20090,
      to: 20180,
      work: [
        { day: 20090, hours: 4 },
        { day: 20120, hours: 2 },
      ],
      rows: [
        {
          name: "Batches",
          events: [
            { day: 20090, shape: "shown", words: "Batch B-1, shown", to: "batch/B-1.html" },
            { day: 20091, shape: "quarantined", words: "Batch <B-2>" },
          ],
        },
      ],
    };
    await expect(
      lined(
        renderToString(
          <Timeline inputs={{ wide: input, narrow: input }} from="assembly/wing.html" title="Wing" saidBy="course" />,
        ),
      ),
    ).toMatchFileSnapshot("goldens/timeline.html");
  });

  it("of marks are as they were, and no two that mean different things look alike", async () => {
    const shapes = MARKS.map((of) => withShapes(`${renderToString(<Mark of={of} />)}<main>`));
    await expect(lined(shapes.join("\n"))).toMatchFileSnapshot("goldens/marks.html");
    const paths = shapes.map((html) => /<defs><g id="[^"]+">(.*)<\/g><\/defs>/.exec(html)?.[1]);
    expect(paths).not.toContain(undefined);
    expect(new Set(paths).size).toBe(MARKS.length);
  });
});
