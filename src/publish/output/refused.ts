/** The output folder cannot be used as it is; the message says why and what to do. */
export class OutputRefused extends Error {}
