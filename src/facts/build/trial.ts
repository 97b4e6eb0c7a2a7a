/** An experiment at the bench. */
import type * as z from "zod";
import { type Decisions, each, prose, show } from "../decisions.ts";
import { audience, block, day, list, words } from "../field.ts";
import { ownId } from "../id.ts";
import type { SoundFile } from "../typing.ts";
import type { Audience, Day, Passage, Placed } from "../values.ts";
import type { Visibility } from "../visibility.ts";

export const trialSchema = block({
  title: words("What the trial is called.", "Glue over cured glue"),
  question: words("What it is to answer.", "Does glue hold on a surface with cured glue on it?"),
  stated: day("The day the expectation was written down."),
  expectation: words(
    "What you expected before any piece was broken.",
    "Sanded to bare wood is best, wiped only is worst.",
  ),
  preparations: list(
    block({
      id: ownId("A word for this way of preparing pieces.", "abraded"),
      what: words("What was done to the surfaces.", "Cured glue abraded with 80 grit, dust wiped off"),
    }),
    "The ways of preparing pieces that are compared.",
  ),
  for: audience().optional(),
});

/** One way of preparing pieces in a trial. */
export interface Preparation {
  readonly id: string;
  readonly what: string;
}

/** An experiment at the bench. Its pieces name it; its outcomes are their tests. */
export interface Trial extends Placed {
  readonly title: string;
  readonly question: string;
  readonly stated: Day;
  /** What the builder expected, in words, before the pieces were broken. */
  readonly expectation: string;
  readonly preparations: readonly Preparation[];
  readonly audience: Audience;
  readonly body: readonly Passage[];
}

export function trialOf({ spec, file, id: own, body }: SoundFile<z.output<typeof trialSchema>>): Trial {
  return {
    id: own,
    place: { file, line: 1, column: 1 },
    title: spec.title,
    question: spec.question,
    stated: spec.stated,
    expectation: spec.expectation,
    preparations: spec.preparations,
    audience: spec.for ?? "public",
    body,
  };
}

const preparationShown: Decisions<Preparation> = { id: show, what: show };

export const trialShown: Decisions<Trial> = {
  id: show,
  place: show,
  title: show,
  question: show,
  stated: show,
  expectation: show,
  preparations: each(preparationShown),
  audience: show,
  body: prose("trials"),
};

export const isTrialShown = ({ id: one }: Trial, seer: Visibility): boolean => seer.trials.has(one);
