import { describe, expect, it } from "vitest";
import { lastDay } from "../../src/evidence/lots/lot-life.ts";
import { adhesive, lot } from "./make.ts";

describe("The last day of a lot", () => {
  it("is the expiry date, else that of the sheet's shelf life from the day received", () => {
    expect(lastDay(lot("R-1"), adhesive())).toEqual({
      day: "2026-01-10",
      limit: {
        code: "limit/expiry",
        values: { day: "2026-01-10" },
        from: { code: "source/record", values: {}, known: "record" },
      },
    });
    expect(lastDay(lot("R-1", { expiry: undefined, received: "2025-01-10" }), adhesive())).toMatchObject({
      day: "2026-01-10",
      limit: {
        code: "limit/shelf-life",
        values: { life: "365 d", received: "2025-01-10" },
        from: { code: "source/sheet", values: { sheet: "Resorcin data sheet, revision 4" } },
      },
    });
  });

  it("is not known without either, without an adhesive, or from a day that is none", () => {
    const open = lot("R-1", { expiry: undefined });
    expect([
      lastDay(open, undefined),
      lastDay(open, adhesive({ shelfLife: undefined })),
      lastDay({ ...open, received: "2025-02-30" }, adhesive()),
    ]).toEqual([undefined, undefined, undefined]);
  });
});
