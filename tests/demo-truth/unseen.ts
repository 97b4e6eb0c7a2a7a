/** What the types and the style sheets allow and the demonstration has not, each with the reason. */
import type { Because } from "../facts/because.ts";

const ANOTHER = "another aircraft's:";
const ALIKE = "one word of a row that looks the same whatever it says:";

export const NOT_IN_THE_STORY: readonly Because[] = [
  [
    `${ANOTHER} it has not flown and stands on no scales`,
    "HoldPoint.kind: return to service",
    "PlannedCoat.before: return to service",
    "OnScales.at: *",
    "Finding.rule: in-service",
  ],
  [`${ANOTHER} one record has one kind of units`, "Aircraft.units: imperial"],
  [`${ANOTHER} no departure was rewritten once accepted`, "Evidence.standings: changed since it was accepted"],
  [`${ANOTHER} nobody handed it over`, "Person.role: former builder"],
  [`${ANOTHER} no maker of its adhesives asks for that`, "Adhesive.kind: applied-apart", "Finding.rule: post-cure"],
  [`${ANOTHER} its sheets give times of cure`, "CureLaw.from: working life", "CureLaw.from: doubling"],
  [`${ANOTHER} no sheet of it says how warm a joint may become`, "Finding.rule: service-heat"],
  [
    "which audience hides what is one decision: see the test of audiences, and tests/leaks",
    "*.audience: inspector",
    "*.audience: archive",
  ],
  [
    `${ALIKE} dimensions, kinds of finish, when a coat is planned for, whether a hand was paid`,
    "Measurement.dimension: *",
    "Finish.kind: *",
    "PlannedCoat.before: *",
    "HoursLine.hand: paid",
  ],
  [
    `${ALIKE} what is asked of a glue-up and was found; one card asks and one cup answers in full`,
    "Asks.*",
    "Method.*",
    "GlueUp.*",
  ],
  [
    "nothing that is found is about such a thing, or rests on it",
    "Ref.kind: adhesive",
    "Ref.kind: finish",
    "Ref.kind: person",
    "Ref.kind: earlier hours",
  ],
  [
    "every cup of the story has its warmth noted or logged, and no log is hidden: tests/evidence/estimates, tests/leaks",
    "Cure.warmth: unknown",
    "Cure.readyBy: *",
  ],
  ["only resin and hardener are still needed", "Part.part: glue", "Part.part: powder"],
  [
    "whoever saw what was amended stands in the story, and every piece has its wood: tests/evidence",
    "Finding.rule: seconded",
    "Finding.rule: piece-timber",
    "Finding.rule: piece-wood",
  ],
  ["no face that was glued was varnished, in which the story takes some pride", "Finding.rule: coated-faces"],
  [
    "no limit that anything was held against has such a source; pages of rules and of credit name theirs",
    "Source.known: second-hand",
  ],
];

export const MARKED_OTHERWISE: readonly Because[] = [["it stands with the words of what happened", "rework", "recall"]];

export const NO_SUCH_LOOK: readonly Because[] = [
  ["the demo has no state without a joint or batch in it", "tally__row--none"],
  ["its assemblies lie in two levels", "depth-*"],
  ["it has seven charts of several lines at most", "series-8"],
  ["it stands on no scales yet", "scales"],
  ["no year has so many entries that it needs a page of its own", "search__year"],
  ["no text of a day was struck out", "struck*"],
  ["every photograph is there", "photo__missing"],
];
