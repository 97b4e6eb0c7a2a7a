/** A whole record with a word in every place that a builder can type in or photograph into. */
import { createHash } from "node:crypto";
import { type Audience, type Withheld, WITHHELD_KINDS } from "../../src/facts/values.ts";
import { file } from "./files.ts";
import { climate, earlierHours, type Files, type Ground, lots, type Made, prose, trials } from "./ground.ts";
import { later } from "./later.ts";
import { pictureOf } from "./pictures.ts";
import { type Around, session } from "./session.ts";
import { type Word, Words } from "./words.ts";

export interface Planted {
  readonly files: Files;
  readonly words: readonly Word[];
  readonly publicShows: readonly Withheld[];
}

/** `salt` and `extra` change what is hidden and leave everything else as it is. */
export async function plantedRecord(
  pick: Ground["pick"],
  { salt = "", extra = false, edition = "public" as Audience } = {},
): Promise<Planted> {
  const publicShows = WITHHELD_KINDS.filter(() => pick(false, false, true));
  const turn = pick(0, 1, 2, 3, 4, 5, 6) + 7 * pick(0, 1, 2);
  const ground: Ground = { words: new Words(salt, publicShows, edition), files: {}, pick, turn, extra };
  const { words, files } = ground;
  const people = await aircraft(ground, publicShows);
  await parts(ground);
  climate(ground);
  earlierHours(ground, people);
  const around: Around = { ...ground, people, lots: lots(ground), trials: trials(ground) };
  const hidden = pick<Audience>("inspector", "archive");
  const sessions = [
    await session(around, "2025-03-01", "public", "W-1"),
    await session(around, "2025-03-02", hidden, "W-2"),
    await session(around, "2025-03-03", "public", "W-3"),
  ];
  if (extra)
    files[`entries/2025-03-04-${words.say("one entry more: id", "archive")}.md`] = file({
      date: "2025-03-04",
      title: words.say("one entry more: title", "archive"),
      assembly: "wing",
      for: "archive",
      hours: [{ who: "builder", task: "gluing", time: "9:17" }],
    });
  await later(around, sessions, hidden);
  seals(ground);
  return { files, words: words.all, publicShows };
}

/** A seal of everything: pages name the list of seals by its digest, and nothing in it by itself. */
function seals({ words, files }: Ground): void {
  const list = `${"0".repeat(64)}  entries/2025-03-02-${words.say("seal: file in its manifest", "archive", { told: false })}.md\n`;
  files["seals/2025-04-30.sha256"] = list;
  files["seals.txt"] =
    `2025-04-30 ${"5ea1".repeat(16)} ${createHash("sha256").digest("hex")} 61 seals/2025-04-30.sha256\n`;
}

async function aircraft(ground: Ground, publicShows: readonly Withheld[]): Promise<Made[]> {
  const { words, files, extra } = ground;
  const people = (["public", "public", "inspector", "archive", ...(extra ? ["archive" as const] : [])] as const).map(
    (audience, at) => {
      const where = `person ${at}`;
      const id = at === 0 ? "builder" : words.say(`${where}: id`, audience, { kind: "names", optional: true });
      return {
        id,
        audience,
        name: words.say(`${where}: full name`, audience, { kind: "names" }),
        public: words.say(`${where}: public name`, audience, { optional: true }),
        authority: words.say(`${where}: authority`, audience, { kind: "names", optional: true }),
        paper: words.say(`${where}: paper by which the aircraft is returned`, audience, {
          kind: "names",
          optional: true,
        }),
        more: at > 3,
      };
    },
  );
  const photo = words.say("aircraft: name of the picture's file", "public", { told: false, same: true });
  files[`photos/${photo}.jpg`] = await pictureOf("jpg", { width: 96, height: 72, colour: "#305070" }, (place) =>
    words.say(`aircraft: ${place}`, "public", { told: false, same: true }),
  );
  files["aircraft.md"] = file(
    {
      name: words.say("aircraft: name", "public"),
      type: words.say("aircraft: type", "public"),
      units: "metric",
      address: "https://example.org/",
      time_zone: "Europe/Lisbon",
      start: "2025-01-01",
      people: people.map(({ id, name, public: open, audience, authority, paper: returns }, at) => ({
        id,
        name,
        public: open,
        role: at === 1 ? "inspector" : "builder",
        for: audience,
        authority,
        may_return: returns,
      })),
      tasks: ["gluing"],
      public_shows: publicShows,
      visit: words.say("aircraft: visit", "public"),
      datum: words.say("aircraft: datum", "public"),
      design_weight: `${words.number("aircraft: design weight", "public", 290)} kg`,
      photo: {
        file: `photos/${photo}.jpg`,
        alt: words.say("aircraft: alt", "public"),
        caption: words.say("aircraft: caption", "public"),
      },
    },
    prose(ground, "aircraft", "public"),
  );
  return people;
}

