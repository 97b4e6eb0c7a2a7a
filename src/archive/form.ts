/**
 * Versions of what this program writes, so that a later one can read what an earlier one wrote. What says no version is of version 1:
 * seals and bags from before versions were written down, which are read as they were.
 */

/** 2: the line names its form and the version of the rules, and the list of files holds the time stamps of earlier seals. */
export const SEAL_FORM = 2;

/** 2: `bag-info.txt` names its form and the version of the rules. 3: `README.txt` lies beside it, and no longer below `data/`. */
export const BAG_FORM = 3;
