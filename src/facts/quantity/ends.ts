/**
 * The ends of what was noted. A rule that lets something pass takes the end that is worse for it, and of what was only estimated there is
 * none; a rule that holds something against what was noted takes the worse end of an estimate as well.
 */
import type { Ends, Noted } from "../values.ts";

/** Between which ends it is said to lie, be that an estimate: for what tells against, never for what proves. */
export function saidEnds(noted: Noted): Ends {
  if ("about" in noted) return noted.about;
  return "value" in noted ? { least: noted.value, most: noted.value } : noted;
}

/** Between which ends it was read; undefined of an estimate, which proves nothing. */
export const provenEnds = (noted: Noted): Ends | undefined => ("about" in noted ? undefined : saidEnds(noted));

/** The figure, where one was read. */
export const figureRead = (noted: Noted | undefined): number | undefined =>
  noted && "value" in noted ? noted.value : undefined;

export const isEstimate = (noted: Noted | undefined): boolean => noted !== undefined && "about" in noted;
