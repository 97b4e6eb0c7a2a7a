import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { takenAt } from "../../../src/desk/take/taken-at.ts";
import { command } from "../../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../../publish/scratch.ts";
import { WORKSHOP } from "../workshop.ts";

const scratch = scratchFolders();

const session = (revision: number, mass = "12.0 g", more = ""): string => `---
date: 2021-03-20
assembly: rudder
title: Trailing rib
batches:
  - id: B-002
    adhesive: two-part
    mixed: "10:05"
    resin: { lot: R-1, mass: ${mass} }
    hardener: { lot: H-1, mass: 5.3 g }
    joints: [RD-J02]
${more}# Written at the bench: session k3f9, revision ${revision}
---
`;
const PATH = "entries/2021-03-20-trailing-rib.md";
const NAME = "2021-03-20-trailing-rib.md";

async function photograph(noted: { readonly at?: string; readonly offset?: string }): Promise<Buffer> {
  const shade = {
    create: {
      width: 8,
      height: 8,
      channels: 3 as const,
      background: { r: Math.floor(Math.random() * 255), g: 9, b: 9 },
    },
  };
  const { at, offset } = noted;
  const IFD2 = {
    ...(at !== undefined && { DateTimeOriginal: at }),
    ...(offset !== undefined && { OffsetTimeOriginal: offset }),
  };
  return sharp(shade)
    .withExif({ IFD0: { Copyright: "me" }, IFD2 })
    .jpeg()
    .toBuffer();
}

function workshop(files: { readonly [path: string]: string | Buffer }): { record: string; given: string } {
  const [record, given] = [scratch(), scratch()];
  writeAll(record, WORKSHOP);
  writeAll(given, files);
  return { record, given };
}

const take = (record: string, ...words: readonly string[]) => command(["take", "--content", record, ...words]);

describe("An entry from the bench", () => {
  it("is kept as it is, once, whatever its name says of how often it was downloaded", async () => {
    const { record, given } = workshop({ [NAME]: session(1), "2021-03-20-trailing-rib (1).md": session(1) });
    const first = await take(record, join(given, NAME));
    expect(first).toEqual({ code: 0, out: `Took ${join(given, NAME)}\n  ${PATH}\n`, err: "" });
    expect(readFileSync(join(record, PATH), "utf8")).toBe(session(1));
    expect(await command(["check", record])).toMatchObject({ code: 0 });
    const before = contentOf(record);
    const again = await take(record, given);
    expect([again.code, again.out.match(/Is there already/g)?.length]).toEqual([0, 2]);
    expect(contentOf(record)).toEqual(before);
  });

  it("in a later revision shows how it differs, and the record stays as it was", async () => {
    const { record, given } = workshop({ "later.md": session(2, "12.5 g") });
    writeAll(record, { [PATH]: session(1) });
    const before = contentOf(record);
    const { code, err } = await take(record, join(given, "later.md"));
    expect(code).toBe(1);
    expect(err).toContain(
      `${PATH} is of the same session, in revision 1; this is revision 2, a later one, and differs`,
    );
    expect(err).toContain("    -    resin: { lot: R-1, mass: 12.0 g }\n    +    resin: { lot: R-1, mass: 12.5 g }\n");
    expect(contentOf(record)).toEqual(before);
  });

  it("whose ids another entry has is told with both places, and is not taken", async () => {
    const clash = session(1).replace("B-002", "B-001").replace("k3f9", "zzzz");
    const { record, given } = workshop({ [NAME]: clash });
    const before = contentOf(record);
    const { code, err } = await take(record, given);
    expect(code).toBe(1);
    expect(err).toContain(`${PATH}:6:9  the id B-001 is already that of a batch`);
    expect(err).toContain("look which carry it");
    expect(err).toContain("entries/2021-03-14-glue.md");
    expect(contentOf(record)).toEqual(before);
  });

  it("is never written over another of its name, and what is no entry is left", async () => {
    const { record, given } = workshop({
      [NAME]: session(1),
      "letter.md": "Dear all",
      "lot.md": WORKSHOP["lots/R-1.md"],
    });
    writeAll(record, { [PATH]: "---\ndate: 2021-03-20\ntitle: Another\n---\n" });
    const before = contentOf(record);
    const { code, err } = await take(record, given);
    expect(code).toBe(1);
    expect(err).toContain(`${PATH} is another entry, and is left as it is`);
    expect(err.match(/^Left /gmu)?.length).toBe(3);
    expect(contentOf(record)).toEqual(before);
  });

  it("brings the photographs that it names and that were given with it", async () => {
    const picture = await photograph({});
    const more = 'photos:\n  - { file: ../photos/rib-1.jpg, alt: "The rib" }\n';
    const { record, given } = workshop({ [NAME]: session(1, "12.0 g", more), "rib-1.jpg": picture });
    const alone = await take(record, join(given, NAME));
    expect([alone.code, alone.err]).toEqual([1, expect.stringContaining("there is no such file in the record")]);
    const { code, out } = await take(record, given);
    expect([code, out]).toEqual([
      0,
      `Took ${join(given, NAME)}\n  ${PATH}\nTook ${join(given, "rib-1.jpg")}\n  photos/rib-1.jpg\n`,
    ]);
    expect(readFileSync(join(record, "photos/rib-1.jpg"))).toEqual(picture);
    expect(await command(["check", record])).toMatchObject({ code: 0 });
  });
});

