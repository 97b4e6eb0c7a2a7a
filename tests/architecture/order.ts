/** From the room that all may use to the one that nobody may; a room imports only itself and rooms before it. */
export const ORDER = [
  "problem",
  "defined",
  "facts",
  "record",
  "reckoning",
  "words",
  "evidence",
  "sentences",
  "editions",
  "charts",
  "pages",
  "layouts",
  "publish",
  "build",
  "preview",
  "cli",
];
