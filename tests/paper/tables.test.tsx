/** Tables of papers: what every row has in common is said once above them, and nothing of it is lost. */
import type { JSX } from "preact";
import { expect, it } from "vitest";
import { ListTable } from "../../layouts/evidence/parts.tsx";
import { Mark } from "../../layouts/parts/mark.tsx";
import type { Block } from "../../src/publish/paper/blocks.ts";
import { paperOf } from "../../src/publish/paper/papers.ts";
import { exampleSite } from "../pages/example.ts";

type Table = Extract<Block, { readonly b: "table" }>;
type Cells = readonly [piece: string, broken: string | JSX.Element, verdict: string | JSX.Element];

function tableOf(rows: readonly Cells[]): Table {
  const body = (
    <ListTable caption="Pieces" heads={["Piece", "Broken", "Verdict"]}>
      {rows.map(([piece, ...others]) => (
        <tr id={piece}>
          <th scope="row">{piece}</th>
          {others.map((cell) => (
            <td>{cell}</td>
          ))}
        </tr>
      ))}
    </ListTable>
  );
  const { paper } = paperOf(exampleSite("archive"), { title: "Pieces", front: null, body }, () => undefined);
  return paper.body.find((block): block is Table => block.b === "table") ?? expect.unreachable();
}

const PASS = <Mark of="pass" />;
const MARK = { i: "mark", shape: "full", word: "pass", grave: false };

it("A column whose cells all say the same is told once above its table on paper, with its words and its mark", () => {
  const { alike, head, columns, rows } = tableOf([
    ["P1", "2 July", PASS],
    ["P2", "3 July", PASS],
    ["P3", "2 July", PASS],
  ]);
  expect(alike).toEqual([[["Verdict"], [{ ...MARK, shape: expect.any(String) }]]]);
  expect(head).toEqual([["Piece"], ["Broken"]]);
  expect(columns.length).toBe(2);
  expect(JSON.stringify(rows.map(({ cells }) => cells[1]))).toMatch(/2 July.*3 July.*2 July/);
  expect(rows.map(({ cells }) => cells.length)).toEqual([2, 2, 2]);
});

it.each<{ readonly why: string; readonly rows: readonly Cells[] }>([
  {
    why: "one says otherwise",
    rows: [
      ["P1", "2 July", PASS],
      ["P2", "2 July 2001", <Mark of="fail" />],
      ["P3", "2 July", PASS],
    ],
  },
  {
    why: "there are but two rows",
    rows: [
      ["P1", "2 July", PASS],
      ["P2", "2 July", PASS],
    ],
  },
  {
    why: "nothing stands in it",
    rows: [
      ["P1", "", "a"],
      ["P2", "", "b"],
      ["P3", "", "c"],
    ],
  },
  {
    why: "the same words lead elsewhere",
    rows: [
      ["P1", <a href="#P1">there</a>, "a"],
      ["P2", <a href="#P2">there</a>, "b"],
      ["P3", <a href="#P3">there</a>, "c"],
    ],
  },
  {
    why: "they are lists",
    rows: [
      ["P1", list(), "a"],
      ["P2", list(), "b"],
      ["P3", list(), "c"],
    ],
  },
])("Each row of a table on paper says it for itself where $why", ({ rows }) => {
  const table = tableOf(rows);
  expect(table.alike).toEqual([]);
  expect(table.head).toEqual([["Piece"], ["Broken"], ["Verdict"]]);
  expect(table.rows.map(({ cells }) => cells.length)).toEqual(rows.map(() => 3));
});

it("A table on paper whose rows differ in nothing but their names keeps a column beside those", () => {
  const { alike, head } = tableOf(["P1", "P2", "P3"].map((piece): Cells => [piece, "2 July", PASS]));
  expect(head).toEqual([["Piece"], ["Broken"]]);
  expect(alike.map(([words]) => words)).toEqual([["Verdict"]]);
});

function list(): JSX.Element {
  return (
    <ul>
      <li>one</li>
    </ul>
  );
}
