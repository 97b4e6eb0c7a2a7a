import { expect, it } from "vitest";
import { functionsOf, importsOf, keptBy } from "./source.ts";

it("sees every kind of import, so that none slips past the order of rooms", () => {
  const text = `import a from "./a.ts";\nimport type { B } from "./b.ts";\nexport { c } from "./c.ts";\nexport * from "./d.ts";\nawait import("./e.ts");\n`;
  expect(importsOf({ path: "x.ts", text }).sort()).toEqual(["./a.ts", "./b.ts", "./c.ts", "./d.ts", "./e.ts"]);
});

it("measures functions of every form", () => {
  const text = "function f() {\n\n}\nconst g = () => {\n};\nclass K {\n  m() {\n\n\n  }\n}\n";
  expect(functionsOf({ path: "x.ts", text }).map((f) => f.lines)).toEqual([3, 2, 4]);
});

it("sees what a module keeps, and not what a function does nor a table", () => {
  const text = `let n = 0;\nexport const a = new Map<string, number>();\nconst b = new WeakMap();\nconst t = new Set(["x"]);\nfunction f() {\n  const c = new Map();\n}\n`;
  expect(keptBy({ path: "x.ts", text })).toEqual(["n", "a", "b"]);
});
