/**
 * Lays a chart to hover and toggle over a drawing that was made at build time, once somebody points at the drawing:
 * only then
 * is `chart.umd.js`, which lies beside this script, asked for. Where it is missing, or in print, the drawing stands.
 */
import { bands, colour, datasets, type Facts } from "./chart-data.ts";

interface Live {
  destroy(): void;
}
type MakeChart = new (canvas: HTMLCanvasElement, settings: object) => Live;

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const dateOf = (day: number): Date => new Date(day * 86_400_000);
const dateWords = (day: number): string =>
  `${dateOf(day).getUTCDate()} ${MONTHS[dateOf(day).getUTCMonth()] ?? ""} ${dateOf(day).getUTCFullYear()}`;
const hourWords = (hours: number): string =>
  `${Math.floor(Math.round(hours * 60) / 60)} h ${Math.round(hours * 60) % 60} min`;

/** First days of months, thinned to about `most`. */
function monthStarts(from: number, to: number, most: number): number[] {
  const first = dateOf(from).getUTCFullYear() * 12 + dateOf(from).getUTCMonth();
  const last = dateOf(to).getUTCFullYear() * 12 + dateOf(to).getUTCMonth();
  const step = [1, 2, 3, 6, 12, 24].find((months) => (last - first) / months <= most) ?? 60;
  const starts: number[] = [];
  for (let month = Math.ceil(first / step) * step; month <= last; month += step) {
    const day = Date.UTC(Math.floor(month / 12), month % 12, 1) / 86_400_000;
    if (day >= from && day <= to) starts.push(day);
  }
  return starts;
}

const monthWords = (day: number): string =>
  dateOf(day).getUTCMonth() === 0 ? String(dateOf(day).getUTCFullYear()) : (MONTHS[dateOf(day).getUTCMonth()] ?? "");

function scales(facts: Facts, narrow: boolean): object {
  const from = facts.days[0] ?? 0;
  const to = (facts.days[facts.days.length - 1] ?? 1) + (facts.form === "bars" ? 7 : 0);
  const words = { color: colour("--ink-2"), font: { family: fontOf() } };
  return {
    x: {
      type: "linear",
      min: from,
      max: to,
      offset: false,
      grid: { color: colour("--rule"), drawOnChartArea: false, offset: false },
      afterBuildTicks: (axis: { ticks: { value: number }[] }) => {
        axis.ticks = monthStarts(from, to, narrow ? 6 : 14).map((value) => ({ value }));
      },
      ticks: { ...words, autoSkip: false, maxRotation: 0, callback: monthWords },
      stacked: facts.form === "bars",
    },
    y: {
      beginAtZero: true,
      stacked: facts.form === "bars",
      grid: { color: colour("--rule") },
      ticks: { ...words, maxTicksLimit: 7 },
      title: { display: true, text: "hours", color: colour("--ink-2") },
    },
  };
}

function fontOf(): string {
  return colour("--plain");
}

interface Item {
  readonly dataset: { readonly label: string };
  readonly parsed: { readonly x: number; readonly y: number };
}

function settings(facts: Facts, narrow: boolean): object {
  const words = (item: Item): string => `${item.dataset.label}: ${hourWords(item.parsed.y)}`;
  const when = (items: readonly Item[]): string => {
    const x = items[0]?.parsed.x ?? 0;
    return facts.form === "bars" ? `Week from ${dateWords(Math.floor(x - 3))}` : `By ${dateWords(x)}`;
  };
  return {
    data: { datasets: datasets(facts) },
    plugins: [bands(facts)],
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      normalized: true,
      interaction: { mode: "index", intersect: false },
      scales: scales(facts, narrow),
      plugins: {
        legend: {
          position: "bottom",
          align: "start",
          labels: {
            color: colour("--ink"),
            ...(facts.form === "lines" ? { boxWidth: 30, boxHeight: 0 } : { boxWidth: 20, boxHeight: 9 }),
            padding: 14,
            font: { family: fontOf(), size: 13 },
          },
        },
        tooltip: {
          callbacks: { label: words, title: when },
          bodyFont: { family: fontOf() },
          titleFont: { family: fontOf() },
        },
      },
    },
  };
}

function layOver(figure: HTMLElement, Make: MakeChart): Live | undefined {
  const data = figure.querySelector("script[type='application/json']");
  const drawing = figure.querySelector(".chart__drawing");
  if (data === null || drawing === null) return undefined;
  const facts = JSON.parse(data.textContent ?? "") as Facts;
  const frame = document.createElement("div");
  frame.className = "chart__live";
  frame.style.height = `${heightOf(drawing) + heightOf(figure.querySelector(".chart__key"))}px`;
  const canvas = document.createElement("canvas");
  canvas.setAttribute("role", "img");
  canvas.setAttribute("aria-label", `${facts.title}. ${facts.says}`);
  frame.append(canvas);
  drawing.after(frame);
  figure.classList.add("chart--live");
  const chart = new Make(canvas, settings(facts, figure.clientWidth < 560));
  return {
    destroy: () => {
      chart.destroy();
      frame.remove();
      figure.classList.remove("chart--live");
    },
  };
}

/** So that nothing below moves when the drawing is changed for the chart. */
function heightOf(element: Element | null): number {
  return element?.getBoundingClientRect().height ?? 0;
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

function start(): void {
  const live = new Map<HTMLElement, Live>();
  const draw = async (figure: HTMLElement): Promise<void> => {
    const Make = await chartLibrary();
    if (Make === undefined || (live.has(figure) && figure.classList.contains("chart--live"))) return;
    const chart = layOver(figure, Make);
    if (chart !== undefined) live.set(figure, chart);
  };
  for (const figure of document.querySelectorAll<HTMLElement>("figure[data-chart]")) {
    const drawing = figure.querySelector(".chart__drawing");
    drawing?.addEventListener("pointerenter", (event) => {
      if ((event as PointerEvent).pointerType === "mouse") void draw(figure);
    });
    drawing?.addEventListener("click", () => void draw(figure));
  }
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    for (const [figure, chart] of live) {
      chart.destroy();
      void draw(figure);
    }
  });
}

start();