/** Assembly, adhesive and procedure: they are for everyone, but for passages in them and the sheet. */
async function parts(ground: Ground): Promise<void> {
  const { words, files } = ground;
  const say = (where: string): string => words.say(where, "public");
  files["drawings/wing.svg"] = await pictureOf("svg", { width: 200, height: 100, colour: "#204060" }, (place) =>
    words.say(`drawing: ${place}`, "public", { told: false, same: true }),
  );
  files["assemblies/wing.md"] = file(
    {
      title: say("assembly: title"),
      drawing: { file: "../drawings/wing.svg", alt: say("assembly: alt of the drawing") },
      joints: ["W-1", "W-2", "W-3"].map((id, at) => ({
        id,
        title: say(`joint ${id}: title`),
        at: { x: `${at + 2}0 %`, y: "50 %" },
        drawing: say(`joint ${id}: sheet of the drawing`),
      })),
      hold_points: [{ id: "W-H", title: say("hold point: title"), kind: "close-up" }],
      coats: [{ where: say("where a coat is planned"), finish: "clear", coats: "2", before: "flight" }],
      tasks: [
        { id: say("task: id"), title: say("task: title"), credit: { maker: "0.3", fabrication: "0.7" } },
        { id: say("task that does not apply: id"), title: say("task that does not apply: title"), applicable: "no" },
      ],
    },
    prose(ground, "assembly", "public"),
  );
  const sheet = words.say("adhesive: name of the sheet's file", "public", { kind: "attachments", told: false });
  files[`papers/${sheet}.txt`] = `${words.say("adhesive: within the sheet", "public", { kind: "attachments" })}\n`;
  files["adhesives/glue.md"] = file(
    {
      title: say("adhesive: title"),
      sheet: say("adhesive: name of the sheet"),
      sheet_file: `../papers/${sheet}.txt`,
      by_mass: { ratio: "100 : 50", tolerance: "±5 %" },
      working_life: [{ temperature: "25 °C", mass: "150 g", time: "40 min" }],
      temperature: "15 °C to 30 °C",
      cure: [{ temperature: "20 °C", time: "7 d" }],
      wood_moisture: "8 % to 12 %",
    },
    prose(ground, "adhesive", "public"),
  );
  for (const [id, kind] of [
    ["glue-one", "one-part"],
    ["glue-powder", "powder-and-water"],
  ] as const)
    files[`adhesives/${id}.md`] = file({
      title: say(`${kind}: title`),
      kind,
      sheet: say(`${kind}: name of the sheet`),
    });
  const finishSheet = words.say("finish: name of the sheet's file", "public", { kind: "attachments", told: false });
  files[`papers/${finishSheet}.txt`] = `${words.say("finish: within the sheet", "public", { kind: "attachments" })}\n`;
  files["finishes/clear.md"] = file(
    {
      title: say("finish: title"),
      kind: "varnish",
      sheet: say("finish: name of the sheet"),
      sheet_file: `../papers/${finishSheet}.txt`,
      temperature: "15 °C to 30 °C",
      humidity: "at most 70 %",
      coats: "2",
      recoat: { after: "1 h", within: "3 d" },
      dry: "1 d",
    },
    prose(ground, "finish", "public"),
  );
  files["procedures/std.md"] = file({
    title: say("procedure of glue-ups: title"),
    form: "glue-up",
    method: { surfaces: say("procedure of glue-ups: surfaces"), faces: "both" },
  });
  files["procedures/legs.md"] = file(
    {
      title: say("procedure: title"),
      form: "three-leg",
      overlap: "2 to 3 thicknesses",
      pieces: "2",
      least_cure: { time: "3 d", temperature: "18 °C" },
      wood_failure: "80 %",
    },
    prose(ground, "procedure", "public"),
  );
}
