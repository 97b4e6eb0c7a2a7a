/** From the logger's own clock to moments. What the clock leaves open is a problem and never a guess. */
import { defined } from "../defined.ts";
import { type Fault, shown } from "../facts/reading.ts";
import type { Stated } from "./sidecar.ts";
import type { Layout } from "./layout.ts";
import type { Readings } from "./readings.ts";
import { HEADER, type Report } from "../record/table/report.ts";
import { fixedClock, isZone, offsetOf, type WallClock, zoneClock } from "../facts/time/wall-clock.ts";

/** Moments of the readings, s; NaN where a problem has been told. */
export function momentsOf(
  readings: Readings,
  layout: Layout,
  stated: Stated,
  workshop: string,
  report: Report,
): Float64Array {
  const moments = new Float64Array(readings.count).fill(Number.NaN);
  const clock = clockOf(readings, layout, stated, workshop, report);
  const passages = new Passages(readings, moments, stated, report);
  const { count, walls, offsets, rows } = readings;
  const backwards = count > 1 && (walls[0] ?? 0) > (walls[count - 1] ?? 0);
  for (let step = 0; step < count; step += 1) {
    const i = backwards ? count - 1 - step : step;
    const [wall, offset] = [walls[i] ?? 0, offsets[i] ?? Number.NaN];
    const could = Number.isNaN(offset) ? (clock?.(wall) ?? []) : [wall - offset];
    if (could.length === 2) passages.add(i, could);
    else passages.close();
    if (could.length === 1) moments[i] = could[0] ?? Number.NaN;
    if (could.length === 0 && clock !== undefined) report.say(rows[i] ?? 0, layout.columns.time[0] ?? 0, leftOut(wall));
  }
  passages.close();
  return moments;
}

const BESIDE = "in a file beside it, climate/NAME.md:";

const leftOut = (wall: number): Fault => ({
  code: "climate-hour",
  message: "the clock of this time zone never shows this hour: it was put forward over it",
  found: new Date(wall * 1000).toISOString().slice(0, 16).replace("T", " "),
  mend: `if the logger's clock is not put forward and back, say how far it is from UTC ${BESIDE} \`zone: +01:00\``,
});

/** The clock that the stamps without an offset were read from. */
function clockOf(
  readings: Readings,
  { columns }: Layout,
  stated: Stated,
  workshop: string,
  report: Report,
): WallClock | undefined {
  const open = readings.offsets.subarray(0, readings.count).findIndex(Number.isNaN);
  const at = columns.time[0] ?? 0;
  const say = (row: number, message: string, found: string | undefined, mend: string): undefined =>
    report.say(row, at, defined({ code: "climate-zone", message, found, mend })) as undefined;
  const typed = stated.zone ?? columns.zone;
  if (open < 0)
    return typed === undefined || stated.zone === undefined
      ? undefined
      : say(
          HEADER,
          "the stamps name their zone themselves, and the file beside it names one too",
          stated.zone,
          "take `zone` out of climate/NAME.md",
        );
  if (typed === undefined)
    return say(
      readings.rows[open] ?? 0,
      "nothing says in which time zone the logger's clock ran",
      undefined,
      `say it ${BESIDE} \`zone: local\` where it ran by the workshop's clock, summer time and all, else \`zone: UTC\` or \`zone: +01:00\``,
    );
  if (stated.zone !== undefined && columns.zone !== undefined && offsetOf(stated.zone) !== offsetOf(columns.zone))
    return say(
      HEADER,
      `the header says ${offsetOf(columns.zone) === undefined ? columns.zone : columns.zone.toUpperCase()} and the file beside it ${stated.zone}`,
      undefined,
      "take `zone` out of climate/NAME.md, or export the file again",
    );
  const offset = offsetOf(typed);
  if (offset !== undefined) return fixedClock(offset);
  const zone = /^local$/iu.test(typed) ? workshop : typed;
  if (!isZone(zone))
    return say(
      HEADER,
      "there is no such time zone",
      shown(typed),
      `say it ${BESIDE} \`zone: local\`, \`zone: UTC\` or \`zone: +01:00\``,
    );
  const [least, most] = ends(readings);
  return zoneClock(zone, least, most);
}

function ends({ walls, count }: Readings): readonly [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < count; i += 1) {
    least = Math.min(least, walls[i] ?? least);
    most = Math.max(most, walls[i] ?? most);
  }
  return [least, most];
}

/**
 * The hour that comes twice in autumn. Where the stamps go back once within it, what comes before is its first
 * passage and what comes
 * after its second. Where they do not, only the builder can know.
 */
class Passages {
  readonly #readings: Readings;
  readonly #moments: Float64Array;
  readonly #stated: Stated;
  readonly #report: Report;
  #run: { readonly i: number; readonly could: readonly number[] }[] = [];

  constructor(readings: Readings, moments: Float64Array, stated: Stated, report: Report) {
    this.#readings = readings;
    this.#moments = moments;
    this.#stated = stated;
    this.#report = report;
  }

  add(i: number, could: readonly number[]): void {
    this.#run.push({ i, could });
  }

  close(): void {
    const run = this.#run;
    const first = run[0];
    if (first === undefined) return;
    this.#run = [];
    const back = run.flatMap(({ could }, at) =>
      (run[at - 1]?.could[0] ?? Number.NEGATIVE_INFINITY) >= (could[0] ?? 0) ? [at] : [],
    );
    const turn = back.length === 1 ? back[0] : back.length > 1 ? undefined : this.#turnStated(run.length);
    if (turn === undefined) this.#report.say(this.#readings.rows[first.i] ?? 0, 0, this.#fault(back.length));
    else for (const [at, { i, could }] of run.entries()) this.#moments[i] = could[at < turn ? 0 : 1] ?? Number.NaN;
  }

  #turnStated(length: number): number | undefined {
    return this.#stated.doubledHour === undefined ? undefined : this.#stated.doubledHour === "first" ? length : 0;
  }

  #fault(backs: number): Fault {
    const message =
      backs > 1
        ? "the stamps go back more than once in the hour that comes twice in autumn"
        : "this hour came twice, and the file does not tell which of them is meant";
    return {
      code: "climate-hour",
      message,
      mend: `if the logger's clock is not put back say how far it is from UTC ${BESIDE} \`zone: +01:00\`; if it wrote down one passage only, \`doubled_hour: first\` or \`second\``,
    };
  }
}
