/**
 * Version of the rules by which verdicts are reached, and of the words they are given in. It is raised whenever a record could be judged
 * otherwise than before; what was written without one is of version 1.
 */
export const RULES_VERSION = 2;
