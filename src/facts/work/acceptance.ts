/**
 * A departure of an earlier day accepted now. It has no fact of its own: the departure tells by whom and in which
 * entry it was accepted.
 */
import { foundBy } from "../entry/amending.ts";
import { block, words } from "../field.ts";
import { idOf } from "../id.ts";

export const acceptanceSchema = block({
  departure: idOf("departure", "Which departure.", "D-05"),
  by: idOf("person", "Who accepts it.", "inspector-1"),
  reference: words("Number of the paper on which it was accepted; word of mouth is none.", "letter 4").optional(),
  condition: words(
    "On what condition; it is open until a later acceptance of the same departure without one.",
    "Two more screws at the root",
  ).optional(),
});

export const acceptanceAmended = foundBy({
  keys: ["departure"],
  kind: "departure",
  named: false,
  word: "Acceptance of",
  several: "Acceptances",
});
