import sharp from "sharp";

/** A record of a few files with something of all that a site carries. Good as it stands; tests change what they try. */
export async function smallRecord(): Promise<{ [path: string]: string | Buffer }> {
  const photo = (colour: string): Promise<Buffer> =>
    sharp({ create: { width: 640, height: 480, channels: 3, background: colour } })
      .jpeg()
      .toBuffer();
  return {
    "aircraft.md": AIRCRAFT,
    "assemblies/fin.md": ASSEMBLY,
    "entries/2021-03-01-first.md": FIRST,
    "entries/2021-03-08-second.md": SECOND,
    "entries/2021-03-09-letter.md": LETTER,
    "drawings/fin.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 300"><path d="M10 10h90v200z"/></svg>`,
    "photos/jig.jpg": await photo("#a08060"),
    "photos/secret-vault.jpg": await photo("#104020"),
    "papers/letter.txt": "Dear builder\n",
  };
}

const AIRCRAFT = `---
name: Stub
type: one seat
units: metric
time_zone: Europe/Lisbon
start: 2021-02-01
people:
  - { id: ansa, name: Ansa Fullname, public: Ansa, role: builder }
tasks: [gluing, shaping]
---
A small aircraft, for trying things out.
`;

const ASSEMBLY = `---
title: Fin
drawing: { file: ../drawings/fin.svg, alt: The fin from the left }
joints:
  - { id: F-J1, title: Post to rib, at: { x: 20 %, y: 30 % } }
---
The fin.
`;

const FIRST = `---
date: 2021-03-01
title: Ribs cut
assembly: fin
hours:
  - { who: ansa, task: shaping, time: 2:00 }
photos:
  - { file: ../photos/jig.jpg, alt: The jig on the bench }
---
# First words

Cut the ribs, see [what follows](2021-03-08-second.md) and [the joint](F-J1).

![](../photos/jig.jpg)

::: inspector
Only the inspector reads of the marmalade.
:::
`;

const SECOND = `---
date: 2021-03-08
title: More shaping
assembly: fin
hours:
  - { who: ansa, task: shaping, time: 1:30 }
photos:
  - { file: ../photos/secret-vault.jpg, alt: The vault, for: inspector }
---
Shaped, after [the first day](2021-03-01-first.md). Nothing [hidden](2021-03-09-letter.md) here.
`;

const LETTER = `---
date: 2021-03-09
title: A letter about quinces
assembly: fin
for: inspector
attachments:
  - { file: ../papers/letter.txt, title: Letter }
---
It came.
`;
