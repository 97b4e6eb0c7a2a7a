/** What sort of page it is: marks its place in the navigation and lets styles address it. */
export type PageKind =
  | "home"
  | "entries"
  | "entry"
  | "assemblies"
  | "assembly"
  | "hours"
  | "evidence"
  | "batch"
  | "joint"
  | "lot"
  | "trial"
  | "hold points"
  | "open items"
  | "departures"
  | "search"
  | "about"
  | "appendix";
