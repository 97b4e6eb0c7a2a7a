/** How often the band of 80 % held what was then worked, over every fourth week of some builders that never were. */
import { forecastBacktest } from "../../src/reckoning/hours/forecast-backtest.ts";
import { builder } from "./builders.ts";

export interface Coverage {
  readonly ahead: number;
  readonly tried: number;
  readonly held: number;
}

const HORIZONS = [4, 13, 26] as const;

export function coverage(builders: number): Coverage[] {
  const all = Array.from({ length: builders }, (_, at) => builder(at + 1));
  return HORIZONS.map((ahead) => {
    const looks = all.flatMap((weekly, at) => {
      const origins = weekly.flatMap((_, week) => (week % 4 === at % 4 ? [week] : []));
      return forecastBacktest(weekly, origins, ahead) ?? [];
    });
    return { ahead, tried: looks.length, held: looks.filter(({ held }) => held).length };
  });
}
