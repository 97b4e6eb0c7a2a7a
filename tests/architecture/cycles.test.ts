import { describe, expect, it } from "vitest";
import { ringsOf } from "./cycles.ts";
import { importsOf, runningImportsOf, sourceFiles } from "./source.ts";

const product = sourceFiles("src", "layouts").filter(({ path }) => !path.endsWith(".css"));

describe("Files that import each other around a ring", () => {
  it("are found, whether two or three of them, and not where imports only meet", () => {
    const file = (path: string, ...to: string[]) => ({ path, text: to.map((t) => `import "${t}";`).join("\n") });
    const files = [
      file("a.ts", "./b.ts"),
      file("b.ts", "./c.ts", "./d.ts"),
      file("c.ts", "./a.ts"),
      file("d.ts", "./e.ts", "./f.ts"),
      file("e.ts", "./f.ts"),
      file("f.ts"),
      file("g.ts", "./h.ts"),
      file("h.ts", "./g.ts"),
    ];
    expect(ringsOf(files, runningImportsOf)).toEqual([
      ["a.ts", "b.ts", "c.ts"],
      ["g.ts", "h.ts"],
    ]);
  });

  it("are told by what runs from those of types alone", () => {
    const files = [
      { path: "a.ts", text: 'import type { B } from "./b.ts";\nimport { type D } from "./b.ts";\n' },
      { path: "b.ts", text: 'export { c } from "./a.ts";\n' },
    ];
    expect(ringsOf(files, runningImportsOf)).toEqual([]);
    expect(ringsOf(files, importsOf)).toEqual([["a.ts", "b.ts"]]);
  });

  it("are nowhere in what runs", () => {
    expect(ringsOf(product, runningImportsOf)).toEqual([]);
  });

  it("are nowhere in what is typed either", () => {
    expect(ringsOf(product, importsOf)).toEqual([]);
  });
});
