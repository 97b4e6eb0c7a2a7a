import { describe, expect, it } from "vitest";
import { recordShown } from "../../src/editions/redacted-record.ts";
import { type FieldRow, fieldRows, KINDS } from "../../src/desk/fields/rows.ts";
import { SCHEMAS } from "../../src/facts/kinds.ts";
import { command } from "../cli/command.ts";
import { typedFields } from "../facts/forms.ts";

const rows = KINDS.flatMap((kind) => fieldRows(kind).map((row) => ({ kind, ...row })));
const rowOf = (kind: string, path: string): FieldRow | undefined =>
  rows.find((row) => row.kind === kind && row.path === path);

describe("The fields of each kind of file", () => {
  it("are told of every kind, and none is left out", () => {
    expect(KINDS).toEqual(Object.keys(SCHEMAS));
    const told = new Set(rows.map(({ kind, path }) => `${kind}.${path.replaceAll("[]", "")}`));
    const amended = (path: string): boolean =>
      path.startsWith("entry.amends.") && told.has(path.replace("entry.amends.", "entry."));
    const missing = [...typedFields().keys()].filter((path) => !told.has(path) && !amended(path));
    expect(missing.filter((path) => !/^entry\.amends\.\w[\w.]*\.struck$/.test(path))).toEqual([]);
    expect(rowOf("entry", "amends[]. …")?.says).toContain("`struck`");
  });

  it("each say what they are for, and what is typed has an example, a choice, or fields within", () => {
    expect(rows.filter(({ says }) => says === "").map(({ kind, path }) => `${kind} ${path}`)).toEqual([]);
    const hasWithin = (kind: string, path: string): boolean =>
      rows.some((row) => row.kind === kind && (row.path.startsWith(`${path}.`) || row.path.startsWith(`${path}[].`)));
    const bare = rows.filter(
      ({ kind, path, example, form }) => example === "" && !/ \/ /.test(form) && !hasWithin(kind, path),
    );
    expect(bare.map(({ form }) => form).filter((form) => !/^only \S/.test(form))).toEqual(["as above"]);
  });

  it("have for an example what a builder types, and never a block that only its own fields tell", () => {
    expect(
      rows.filter(({ example }) => example.includes("[object")).map(({ kind, path }) => `${kind} ${path}`),
    ).toEqual([]);
    expect([rowOf("entry", "hours"), rowOf("entry", "hours[].time")].map((row) => row?.example)).toEqual(["", "2:45"]);
  });

  it("are needed where the form needs them", () => {
    expect([rowOf("aircraft", "name"), rowOf("aircraft", "visit")].map((row) => row?.needed)).toEqual([true, false]);
    expect(rowOf("entry", "batches[].resin.lot")?.form).toBe("the id of a lot");
    expect(rowOf("entry", "hours[].who")?.form).toBe("the id of a person, or a list of them");
    expect(rowOf("entry", "batches[].moisture")?.form).toBe("a percentage, a range or an estimate");
    expect(rowOf("adhesive", "temperature")?.form).toBe("limits of a temperature");
  });

  it("name the edition that shows them first, for all that a decision withholds by default", () => {
    const withheld = rows
      .filter(({ from }) => from !== undefined)
      .map(({ kind, path, from }) => `${kind} ${path} ${from}`);
    expect(withheld).toEqual([
      "aircraft people[].name inspector",
      "aircraft people[].authority inspector",
      "aircraft people[].may_return inspector",
      "adhesive sheet_file inspector",
      "finish sheet_file inspector",
      "lot supplier inspector",
      "lot certificate inspector",
      "lot cost archive",
      "entry inspections[].scan inspector",
      "entry attachments inspector",
      "entry attachments[].file inspector",
      "entry attachments[].title inspector",
      "entry attachments[].for inspector",
    ]);
    const heads = withheld.filter((line) => !line.includes("attachments[]"));
    expect(heads.length).toBe(withheldIn(recordShown));
  });
});

