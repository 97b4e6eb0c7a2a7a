/** A small record: one joint glued, its pieces not broken yet. */
export const WORKSHOP = {
  "aircraft.md": `---
name: Bulrush
type: parasol
units: metric
time_zone: Europe/Lisbon
start: 2021-03-07
people:
  - { id: me, name: Ines Example, public: Ines, role: builder }
tasks: [gluing, testing]
---
`,
  "assemblies/rudder.md": `---
title: Rudder
joints:
  - { id: RD-J01, title: Spar to leading rib, area: 40 cm² }
  - { id: RD-J02, title: Trailing rib, area: 30 cm² }
hold_points:
  - { id: RD-H1, title: Before the second skin, kind: close-up }
---
`,
  "adhesives/two-part.md": `---
title: Two-part structural epoxy
sheet: Data sheet of the maker, revision 2
by_mass: { ratio: "100 : 44", tolerance: ±5 % }
working_life:
  - { temperature: 25 °C, mass: 150 g, time: 40 min }
temperature: 16 °C to 28 °C
cure:
  - { temperature: 20 °C, time: 7 d }
wood_moisture: 8 % to 12 %
---
`,
  "procedures/three-leg.md": `---
title: Three-leg shear piece
form: three-leg
overlap: 2 to 3 thicknesses
pieces: 2
least_cure: { time: 7 d, temperature: 18 °C }
wood_failure: 80 %
---
`,
  "lots/R-1.md": `---
title: Resin, first can
material: resin
adhesive: two-part
received: 2021-03-02
expiry: 2021-05-01
amount: 500 g
---
`,
  "lots/H-1.md": `---
title: Hardener, first can
material: hardener
adhesive: two-part
received: 2021-03-02
expiry: 2022-03-01
---
`,
  "lots/S-1.md": `---
title: Spruce planks
material: timber
species: Sitka spruce
received: 2021-03-02
---
`,
  "entries/2021-03-14-glue.md": `---
date: 2021-03-14
assembly: rudder
title: Spar to the leading rib
batches:
  - id: B-001
    adhesive: two-part
    mixed: "10:05"
    closed: "10:30"
    scale: 0.1 g
    resin: { lot: R-1, mass: 40.0 g }
    hardener: { lot: H-1, mass: 17.6 g }
    shop: { temperature: 20.5 °C, humidity: 48 % }
    moisture: 10 %
    timber: [S-1]
    joints: [RD-J01]
    pieces:
      - { id: B-001/1, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
      - { id: B-001/2, procedure: three-leg, lot: S-1, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }
open_items:
  raise:
    - { id: O-1, what: Corner block to be fitted, before: close-up }
    - { id: O-2, what: Ask for the certificate }
---
`,
} as const;