describe("A photograph", () => {
  it("is placed by the camera's own text, in the record's zone, wherever this machine stands", async () => {
    const said = async (at: string, offset?: string) =>
      takenAt(await photograph(offset === undefined ? { at } : { at, offset }), "Europe/Lisbon");
    expect(await said("2021:03:14 23:50:10")).toEqual({ day: "2021-03-14", time: "23:50", hasOffset: false });
    expect(await said("2021:03:14 23:50:10", "-05:00")).toEqual({ day: "2021-03-15", time: "04:50", hasOffset: true });
    expect(await said("0000:00:00 00:00:00")).toBeUndefined();
    expect(await takenAt(Buffer.from("no picture"), "Europe/Lisbon")).toBeUndefined();
  });

  it("goes beside the entry that the builder says, and no entry is changed", async () => {
    const picture = await photograph({ at: "2021:03:14 10:30:00" });
    const { record, given } = workshop({ "IMG_0001.JPG": picture, "clip.mov": "x" });
    const told = await take(record, given);
    expect([told.code, told.err]).toEqual([2, expect.stringContaining('--photos-of "2021-03-14=<entry>"')]);
    expect(told.err).toContain("Taken on 14 March 2021 at 10:30, by a clock taken for the workshop's: IMG_0001.JPG");
    const before = contentOf(record);
    const { code, out, err } = await take(record, given, "--photos-of", "2021-03-14=2021-03-14-glue");
    expect([code, err]).toEqual([1, `Left ${join(given, "clip.mov")}\n  Nothing is known of such a file.\n`]);
    expect(out).toContain("photos/2021-03-14-glue-1.jpg");
    expect(contentOf(record)).toEqual(
      new Map([...before, ["photos/2021-03-14-glue-1.jpg", picture.toString("latin1")]].sort() as never),
    );
    const again = await take(record, join(given, "IMG_0001.JPG"));
    expect([again.code, again.out]).toEqual([0, expect.stringContaining("Is there already")]);
  });
});

it("An entry whose photograph would lie where the record looks for none is not taken, and nothing is written", async () => {
  const photo = await photograph({});
  for (const folder of ["../.git", "../seals", "../schemas", "..", "../entries/../.hidden", "../../elsewhere"]) {
    const naming = session(1, "12.0 g", `photos:\n  - { file: ${folder}/IMG_1.jpg, alt: The rib }\n`);
    const { record, given } = workshop({ [NAME]: naming, "IMG_1.jpg": photo });
    const before = contentOf(record);
    const { code } = await take(record, given, "--photos-of", "unknown=leave them out");
    expect([folder, code]).toEqual([folder, 1]);
    expect(contentOf(record), folder).toEqual(before);
  }
});

describe("Photographs whose names or bytes are alike", () => {
  const naming = session(1, "12.0 g", "photos:\n  - { file: ../photos/IMG_1.jpg, alt: The rib }\n");

  it("go by their own name before that of a second download", async () => {
    const [own, other] = [
      await photograph({ at: "2021:03:20 10:00:00" }),
      await photograph({ at: "2021:03:20 11:00:00" }),
    ];
    const { record, given } = workshop({ [NAME]: naming, "IMG_1 (1).jpg": other, "IMG_1.jpg": own });
    await take(record, given, "--photos-of", "2021-03-20=leave them out");
    expect(readFileSync(join(record, "photos/IMG_1.jpg")).equals(own)).toBe(true);
  });

  it("stand for nothing where two downloads of one name differ", async () => {
    const [one, other] = [
      await photograph({ at: "2021:03:20 10:00:00" }),
      await photograph({ at: "2021:03:20 11:00:00" }),
    ];
    const { record, given } = workshop({ [NAME]: naming, "IMG_1 (1).jpg": one, "IMG_1 (2).jpg": other });
    await take(record, given, "--photos-of", "2021-03-20=leave them out");
    expect([...contentOf(record).keys()].filter((path) => path.startsWith("photos/"))).toEqual([]);
  });

  it("come in once where one take has them twice", async () => {
    const photo = await photograph({ at: "2021:03:14 10:00:00" });
    const { record, given } = workshop({ "a.jpg": photo, "b.jpg": photo });
    const { code, out } = await take(record, given, "--photos-of", "2021-03-14=2021-03-14-glue");
    expect([code, out.match(/^(?:Took|Is there already)/gmu)]).toEqual([0, ["Took", "Is there already"]]);
    expect([...contentOf(record).keys()].filter((path) => path.startsWith("photos/"))).toEqual([
      "photos/2021-03-14-glue-1.jpg",
    ]);
  });
});

it("A folder of an entry, a photograph and a logger's file comes in as a whole, and a file that is not there takes nothing", async () => {
  const { record, given } = workshop({
    [`bench/${NAME}`]: session(1),
    "phone/a.jpg": await photograph({ at: "2021:03:20 11:00:00" }),
    "shop.csv": "Time (UTC),Temp (°C)\n2021-03-20 10:00,20\n2021-03-20 11:00,21\n",
  });
  const { code, err } = await take(record, given, "--photos-of", "2021-03-20=2021-03-20-trailing-rib");
  expect([code, err]).toEqual([0, ""]);
  const paths = [...contentOf(record).keys()];
  expect(paths).toEqual(expect.arrayContaining([PATH, "photos/2021-03-20-trailing-rib-1.jpg", "climate/shop.csv"]));
  expect(await command(["check", record])).toMatchObject({ code: 0 });
  const missing = await take(record, given, join(given, "gone.md"));
  expect([missing.code, missing.err]).toEqual([2, `There is no file ${join(given, "gone.md")}. Nothing was taken.\n`]);
});
