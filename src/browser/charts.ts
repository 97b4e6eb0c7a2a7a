/**
 * Tells the figures of a chart where somebody points at it, and leaves out lines that are not wanted. The drawing that was made at build time
 * stays as it is: Chart.js is laid over it clear as glass, on the same scales, and shows what is under the pointer. Only then is
 * `chart.umd.js`, which lies beside this script, asked for; where it is missing, or in print, the drawing stands.
 */
interface Facts {
  readonly form: "lines" | "bars";
  /** The first day, and from each to the next. */
  readonly steps: readonly number[];
  /** Values one a day; one alone where all are alike. */
  readonly series: readonly (readonly [name: string, values: readonly number[]])[];
  readonly against?: readonly [name: string, values: readonly number[]];
  /** Each drawing: which days, its size, its plot within it, what the plot reaches. */
  readonly views: readonly (readonly [
    first: number,
    end: number,
    size: readonly [width: number, height: number],
    plot: readonly [left: number, top: number, right: number, bottom: number],
    reach: readonly [from: number, to: number, most: number],
  ])[];
}

interface Live {
  readonly options: { layout: { padding: object } };
  setDatasetVisibility(at: number, shown: boolean): void;
  update(): void;
  destroy(): void;
}
type MakeChart = new (canvas: HTMLCanvasElement, settings: object) => Live;

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const dateWords = (day: number): string => {
  const date = new Date(day * 86_400_000);
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()] ?? ""} ${date.getUTCFullYear()}`;
};
const hourWords = (hours: number): string =>
  `${Math.floor(Math.round(hours * 60) / 60)} h ${Math.round(hours * 60) % 60} min`;

/** The colour that a series has in the drawing. */
function inkOf(figure: Element, at: number): string {
  const mark = figure.querySelectorAll(".chart__key li")[at]?.querySelector("path");
  const style = mark === null || mark === undefined ? undefined : getComputedStyle(mark);
  return style === undefined ? "" : style.fill === "none" ? style.stroke : style.fill;
}

interface Item {
  readonly datasetIndex: number;
  readonly dataset: { readonly label: string };
  readonly parsed: { readonly x: number; readonly y: number };
}

const CLEAR = "transparent";

function datasets({ form, steps, series, against }: Facts, [first, end]: Facts["views"][number], figure: Element) {
  let last = 0;
  const days = steps.map((step) => (last += step));
  const all = against === undefined ? series : [...series, against];
  return all.map(([label, values], at) => ({
    label,
    data: days
      .slice(first, end)
      .map((x, n) => ({ x: form === "bars" ? x + 3.5 : x, y: values[values.length === 1 ? 0 : first + n] ?? 0 })),
    type: form === "bars" && at < series.length ? "bar" : "line",
    stack: at < series.length ? "all" : "against",
    backgroundColor: CLEAR,
    borderColor: CLEAR,
    pointRadius: 0,
    pointHoverRadius: 4,
    pointHoverBackgroundColor: () => inkOf(figure, at),
    barThickness: "flex",
    categoryPercentage: 1,
  }));
}

function settings(facts: Facts, view: Facts["views"][number], figure: Element): object {
  const [, , [width, height], [left, top, right, bottom], [from, to, most]] = view;
  const padding = (scale: number): object => ({
    left: left * scale,
    top: top * scale,
    right: (width - right) * scale,
    bottom: (height - bottom) * scale,
  });
  const isBars = facts.form === "bars";
  return {
    data: { datasets: datasets(facts, view, figure) },
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      layout: { padding: padding(1) },
      onResize: (chart: Live, size: { readonly width: number }) => {
        chart.options.layout.padding = padding(size.width / width);
      },
      interaction: { mode: "index", intersect: false },
      scales: {
        x: { type: "linear", min: from, max: to, offset: false, display: false, stacked: isBars },
        y: { min: 0, max: most, display: false, stacked: isBars },
      },
      plugins: {
        legend: { display: false },
        tooltip: {
          callbacks: {
            title: ([item]: readonly Item[]) => {
              const x = item?.parsed.x ?? 0;
              return isBars ? `Week from ${dateWords(Math.floor(x - 3))}` : `By ${dateWords(x)}`;
            },
            label: ({ dataset, parsed }: Item) => `${dataset.label}: ${hourWords(parsed.y)}`,
            labelColor: ({ datasetIndex }: Item) => ({
              borderColor: CLEAR,
              backgroundColor: inkOf(figure, datasetIndex),
            }),
          },
        },
      },
    },
  };
}

/** Over each drawing one; those that are not shown have no size. */
function layOver(figure: HTMLElement, Make: MakeChart, facts: Facts): Live[] {
  return [...figure.querySelectorAll(".chart__drawing > svg")].flatMap((drawing, at) => {
    const view = facts.views[at];
    if (view === undefined) return [];
    const frame = document.createElement("div");
    frame.className = `chart__live ${drawing.getAttribute("class") ?? ""}`;
    const canvas = document.createElement("canvas");
    canvas.setAttribute("aria-hidden", "true");
    frame.append(canvas);
    const box = document.createElement("div");
    box.className = `chart__box ${drawing.getAttribute("class") ?? ""}`;
    drawing.replaceWith(box);
    box.append(drawing, frame);
    return [new Make(canvas, settings(facts, view, figure))];
  });
}

/** Names in the key leave a series out and show it again. */
function addToggles(figure: HTMLElement, live: readonly Live[]): void {
  figure.querySelectorAll<HTMLElement>(".chart__key li[class]").forEach((item, at) => {
    const button = document.createElement("button");
    button.type = "button";
    button.setAttribute("aria-pressed", "true");
    button.append(...item.childNodes);
    item.append(button);
    button.addEventListener("click", () => {
      const shown = button.getAttribute("aria-pressed") !== "true";
      button.setAttribute("aria-pressed", String(shown));
      const own = item.className === "key--against" ? ".against, .name--against" : `.${item.className}`;
      for (const part of figure.querySelectorAll(`.chart__drawing :is(${own})`))
        part.classList.toggle("left-out", !shown);
      for (const chart of live) {
        chart.setDatasetVisibility(at, shown);
        chart.update();
      }
    });
  });
}

const here = (document.currentScript as HTMLScriptElement | null)?.src ?? "";
let library: Promise<MakeChart | undefined> | undefined;

/** Chart.js, asked for once. */
function chartLibrary(): Promise<MakeChart | undefined> {
  library ??= new Promise((loaded) => {
    const script = document.createElement("script");
    script.src = here.replace(/[^/]*$/, "chart.umd.js");
    script.onload = () => loaded((window as unknown as { Chart?: MakeChart }).Chart);
    script.onerror = () => loaded(undefined);
    document.head.append(script);
  });
  return library;
}

async function liven(figure: HTMLElement): Promise<void> {
  if (figure.dataset["chart"] === "live") return;
  figure.dataset["chart"] = "live";
  const Make = await chartLibrary();
  const data = figure.querySelector("script[type='application/json']");
  if (Make === undefined || data === null) return;
  addToggles(figure, layOver(figure, Make, JSON.parse(data.textContent ?? "") as Facts));
}

for (const figure of document.querySelectorAll<HTMLElement>("figure[data-chart]")) {
  for (const part of figure.querySelectorAll(".chart__drawing, .chart__key")) {
    part.addEventListener("pointerenter", (event) => {
      if ((event as PointerEvent).pointerType === "mouse") void liven(figure);
    });
    part.addEventListener("click", () => void liven(figure));
  }
}
