#!/usr/bin/env node
import * as module from "node:module";
import { setFlagsFromString } from "node:v8";
import type { Asker } from "./desk/question.ts";
import type { Surroundings } from "./cli/surroundings.ts";

// From Node 22.1 on what was compiled once is kept, so that the next command starts sooner.
(module as { readonly enableCompileCache?: () => unknown }).enableCompileCache?.();
// Left to itself V8 lets garbage pile up to a few times of what is alive: half the memory for a tenth more time.
setFlagsFromString("--heap-growing-percent=40");
// A command runs for seconds: what V8 compiles anew after some thousand runs is seldom run often enough again. Later versions gain nothing by it, and do not know it.
if (process.versions.node.startsWith("20.")) setFlagsFromString("--interrupt-budget=400000");
const { run } = await import("./cli/run.ts");

const asker = async (): Promise<Asker> => (await import("./cli/desk/asker.ts")).askerOn({});

const surroundings: Surroundings = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  isTerminal: process.stdout.isTTY === true,
  columns: process.stdout.columns ?? 80,
  hasColours: process.stdout.isTTY === true && (process.env["NO_COLOR"] ?? "") === "" && process.env["TERM"] !== "dumb",
  now: () => new Date(),
  timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  ...(process.stdin.isTTY && process.stdout.isTTY && { asker }),
  program: new URL("..", import.meta.url),
  untilStopped: () =>
    new Promise((stopped) => {
      for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => stopped());
    }),
};

// Whoever reads may leave before the end, as `head` does; what was begun is ended all the same.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
process.exitCode = await run(process.argv.slice(2), surroundings);
