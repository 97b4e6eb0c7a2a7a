/**
 * What the demonstration leaves wrong on purpose: the fault as a test here finds it, why it stays, and the entry in which
 * somebody noticed, with the words. Nothing else may be wrong.
 */
interface Meant {
  readonly fault: string;
  readonly why: string;
  readonly noticed: string;
  readonly words: string;
}

const MEANT: readonly Meant[] = [
  {
    fault: "spread B-033: 181 g/m² where the sheet wants 300",
    why: "a starved joint that its pieces did not show; it was made again, for another reason",
    noticed: "2026-05-02-the-hoop-twice",
    words: "was starved all the same",
  },
  {
    fault: "lot A-1: 17.2 dm³ taken of 17 dm³ on 2026-11-14",
    why: "a lot that does not add up: its amount was estimated and its cuts were not",
    noticed: "2026-11-14-feet-for-the-hoop",
    words: "By the book there is no ash left",
  },
  {
    fault: "lot A-1: 17.5 dm³ taken of 17 dm³ on 2026-11-18",
    why: "the same",
    noticed: "2026-11-14-feet-for-the-hoop",
    words: "I have left both figures as they are",
  },
  {
    fault: "left of H-2 on 2025-09-06: 19 g told, 59.5 g by what was mixed",
    why: "a tin that leaked",
    noticed: "2025-09-06-the-jar-is-opened",
    words: "Jorun found the other forty on the shelf",
  },
  {
    fault: "surfaces B-017: 38.1 h old",
    why: "an aged surface, in a joint that was taken apart",
    noticed: "2025-06-07-not-signed",
    words: "the Thursday of the sanding and the Saturday of the glue",
  },
  {
    fault: "cold B-010: 12.5 °C where the sheet wants 15",
    why: "a cold shop, in joints that were taken apart",
    noticed: "2025-01-18-twelve-and-a-half",
    words: "The sheet says fifteen. It does not say *about*.",
  },
  {
    fault: "cold B-030: 12.5 °C where the sheet wants 15",
    why: "a cold surface in a warm room, in a joint that was taken apart",
    noticed: "2025-11-01-right-side-and-a-cold-board",
    words: "it said twelve and a half",
  },
  {
    fault: "woods B-011: no piece of birch plywood",
    why: "before anybody had thought of pieces with ply",
    noticed: "2025-04-05-the-first-web",
    words: "the first pieces here with ply in them",
  },
  {
    fault: "woods B-012: no piece of birch plywood",
    why: "the same, and mute besides",
    noticed: "2025-04-05-the-first-web",
    words: "neither the root blocks nor the left noses had any",
  },
  {
    fault: "woods B-041: a piece of spruce in a joint of ash, birch plywood",
    why: "pieces of the wrong wood",
    noticed: "2026-06-06-a-hole-out-of-place",
    words: "what three sticks of spruce had had to say about ash and ply",
  },
  {
    fault: "woods B-041: no piece of ash",
    why: "the same",
    noticed: "2026-06-06-a-hole-out-of-place",
    words: "They said nothing about it",
  },
  {
    fault: "woods B-041: no piece of birch plywood",
    why: "the same",
    noticed: "2026-06-06-a-hole-out-of-place",
    words: "They said nothing about it",
  },
  {
    fault: "load B-016/2: 2.44 MPa where the procedure wants 2.5",
    why: "wood that scatters as wood does",
    noticed: "2025-03-30-pulled-not-pushed",
    words: "a hair is below",
  },
  {
    fault: "load B-019/3: 2390 N was written first, of a leg that crushes at 1560 N",
    why: "a misreading, amended by what somebody else had seen",
    noticed: "2026-01-21-in-my-own-hand",
    words: "which no leg of that size can carry",
  },
];

/** Those that a test of one kind finds, in its order. */
export const meant = (...kinds: readonly string[]): readonly string[] =>
  MEANT.map(({ fault }) => fault)
    .filter((fault) => kinds.some((kind) => fault.startsWith(`${kind} `)))
    .sort();

export const noticed = MEANT;
