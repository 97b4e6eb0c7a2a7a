/** What a chart is made of, and its lines and bars as Chart.js takes them. */
export interface Facts {
  readonly title: string;
  readonly says: string;
  readonly form: "lines" | "bars";
  readonly days: readonly number[];
  readonly series: readonly Line[];
  readonly against?: Line;
  readonly filled?: boolean;
  readonly spans?: readonly (readonly [from: number, to: number])[];
}

interface Line {
  readonly name: string;
  readonly values: readonly number[];
}

interface Point {
  readonly x: number;
  readonly y: number;
}
const DASHES = [[], [], [9, 3], [3, 2.5], [12, 3, 2, 3], [1.5, 2.5], [7, 2, 2, 2], [16, 4]];
const BAR_COLOURS = ["--spruce-2", "--accent", "--paper", "--ink", "--rule-strong", "--series-4", "--series-7"];

export function colour(name: string): string {
  return getComputedStyle(document.documentElement).getPropertyValue(name).trim();
}

function pointsOf(facts: Facts, values: readonly number[]): Point[] {
  const middle = facts.form === "bars" ? 3.5 : 0;
  return facts.days.map((day, at) => ({ x: day + middle, y: values[at] ?? 0 }));
}

export function datasets(facts: Facts): object[] {
  const bars = facts.form === "bars";
  const own = facts.series.map(({ name, values }, at) => {
    const ink = colour(bars ? (BAR_COLOURS[at % BAR_COLOURS.length] ?? "--ink") : `--series-${(at % 8) + 1}`);
    const line = {
      fill: facts.filled === true && at === 0,
      borderColor: ink,
      borderWidth: 2,
      borderDash: DASHES[at % 8],
      pointRadius: 0,
      pointHitRadius: 12,
    };
    const bar = {
      borderColor: colour("--ink"),
      borderWidth: 0.5,
      barThickness: "flex",
      categoryPercentage: 1,
      barPercentage: 0.82,
      stack: "work",
    };
    return {
      label: name,
      data: pointsOf(facts, values),
      type: bars ? "bar" : "line",
      backgroundColor: facts.filled === true && !bars ? `${colour("--spruce")}52` : ink,
      ...(bars ? bar : line),
    };
  });
  if (facts.against === undefined) return own;
  const { name, values } = facts.against;
  return [
    ...own,
    {
      label: name,
      data: pointsOf(facts, values),
      type: "line",
      borderColor: colour("--ink-2"),
      backgroundColor: "transparent",
      borderWidth: 1.4,
      borderDash: [6, 4],
      pointRadius: 0,
      stack: "against",
    },
  ];
}

interface Plot {
  readonly ctx: CanvasRenderingContext2D;
  readonly chartArea: { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number };
  readonly scales: { readonly x: { getPixelForValue(value: number): number } };
}

/** Shades the time within which no day is known, as the drawing does. */
export const bands = ({ spans = [] }: Facts) => ({
  id: "bands",
  beforeDatasetsDraw({ ctx, chartArea, scales: { x } }: Plot): void {
    ctx.save();
    ctx.globalAlpha = 0.09;
    ctx.fillStyle = colour("--ink");
    for (const [from, to] of spans) {
      const left = Math.max(chartArea.left, x.getPixelForValue(from - 1));
      const right = Math.min(chartArea.right, x.getPixelForValue(to));
      if (right > left) ctx.fillRect(left, chartArea.top, right - left, chartArea.bottom - chartArea.top);
    }
    ctx.restore();
  },
});