interface Decision {
  readonly fields?: object;
  readonly withheld?: string;
  readonly isShown?: { readonly withheld?: string };
}

/** How many decisions withhold by default, wherever they stand. */
function withheldIn(fields: object): number {
  return Object.values(fields as { readonly [key: string]: Decision }).reduce(
    (sum, decision) =>
      sum +
      ((decision.withheld ?? decision.isShown?.withheld) === undefined ? 0 : 1) +
      (decision.fields === undefined ? 0 : withheldIn(decision.fields)),
    0,
  );
}

describe("scarfline fields", () => {
  it("lists the kinds, and tells of one in a table", async () => {
    expect((await command(["fields"])).out).toMatchInlineSnapshot(`
      "aircraft   aircraft.md
      assembly   assemblies/ID.md
      adhesive   adhesives/ID.md
      finish     finishes/ID.md
      procedure  procedures/ID.md
      lot        lots/ID.md
      trial      trials/ID.md
      entry      entries/ID.md
      climate    climate/NAME.md
      hours      hours/NAME.md

      All fields of one of them: scarfline fields KIND
      "
    `);
    expect((await command(["fields", "lot"])).out).toMatchInlineSnapshot(`
      "lots/ID.md

      field              what it is                        such as
      ---------------------------------------------------------------------
      title *            words                             Spruce planks, 25 mm
          What was delivered.
      material *         resin / hardener / glue / powder / timber / plywood / part / finish / other
          What it is.
      adhesive           the id of an adhesive             epoxy-a
          The adhesive that resin, hardener, glue or powder belongs to.
      finish             the id of a finish                varnish-1
          The product that a lot of finish is of.
      number             words                             40217
          The maker's lot number.
      supplier           words                             A timber merchant
          Who delivered it. [inspector]
      received *         a day                             2024-11-02
          The day it came.
      expiry             a day                             2026-11-01
          The last day it may be used.
      certificate        a path                            s-2.pdf
          Its certificate, relative to this file. [inspector]
      amount             a mass or a volume or a length or an area  2 kg; 1 l; 24 m
          How much came.
      cost               an amount in a currency           84.50 EUR
          What it cost; for the archive alone, unless \`public_shows\` has costs.
          [archive]
      for                public / inspector / archive
          The narrowest edition that shows this; without it all do.
      species            words                             Sitka spruce
          The species of wood.
      thickness          a length                          3 mm
          Thickness of the sheet of plywood, or of the plank.
      moisture           a percentage                      11.2 %
          Moisture when it came.
      grain_slope        a slope                           1 : 18
          Slope of the grain: rise to length.
      rings              a count in each length            9 /in
          Growth rings.
      density            a density                         430 kg/m³
          Its density.
      asked              a block
          What the drawings ask of timber.
      asked.grain_slope  a slope                           1 : 18
          Slope of the grain: rise to length.
      asked.rings        limits of a count in each length  at least 6 /in
          Growth rings.
      asked.density      limits of a density               at least 360 kg/m³
          Its density.
      asked.moisture     limits of a percentage            8 % to 14 %
          Moisture when it came.

      * must be there, wherever that is of which it is a part; [] after a name: one
      for each in a list. [inspector] or [archive]: by default the first edition that
      shows it; all others are shown by every edition that shows the file or the block
      with \`for\`.
      "
    `);
  });

  it("refuses a kind that there is not, and names the nearest", async () => {
    const { code, err } = await command(["fields", "adhesiv"]);
    expect([code, err]).toEqual([
      2,
      `There is no kind of file adhesiv. Did you mean adhesive? There are ${KINDS.join(", ")}.\n`,
    ]);
  });

  it("wraps what it says to the terminal", async () => {
    const { out } = await command(["fields", "adhesive"], { columns: 60 });
    expect(out.split("\n").filter((line) => line.startsWith("    ") && line.length > 60)).toEqual([]);
  });
});
