import { describe, expect, it } from "vitest";
import { pieceFacts } from "../../src/pages/evidence/piece-facts.ts";
import { piecesTogether } from "../../src/pages/evidence/pieces-together.ts";
import { exampleSite } from "./example.ts";

const { shown } = exampleSite("inspector");
const pieces = [...shown.evidence.pieces.values()];
const together = piecesTogether(shown, pieces);

describe("Pieces told together", () => {
  it("lose no fact: each is told once for all or in the piece's own row", () => {
    expect(pieces.length).toBeGreaterThan(2);
    for (const [at, file] of pieces.entries()) {
      for (const { word, noted } of pieceFacts(shown, file)) {
        const shared = together.shared.find((fact) => fact.word === word);
        const told =
          shared?.noted ?? (together.differing.includes(word) ? together.rows[at]?.notedOf.get(word) : undefined);
        expect(told?.startsWith(noted), `${file.piece.id}, ${word}`).toBe(true);
      }
    }
  });

  it("share nothing that one of them lacks or has otherwise", () => {
    for (const { word, noted } of together.shared) {
      expect(
        pieces.every((file) => pieceFacts(shown, file).some((fact) => fact.word === word && fact.noted === noted)),
        word,
      ).toBe(true);
    }
  });

  it("have each check once, with the pieces it is said of where that is not all of them", () => {
    const sentences = together.findings.map(({ rule, severity, sentence }) => `${rule} ${severity} ${sentence}`);
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const { piece, findings } of pieces) {
      for (const finding of findings) {
        const { rule, severity } = finding;
        const sentence = shown.say(finding);
        const told = together.findings.filter(
          (one) => one.rule === rule && one.severity === severity && one.sentence.endsWith(sentence),
        );
        expect(
          told.some((one) => one.sentence === sentence || one.sentence.slice(0, -sentence.length).includes(piece.id)),
          `${piece.id}: ${sentence}`,
        ).toBe(true);
      }
    }
  });

  it("are no pieces at all without complaint", () => {
    expect(piecesTogether(shown, [])).toEqual({ shared: [], differing: [], rows: [], findings: [] });
  });
});
