/** Coats with only what an edition shows of them. Their verdicts stay those of the whole record. */
import type { CoatFile } from "../evidence/types.ts";
import { type Decisions, part, show } from "../facts/decisions.ts";
import { coatShown } from "../facts/work/coat.ts";
import { type Ground, isTold, ofEntry } from "./ground.ts";
import { findings } from "./redacted-findings.ts";

export const coatFileShown: Decisions<CoatFile, Ground> = {
  coat: part(coatShown),
  verdict: show,
  findings,
  dryFrom: show,
  off: ofEntry(coatShown),
};

export const isCoatFileShown = ({ coat }: CoatFile, ground: Ground): boolean => isTold(coat, ground);
