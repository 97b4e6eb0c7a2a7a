/** Batches of every kind, with their tests, for properties that must hold for all of them. */
import fc from "fast-check";
import type { Batch, Lot, Piece, PieceTest, Procedure, Record } from "../../src/facts/types.ts";
import { adhesive, batch, DAY, glued, lot, LOTS, piece, procedure, test } from "./make.ts";
import { celsius, d, g, mm, moment, mpa, newton, pc, range } from "./quantities.ts";

export interface Shop {
  readonly batch: Batch;
  readonly tests: readonly PieceTest[];
  readonly resin: Lot;
  readonly procedure: Procedure;
  readonly sheetGivesHumidity: boolean;
}

/** Mostly present, at times absent. */
const maybe = <T>(values: readonly T[]): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 5, arbitrary: fc.constantFrom(...values) }, { weight: 1, arbitrary: fc.constant(undefined) });

const anyPiece = fc.record({
  overlap: maybe(["12.0", "15.0", "18.0", "24.0"].map(mm)),
  thickness: maybe([mm("6.0")]),
  width: maybe([mm("6.0")]),
  trial: fc.constantFrom(undefined, undefined, undefined, "T"),
});

const soundTest = fc.constant({
  failure: "wood" as PieceTest["failure"],
  woodFailure: pc("100"),
  load: newton("1260"),
  day: "2025-03-20",
  time: "15:00",
});

const spoilt = fc.record({
  failure: fc.constantFrom("wood", "wood", "wood", "mixed", "glue line") as fc.Arbitrary<PieceTest["failure"]>,
  woodFailure: maybe(["50", "75", "100", "100", "100", "100"].map(pc)),
  load: fc.constantFrom(undefined, newton("900"), newton("1260"), newton("1260"), newton("1300"), newton("1500")),
  day: fc.constantFrom("2025-03-11", "2025-03-13", "2025-03-20", "2025-03-20"),
  time: maybe(["12:00", "15:00"]),
});

const anyTest = fc.oneof(soundTest, spoilt);
const soundPiece = fc.constant({ overlap: mm("15.0"), thickness: mm("6.0"), width: mm("6.0"), trial: undefined });

const anyBatch = fc.record({
  resin: fc.record({ lot: maybe(["R-1"]), mass: maybe(["4.0", "40.0", "40.0", "400"].map(g)) }),
  hardener: fc.record({ lot: maybe(["H-1"]), mass: maybe(["2.0", "20.0", "20.0", "20.9", "22.0"].map(g)) }),
  scale: maybe(["0.1", "0.1", "1"].map(g)),
  mixed: maybe([moment(DAY, "14:00")]),
  closed: maybe([moment(DAY, "14:20"), moment(DAY, "14:40")]),
  temperature: maybe(["12", "20", "20", "24", "28"].map(celsius)),
  humidity: maybe(["30", "50", "50", "80"].map(pc)),
  surface: maybe([celsius("10"), celsius("20")]),
  moisture: maybe(["10", "10", "14"].map(pc)),
  timber: fc.constantFrom(["S-1"], []),
});

const anyProcedure = fc.record({
  pieces: fc.constantFrom(undefined, 1, 2),
  woodFailure: maybe([pc("75")]),
  stress: maybe([mpa("6")]),
  leastCure: maybe([{ time: d("3") }, { time: d("5"), temperature: celsius("22") }]),
  overlap: maybe([range("2 to 3 thicknesses", 2, 3)]),
});

/** Half of the batches are in order but for their pieces, and half of the procedures are the usual one, so that accepted batches are common. */
export const anyShop: fc.Arbitrary<Shop> = fc
  .record({
    good: fc.boolean(),
    usual: fc.boolean(),
    pieces: fc.array(fc.tuple(fc.oneof(soundPiece, anyPiece), fc.option(anyTest, { nil: undefined, freq: 8 })), {
      minLength: 0,
      maxLength: 4,
    }),
    of: anyBatch,
    how: anyProcedure,
    expiry: maybe(["2025-03-09", "2026-01-01", "2026-01-01"]),
    sheetGivesHumidity: fc.boolean(),
  })
  .map(({ good, usual, pieces, of, how, expiry, sheetGivesHumidity }) => {
    const made: Piece[] = pieces.map(([one], i) => piece("B-1", i + 1, one));
    const tests = pieces.flatMap(([, one], i) =>
      one
        ? [
            test(
              `B-1/${i + 1}`,
              { ...one, at: one.time === undefined ? undefined : moment(one.day, one.time) },
              one.day,
            ),
          ]
        : [],
    );
    const asNoted = good ? batch("B-1", { pieces: made }) : batch("B-1", { ...of, pieces: made });
    return {
      batch: asNoted,
      tests,
      resin: lot("R-1", { expiry: good ? "2026-01-01" : expiry }),
      procedure: procedure(usual ? {} : how),
      sheetGivesHumidity,
    };
  });

export const recordOf = (shop: Shop): Record =>
  glued([shop.batch], shop.tests, {
    adhesives: [adhesive(shop.sheetGivesHumidity ? {} : { humidity: undefined })],
    procedures: [shop.procedure],
    lots: [shop.resin, ...LOTS.slice(1)],
  });
