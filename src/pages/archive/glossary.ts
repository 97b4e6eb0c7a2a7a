/** The trade's words, as far as a record uses them. */
import type { Shown } from "../../editions/shown.ts";

export interface Word {
  readonly word: string;
  readonly means: string;
}

interface Used extends Word {
  readonly isUsed: (shown: Shown) => boolean;
}

const ALWAYS = (): boolean => true;

/** In the order of the alphabet. */
const WORDS: readonly Used[] = [
  {
    word: "amendment",
    means:
      "a later entry that says what an earlier one should have said; the first text stays readable, struck through",
    isUsed: ({ record }) => record.entries.some(({ amendments }) => amendments.length > 0),
  },
  {
    word: "assembly",
    means: "a part of the aircraft that is built and inspected as one, such as a spar; assemblies stand in one another",
    isUsed: ALWAYS,
  },
  {
    word: "batch",
    means: "one cup of adhesive, mixed at once and used within its working life",
    isUsed: ({ evidence }) => evidence.batches.size > 0,
  },
  {
    word: "coat",
    means: "one layer of primer, varnish, dope or paint",
    isUsed: ({ evidence }) => evidence.coats.length > 0,
  },
  {
    word: "departure",
    means: "work that differs from the drawing, with its reason, and who accepted it",
    isUsed: ({ evidence }) => evidence.departures.size > 0,
  },
  {
    word: "entry",
    means: "the work of one day, told in words, with its facts beside it: one file of the record",
    isUsed: ALWAYS,
  },
  {
    word: "finding",
    means: "what one rule found of one thing: a limit that held, or one that did not, with its source",
    isUsed: ({ evidence }) => evidence.findings.length > 0,
  },
  {
    word: "hold point",
    means: "where work stops until someone has looked: before close-up, before covering, before flight",
    isUsed: ({ evidence }) => evidence.holdPoints.size > 0,
  },
  {
    word: "joint",
    means: "a glued joint, or several made alike at one time, in one assembly",
    isUsed: ({ evidence }) => evidence.joints.size > 0,
  },
  { word: "ledger", means: "a table of numbers or verdicts of the whole record, for other programs", isUsed: ALWAYS },
  {
    word: "lot",
    means: "what came in one delivery under one number: resin, hardener, timber, plywood, a part",
    isUsed: ({ record }) => record.lots.size > 0,
  },
  {
    word: "open item",
    means: "work put off: raised in one entry and closed in a later one",
    isUsed: ({ evidence }) => evidence.openItems.size > 0,
  },
  {
    word: "recall",
    means: "a notice that a lot is not to be trusted any more",
    isUsed: ({ record }) => record.entries.some(({ recalls }) => recalls.length > 0),
  },
  {
    word: "rework",
    means: "glue that was taken out of a joint so that it could be made again",
    isUsed: ({ record }) => record.entries.some(({ reworks }) => reworks.length > 0),
  },
  {
    word: "scarf",
    means: "two pieces of wood joined end to end on a long slope, such as 1 in 12",
    isUsed: ({ evidence }) => [...evidence.joints.values()].some(({ joint }) => /scarf/i.test(joint.title)),
  },
  {
    word: "seal",
    means: "the digests of all files of the record on a day, under the seal before it: what was changed later shows",
    isUsed: ({ seal }) => seal !== undefined,
  },
  {
    word: "test piece",
    means: "pieces of wood glued from a batch in order to be broken, and so to see where they give way",
    isUsed: ({ evidence }) => evidence.pieces.size > 0,
  },
  {
    word: "trial",
    means: "an experiment at the bench: a question, several preparations, some test pieces of each",
    isUsed: ({ record }) => record.trials.size > 0,
  },
  {
    word: "working life",
    means: "how long a mixed cup may be used, which is less the warmer and the fuller it is",
    isUsed: ({ record }) => [...record.adhesives.values()].some(({ workingLife }) => workingLife.length > 0),
  },
];

export function glossaryOf(shown: Shown): readonly Word[] {
  return WORDS.filter(({ isUsed }) => isUsed(shown));
}
