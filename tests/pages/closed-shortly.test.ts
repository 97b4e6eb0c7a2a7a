import { expect, it } from "vitest";
import { closedShortly } from "../../layouts/parts/shapes.tsx";

it("An element of a drawing with nothing in it is closed shortly, one with a title in it and all others stay as they are", () => {
  expect(closedShortly('<path d="M0 0"></path><use href="#a" x="1"></use>')).toBe(
    '<path d="M0 0"/><use href="#a" x="1"/>',
  );
  for (const kept of [
    '<use href="#a"><title>B-1</title></use>',
    '<path d="M0 0"><title>B-1, 22 Feb</title></path>',
    "<g></g>",
    "<span></span>",
    "<script></script>",
    "<p>&lt;path&gt;&lt;/path&gt;</p>",
  ])
    expect(closedShortly(kept)).toBe(kept);
  expect(closedShortly('<path data-words="a > b"></path>')).toBe('<path data-words="a > b"/>');
});
