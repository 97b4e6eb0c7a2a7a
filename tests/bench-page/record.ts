/** The small record of the desk's tests, with tins that keep, pieces long cured, and two joints to glue. */
import { WORKSHOP } from "../desk/workshop.ts";

const keeping = (text: string): string =>
  text.replace(/expiry: .*/, "expiry: 2090-01-01").replace("amount: 500 g\n", "");

export const BENCH_RECORD: { readonly [path: string]: string } = {
  ...WORKSHOP,
  "lots/R-1.md": keeping(WORKSHOP["lots/R-1.md"]),
  "lots/H-1.md": keeping(WORKSHOP["lots/H-1.md"]),
  "assemblies/rudder.md": WORKSHOP["assemblies/rudder.md"].replace(
    "hold_points:",
    "  - { id: RD-J03, title: Rib to skin, area: 20 cm² }\nhold_points:",
  ),
  "procedures/three-leg.md": WORKSHOP["procedures/three-leg.md"].replace("pieces: 2", "pieces: 3"),
  "entries/2021-03-14-glue.md": WORKSHOP["entries/2021-03-14-glue.md"]
    .replace(/( +- \{ id: B-001\/2.*\n)/, (line) => line + line.replace("B-001/2", "B-001/3"))
    .replace("title: Spar", "hours: [{ who: me, task: gluing, time: 1:00 }]\ntitle: Spar"),
  "entries/2021-03-20-before.md": `---
date: 2021-03-20
assembly: rudder
title: Broken before
hours: [{ who: me, task: gluing, time: 0:30 }]
batches:
  - id: B-000
    adhesive: two-part
    mixed: "10:05"
    pieces:
      - { id: B-000/1, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
---
`,
  "entries/2021-04-10-broke.md": `---
date: 2021-04-10
title: A trial stick
hours: [{ who: me, task: testing, time: 0:30 }]
assembly: rudder
tests:
  - { piece: B-000/1, at: "12:00", failure: wood, wood_failure: 95 %, load: 331 lbf }
---
`,
};

/** The same with a helper who may have watched. */
export const HELPED_RECORD: { readonly [path: string]: string } = {
  ...BENCH_RECORD,
  "aircraft.md": WORKSHOP["aircraft.md"].replace(
    "role: builder }",
    "role: builder }\n  - { id: helper, name: Sam Example, public: Sam, role: helper }",
  ),
};

/** That one with a sheet that asks when the surfaces were finished: all that the page can ask. */
export const ASKING_RECORD: { readonly [path: string]: string } = {
  ...HELPED_RECORD,
  "adhesives/two-part.md": (BENCH_RECORD["adhesives/two-part.md"] ?? "").replace(
    /^---\n/,
    "---\nasks: { prepared_within: 4 h }\n",
  ),
};
