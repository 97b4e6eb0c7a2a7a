/**
 * Version of the rules by which verdicts are reached, and of the words they are given in. It is raised whenever a record could be judged
 * otherwise than before; what was written without one is of version 1.
 */
export const RULES_VERSION = 2;

/** Words of verdicts that earlier rules used, by the last version that did, and what is called so now. */
export const EARLIER_WORDS: readonly { readonly until: number; readonly word: string; readonly now: string }[] = [
  { until: 1, word: "accepted", now: "shown" },
  { until: 1, word: "unproven", now: "not shown" },
];
