/** What was asked of the archive cannot be done as things are; the message says why and what to do. */
export class ArchiveRefused extends Error {}
