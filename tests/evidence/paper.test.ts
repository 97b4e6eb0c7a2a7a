import { expect, it } from "vitest";
import { isPaper } from "../../src/evidence/readiness/paper.ts";

it("What is given as a paper is none where it says so, or is only of what was spoken", () => {
  const no = [
    "none",
    "none..",
    "No.",
    "-",
    "?",
    " n/a ",
    "N.A.",
    "to follow",
    "tbd",
    "by telephone",
    "told me on the phone",
  ];
  const spoken = ["Verbally", "by word of mouth, 3 May", "in person", "she said so", "called back 12", "pending"];
  const each = ["phone", "phoned", "telephoning", "call", "calls", "called", "verbal", "verbally", "oral", "orally"];
  const more = [
    "talk",
    "talked",
    "nod",
    "nodded",
    "n.a.",
    "n a",
    "to come",
    "t.b.d.",
    "tba",
    "not any",
    "not yet",
    "?!",
  ];
  for (const words of [...each, ...more]) expect([words, isPaper(words)]).toEqual([words, false]);
  for (const words of [...no, ...spoken, "", "telephoned", "a nod, handshake", "lost"])
    expect([words, isPaper(words)]).toEqual([words, false]);
  expect(isPaper(undefined)).toBe(false);
  const papers = ["letter 4", "form 12", "12", "No. 12", "e-mail of 3 May", "note of a telephone call, signed", "N 4"];
  for (const words of [...papers, "letter after a call", "Mr. Nodden's form", "none-12", "A-7", "logbook p. 3"])
    expect([words, isPaper(words)]).toEqual([words, true]);
});
