import { configureGlobal } from "fast-check";

configureGlobal({ numRuns: 20, seed: 7 });
