import { run } from "../../src/cli/run.ts";
import type { Surroundings } from "../../src/cli/surroundings.ts";

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command within this process, as on no terminal, on a day in 2021. */
export async function command(words: readonly string[], changed: Partial<Surroundings> = {}): Promise<Ran> {
  let out = "";
  let err = "";
  const code = await run(words, {
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    isTerminal: false,
    columns: 80,
    hasColours: false,
    now: () => new Date("2021-06-01T12:00:00"),
    timeZone: "Europe/Lisbon",
    program: new URL("../..", import.meta.url),
    untilStopped: () => Promise.resolve(),
    ...changed,
  });
  return { code, out, err };
}
