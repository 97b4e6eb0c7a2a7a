import { expect, it } from "vitest";
import { jointsOf } from "../../src/evidence/readiness/order.ts";
import { assembly, holdPoint, joint } from "./make.ts";

it("Before a skin or a closing a hold point may ask for fewer than all joints, and never for none", () => {
  const inside = [assembly("wing", { joints: [joint("W-1"), joint("W-2")] })];
  const asked = (kind: "close-up" | "next skin" | "covering", joints?: readonly string[]) =>
    jointsOf(holdPoint("H", { kind, ...(joints && { joints }) }), inside);
  for (const kind of ["close-up", "next skin"] as const) {
    expect(asked(kind, ["W-2"])).toEqual(["W-2"]);
    expect(asked(kind, [])).toEqual(["W-1", "W-2"]);
    expect(asked(kind)).toEqual(["W-1", "W-2"]);
  }
  expect(asked("covering", ["X-1"])).toEqual(["W-1", "W-2", "X-1"]);
});
