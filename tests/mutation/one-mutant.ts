/** Set up before every test file: few examples for each property and, in a run for one mutant, that mutant from the start. */
import { configureGlobal } from "fast-check";

configureGlobal({ numRuns: 20, seed: 7, endOnFailure: true });

const id = process.env["MUTANTS_ONE"];
if (id !== undefined)
  Object.assign(((globalThis as { __stryker__?: object }).__stryker__ ??= {}), {
    activeMutant: id,
    processorLimit: process.cpuUsage().user + 20e6,
  });
