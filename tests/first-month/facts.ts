/** Each fact of the month with the page on which its reader looks for it, and the words that tell it there. */
interface Told {
  readonly fact: string;
  readonly edition?: "public" | "inspector" | "archive";
  readonly page: string;
  readonly says: readonly string[];
}

export const FACTS: readonly Told[] = [
  { fact: "earlier hours", page: "hours", says: ["of which 180 h are known by month or year alone"] },
  {
    fact: "who worked, and that a hand was not paid",
    page: "entry/2026-03-03-first-cup",
    says: ["unpaid hand", "18:30 to 20:45", "Together 4 h 30 min"],
  },
  { fact: "what stands by default", page: "entry/2026-03-03-first-cup", says: ["by default from 1 March 2026"] },
  { fact: "a stage of a joint", page: "entry/2026-03-03-first-cup", says: ["FI-J01: stage 1 of 2, glued with B-001"] },
  {
    fact: "that all stages are glued",
    page: "joint/FI-J01",
    says: ["Glued in 2 stages, and said to be complete on 7 March 2026"],
  },
  {
    fact: "a cup that was thrown away",
    page: "entry/2026-03-07-the-rest-of-the-skin",
    says: ["Thrown away", "Stood in the sun on the sill"],
  },
  { fact: "what was left of a cup", page: "batch/B-004", says: ["Left over, not spread 3.0 g"] },
  {
    fact: "the glue-up",
    page: "batch/B-004",
    says: ["Surfaces finished 09:20", "Last clamp tight 11:12", "Squeezed out all along"],
  },
  {
    fact: "a piece that was broken too early",
    page: "batch/B-004",
    says: ["B-004/1 too early", "it proves nothing", "Ole could not wait"],
  },
  { fact: "moisture read as a range", page: "batch/B-001", says: ["10.0 to 10.4 %"] },
  { fact: "the failed pieces", page: "evidence", says: ["B-002"] },
  { fact: "why a batch is rejected", page: "batch/B-002", says: ["rejected", "in the glue line, 10 % wood failure"] },
  {
    fact: "the rework",
    page: "joint/TP-J01",
    says: ["came apart in the glue line; planed back to bare wood", "B-006"],
  },
  { fact: "powder and water", page: "batch/B-005", says: ["Powder", "50.0 g", "U-1", "Water", "30.0 g"] },
  { fact: "the recall", page: "lot/S-2", says: ["recalled", "kiln-dried too hot"] },
  { fact: "what holds recalled timber", page: "joint/TP-J02", says: ["quarantined", "S-2"] },
  { fact: "a visit", page: "entry/2026-03-08-a-visit", says: ["Vibe Holmgaard", "45 min"] },
  { fact: "a pair that is out", page: "measurements", says: ["spar-height", "92.5 mm", "91.0 mm"] },
  {
    fact: "a departure and its condition",
    page: "departures",
    says: ["D-01", "Packer of 1 mm", "measured again before covering"],
  },
  { fact: "a bolt, where it stands", page: "lot/BO-1", says: ["Hinge bolt, lower", "SN 204"] },
  { fact: "a bolt, in its assembly", page: "assembly/rudder", says: ["Hinge bolt, lower", "BO-1", "SN 204"] },
  { fact: "a bolt, of which recall asks", page: "stock", says: ["BO-1", "Hinge bolt, lower"] },
  { fact: "the trial", page: "trial/scraper", says: ["planed and scraped along the grain", "No difference is shown"] },
  { fact: "the shop's climate", page: "climate", says: ["On the shelf over the bench"] },
  { fact: "a coat of varnish", page: "entry/2026-03-20-first-coat", says: ["Reed clear varnish", "10 mm under tape"] },
  { fact: "how often it was varnished", page: "assembly/fin", says: ["Inside", "V-1"] },
  { fact: "a signature", page: "hold-points", says: ["signed by Signe Rask, reference book 3 p. 11"] },
  { fact: "what a lot has cost", page: "lot/S-1", says: ["640.00 DKK"] },
  { fact: "the grain of a lot", page: "lot/S-1", says: ["1 : 18"] },
  {
    fact: "names as the public may read them",
    edition: "public",
    page: "entry/2026-03-03-first-cup",
    says: ["Maret, gluing", "Ole, gluing"],
  },
];
