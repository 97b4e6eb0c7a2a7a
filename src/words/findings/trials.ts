/** What is to be said of a trial first, and what it shows and does not. */
import type { CautionValues, ConclusionValues, StandingValues } from "../../evidence/codes/trials.ts";
import { counted, listed } from "../lists.ts";
import { figure, percent } from "../numbers.ts";
import type { Sentences } from "./catalogue.ts";

export const TRIALS: Sentences<CautionValues & ConclusionValues & StandingValues> = {
  "caution/blind": ({ blind, pieces, share }) => {
    const could = blind === pieces ? "None of the pieces could" : `${blind} of ${counted(pieces, "piece")} could not`;
    return `${could} by ${blind === 1 ? "its" : "their"} shape reveal a weak glue line: by statics a glue line with only ${percentUp(share)} of the wood's own shear strength would have passed.`;
  },
  "caution/shapeless": ({ shapeless, pieces }) =>
    `Of ${shapeless} of ${counted(pieces, "piece")} the shape is not noted, or not one that the procedure allows: breaking in the wood, such a piece shows nothing.`,
  "caution/held": ({ share }) =>
    `That a bond held says no more than that its glue line had at least ${percent(Math.floor(share * 100 + 1e-9) / 100, 0)} of the wood's own shear strength: by its shape, or by the load read, the least telling of the pieces that held shows nothing above that.`,
  "caution/batches": ({ batches }) =>
    `The pieces come from ${batches.length} batches, ${listed(batches)}, each with every preparation; they are counted together here.`,
  "caution/mixed-up": ({ batches }) =>
    `The preparations were not bonded from one batch but from ${listed(batches)}: a difference between preparations may be one between batches.`,
  "caution/one-preparation": () => "There is only one preparation, so that nothing is compared.",
  "caution/one-with-pieces": ({ preparation }) => `Only ${preparation} has pieces, so that nothing is compared.`,
  "caution/unnamed": ({ pieces }) =>
    `${counted(pieces, "piece")} of the trial ${pieces === 1 ? "names" : "name"} none of its preparations and ${pieces === 1 ? "is" : "are"} left out.`,
  "caution/waiting": ({ pieces }) =>
    `${counted(pieces, "piece")} ${pieces === 1 ? "is" : "are"} not broken yet: what follows is how it stands now.`,

  "conclusion/nothing-broken": () => "No piece has been broken, so that nothing is shown yet.",
  "conclusion/nothing-shown": () => "No piece that was broken shows anything, so that there is nothing to conclude.",
  "conclusion/held": ({ counts }) =>
    `Of the pieces that show something, the bond held in ${listed(counts.map(({ preparation, held, of }) => `${held} of ${of} (${preparation})`))}.`,
  "conclusion/left-out": ({ preparations }) =>
    `Of ${listed(preparations)} no piece shows anything, so that ${preparations.length === 1 ? "it is" : "they are"} not compared.`,
  "conclusion/too-many": () => "So many pieces are not compared by this program.",
  "conclusion/alone": ({ atLeast }) =>
    `That shows, at 95 % confidence, no more than that at least ${percentDown(atLeast)} of such bonds hold. It is compared with nothing.`,
  "conclusion/differs": differs,
  "conclusion/no-difference": ({ p, alpha }) =>
    `No difference is shown (Fisher's exact test, p = ${pWords(p, alpha)}). That is not to say that there is none.`,
  "conclusion/could-have": couldHave,

  "standing/sanding": () =>
    "Whatever a trial shows, sandpaper is not for smoothing softwood that is to be bonded. Abrading adhesive that has already cured is another matter.",
};

function differs({ p, alpha, preparations, mixedUp }: ConclusionValues["conclusion/differs"]): string {
  const chance = `Were the preparations alike, outcomes as far apart as these or further would come about in ${chanceWords(p)} of such trials (Fisher's exact test, p = ${pWords(p, alpha)}).`;
  const shows =
    preparations === 2
      ? "That shows a difference between them under the conditions of this trial"
      : "That shows that they are not all alike under the conditions of this trial, not which of them differ";
  const cause = mixedUp ? "it may be one between their batches" : "not its cause";
  return `${chance} ${shows}; ${cause}, and not how it would be with other timber, adhesive or hands.`;
}

function couldHave({ clearest, alpha, effect, preparations }: ConclusionValues["conclusion/could-have"]): string {
  const others = preparations === 2 ? "every bond of the other" : "every bond of the others";
  if (effect === undefined)
    return `So few pieces could not have shown any difference: even had every bond of one preparation failed and ${others} held, p would be ${pWords(clearest, alpha)}.`;
  return `So few pieces could have shown only a great difference: even if ${others} were sure to hold, those of one would have to fail in at least ${percentUp(effect)} of cases for four such trials in five to tell them apart.`;
}

/** Rounded down, since more is not shown. */
const percentDown = (share: number): string => `${figure(Math.floor(share * 1000 + 1e-9) / 10, 1)} %`;

/** Rounded up, since less would not have shown. */
const percentUp = (share: number): string => `${Math.min(100, Math.ceil(share * 100 - 1e-9))} %`;

function pWords(p: number, alpha: number): string {
  if (p < 0.0001) return "less than 0.0001";
  const decimals = p < 0.001 ? 5 : p < 0.01 ? 4 : p < 0.1 ? 3 : 2;
  // Never rounded over the level that decides.
  const text = figure(p, decimals);
  return Number(text) <= alpha === p <= alpha ? text : figure(p, 6);
}

function chanceWords(p: number): string {
  return p < 0.001
    ? `fewer than one in ${Math.floor(1 / p) > 10_000 ? "ten thousand" : "a thousand"}`
    : percent(p, p < 0.01 ? 2 : 1);
}
