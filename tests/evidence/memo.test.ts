import { expect, it } from "vitest";
import { Memo } from "../../src/memo.ts";

it("makes a thing once of each, whoever asks, and anew of a copy, even one that holds the same memo", () => {
  let made = 0;
  const next = () => ++made;
  const other = () => `other ${++made}`;
  const memo = new Memo();
  const record = { memo };
  expect([memo.once(record, next), memo.once(record, next)]).toEqual([1, 1]);
  expect(memo.once(record, other)).toBe("other 2");
  const copy = { ...record };
  expect([copy.memo.once(copy, next), memo.once(record, next)]).toEqual([3, 1]);
  expect([new Memo().once(record, next), memo.once(record, next)]).toEqual([4, 1]);
});

it("makes what is nothing once too", () => {
  let asked = 0;
  const nothing = () => {
    asked += 1;
    return undefined;
  };
  const memo = new Memo();
  expect([memo.once(memo, nothing), memo.once(memo, nothing), asked]).toEqual([undefined, undefined, 1]);
});

it("makes a thing once within its whole, and is told by the thing", () => {
  const memo = new Memo();
  const whole = { made: 0 };
  const within = (of: { made: number }, { name }: { readonly name: string }) => `${name} ${++of.made}`;
  const [a, b] = [{ name: "a" }, { name: "b" }];
  const asked = [a, b, a, { ...a }].map((one) => memo.within(whole, one, within));
  expect(asked).toEqual(["a 1", "b 2", "a 1", "a 3"]);
});
