/** Entries in which pieces are broken, and what the others raised is closed, accepted, recalled, rejected, looked at and amended. */
import type { Audience } from "../../src/facts/types.ts";
import { file, type Value } from "./files.ts";
import { inBoth, type Made, prose } from "./ground.ts";
import { pictureOf } from "./pictures.ts";
import { type Around, paper, type Session } from "./session.ts";
import { narrowest } from "./words.ts";

export async function later(around: Around, sessions: readonly Session[], hidden: Audience): Promise<void> {
  const [first, secret, last] = sessions;
  if (first === undefined || secret === undefined || last === undefined) throw new Error("three sessions are needed");
  const broken = [
    await breaking(around, "2025-03-20", "public", [first]),
    await breaking(around, "2025-03-21", hidden, [secret, last]),
  ] as const;
  const settled = [
    settling(around, "2025-03-22", "public", first),
    settling(around, "2025-03-23", hidden, secret),
  ] as const;
  amending(around, "2025-03-24", "public", [first, broken[0], settled[0]]);
  amending(around, "2025-03-25", hidden, [secret, broken[1], settled[1]]);
  linking(around, [secret, ...sessions], secret);
}

function idOf({ words }: Around, day: string, audience: Audience): string {
  return `${day}-${audience === "public" ? "open" : words.say(`entry of ${day}: id`, audience)}`;
}

/** An entry in which pieces were broken. */
interface Broken {
  readonly id: string;
  readonly pieces: readonly Made[];
}

async function breaking(around: Around, day: string, owner: Audience, sessions: readonly Session[]): Promise<Broken> {
  const { words, files, pick, people } = around;
  const where = `entry of ${day}`;
  const tests = [];
  const pieces = sessions.flatMap((one) => one.pieces);
  for (const piece of pieces) {
    const audience = narrowest(owner, piece.audience);
    const photo = `${words.say(`${where}: name of the picture of a piece`, audience, { told: false, same: words.isShown(audience) })}.jpg`;
    files[`photos/${photo}`] = await pictureOf(
      "jpg",
      { width: 96, height: 72, colour: piece.more === true ? "#907050" : pick("#907050", "#705030") },
      (place) =>
        words.say(`${where}: ${place} in the picture of a piece`, audience, {
          told: false,
          same: words.isShown(audience),
        }),
    );
    tests.push({
      piece: piece.id,
      at: "19:00",
      failure: piece.more === true ? "wood" : pick("wood", "glue line"),
      wood_failure: `${words.number(`${where}: share that broke in the wood`, audience, 83)} %`,
      load: `${words.number(`${where}: load`, audience, 310)} lbf`,
      photo: `../photos/${photo}`,
      witness: piece.more === true ? "builder" : pick(...inBoth(people)).id,
      judged_by: piece.more === true ? "builder" : pick(...inBoth(people)).id,
      note: words.say(`${where}: note of a test`, audience),
    });
  }
  const id = idOf(around, day, owner);
  files[`entries/${id}.md`] = file(
    { date: day, title: words.say(`${where}: title`, owner), assembly: "wing", for: owner, tests },
    prose(around, where, owner),
  );
  return { id, pieces };
}

/** An entry in which a lot was recalled, a batch rejected and a hold point looked at. */
interface Settled {
  readonly id: string;
  readonly lot: Made;
}

function settling(
  around: Around,
  day: string,
  owner: Audience,
  { batch, departures, items, fitted }: Session,
): Settled {
  const { words, files, pick, people, lots } = around;
  const where = `entry of ${day}`;
  const lot = (owner === "public" ? lots.get("hardener")?.[0] : lots.get("timber")?.[1]) ?? { id: "", audience: owner };
  const say = (what: string, audience: Audience = owner): string => words.say(`${where}: ${what}`, audience);
  const scan = words.say(`${where}: name of the scan's file`, owner, { kind: "attachments", told: false });
  files[`papers/${scan}.txt`] = `${words.say(`${where}: within the scan`, owner, { kind: "attachments" })}\n`;
  const open = inBoth(departures).filter((made) => !acceptedIn(files, made.id));
  const id = idOf(around, day, owner);
  files[`entries/${id}.md`] = file(
    {
      date: day,
      title: say("title"),
      assembly: "wing",
      for: owner,
      accepts: open
        .slice(0, 1)
        .map(({ id: departure, audience }) => ({
          departure,
          by: pick(...inBoth(people)).id,
          ...paper(words, where, narrowest(owner, audience)),
        })),
      open_items: { close: items.slice(1).map(({ id }) => id) },
      recalls: [
        {
          lot: lot.id,
          why: say("why it is recalled", narrowest(owner, lot.audience)),
          reference: say("reference of the recall", narrowest(owner, lot.audience)),
          note: say("note on a recall", narrowest(owner, lot.audience)),
        },
      ],
      rejects: [{ batch, why: say("why it is rejected"), note: say("note on a rejection") }],
      reworks: [
        { joints: [owner === "public" ? "W-1" : "W-2"], why: say("why it is reworked"), note: say("note on a rework") },
      ],
      fitted: [
        {
          where: fitted.where,
          lot: inBoth(lots.get("part")).at(0)?.id,
          replaces: fitted.lot,
          why: say("why a part was replaced"),
        },
      ],
      inspections: [
        {
          hold_point: "W-H",
          by: pick(...inBoth(people)).id,
          result: "not signed",
          reference: say("reference of the inspection"),
          scan: `../papers/${scan}.txt`,
          remarks: say("remarks of the inspector"),
        },
      ],
    },
    prose(around, where, owner),
  );
  return { id, lot };
}

function acceptedIn(files: Around["files"], departure: string): boolean {
  return Object.values(files).some(
    (text) =>
      typeof text === "string" &&
      text.includes(`"id":"${departure}"`) &&
      new RegExp(`"id":"${departure}"[^}]*"accepted_by"`).test(text),
  );
}

/** Every kind of fact is amended, that of hidden things too, so that what was first written and what it became both have words. */
function amending(
  around: Around,
  day: string,
  owner: Audience,
  [session, broken, settled]: readonly [Session, Broken, Settled],
): void {
  const { words, files } = around;
  const where = `entry of ${day}`;
  const why = (what: string): string => words.say(`${where}: why ${what} is amended`, owner);
  files[`entries/${idOf(around, day, owner)}.md`] = file(
    {
      date: day,
      title: words.say(`${where}: title`, owner),
      assembly: "wing",
      for: owner,
      amends: [
        { entry: session.id, why: why("a session"), ...amendedSession(around, where, owner, session) },
        {
          entry: broken.id,
          why: why("a day of breaking"),
          date: "2025-03-19",
          tests: broken.pieces.map((piece) => amendedTest(around, where, narrowest(owner, piece.audience), piece)),
        },
        { entry: settled.id, why: why("a day of settling"), ...amendedMatters(around, where, owner, session, settled) },
      ],
    },
    prose(around, where, owner),
  );
}

function amendedSession(
  { words, people, lots }: Around,
  where: string,
  owner: Audience,
  { batch, departures, items, pieces, measured, weighed }: Session,
): { readonly [key: string]: Value } {
  const number = (what: string, unit: string, whole: number, audience = owner): string =>
    `${words.number(`${where}: amended ${what}`, audience, whole)} ${unit}`;
  const say = (what: string, audience: Audience): string => words.say(`${where}: amended ${what}`, audience);
  return {
    cut: (lots.get("timber") ?? []).map(({ id: lot, audience }) => ({
      lot,
      amount: number("cut", "g", 13, narrowest(owner, audience)),
    })),
    remains: (lots.get("resin") ?? []).map(({ id: lot, audience }) => ({
      lot,
      amount: number("left", "g", 15, narrowest(owner, audience)),
    })),
    hours: inBoth(people).map(({ id: who }) => ({ who, task: "gluing", time: "2:30" })),
    batches: [
      {
        id: batch,
        resin: { mass: number("mass of resin", "g", 62) },
        shop: { surface: number("temperature of the surfaces", "°C", 18) },
        moisture: number("moisture", "%", 9),
        struck: ["closed"],
        timber: (lots.get("timber") ?? []).slice(0, 2).map((lot) => lot.id),
        pieces: pieces.map((piece) => ({ id: piece.id, width: number("width", "mm", 6, piece.audience) })),
      },
    ],
    measurements: [{ what: measured, found: number("what was found", "mm", 63) }],
    weighed: [{ part: weighed, mass: number("what it weighed", "kg", 4) }],
    scales: { what: say("what stood on scales", owner), left: number("left main wheel", "kg", 153) },
    departures: departures.map((made) => ({
      id: made.id,
      what: say("what departs", made.audience),
      why: say("reason of a departure", made.audience),
    })),
    open_items: { raise: items.map((made) => ({ id: made.id, what: say("open item", made.audience) })) },
  };
}

function amendedTest({ words }: Around, where: string, audience: Audience, { id }: Made): Value {
  return {
    piece: id,
    wood_failure: `${words.number(`${where}: amended share that broke in the wood`, audience, 84)} %`,
    load: `${words.number(`${where}: amended load`, audience, 311)} lbf`,
    note: words.say(`${where}: amended note of a test`, audience),
  };
}

function amendedMatters(
  { words }: Around,
  where: string,
  owner: Audience,
  { batch }: Session,
  { lot }: Settled,
): { readonly [key: string]: Value } {
  const say = (what: string, audience = owner): string => words.say(`${where}: amended ${what}`, audience);
  const ofLot = narrowest(owner, lot.audience);
  return {
    recalls: [{ lot: lot.id, why: say("why it is recalled", ofLot), reference: say("reference of the recall", ofLot) }],
    rejects: [{ batch, why: say("why it is rejected") }],
    reworks: [{ joints: [owner === "public" ? "W-1" : "W-2"], why: say("why it is reworked") }],
    inspections: [
      { hold_point: "W-H", reference: say("reference of the inspection"), remarks: say("remarks of the inspector") },
    ],
  };
}

/** Prose for everyone that names hidden things in each way that Markdown has. Its words are for everyone; what stands for a hidden picture is not. */
function linking(around: Around, sessions: readonly Session[], { id, hidden }: Session): void {
  const { words, files } = around;
  const open = (what: string): string => words.say(`links: ${what}`, "public");
  const audience = sessions.find((one) => one.id === id)?.audience ?? "archive";
  const picture = (what: string): string =>
    words.say(`links: ${what}`, audience, { told: !what.startsWith("title of a hidden picture") });
  const target = `../photos/${hidden}`;
  const links = [
    ...sessions.flatMap(({ secrets }) => secrets),
    { id: `${id}.md`, audience },
    { id: `../entries/${id}.md`, audience },
  ].map(
    (to) =>
      `[${open("words of a link to something hidden")}](<${to.id}> "${words.say("links: title of a link to something hidden", to.audience)}")`,
  );
  const collapsed = picture("alt by collapsed reference");
  files["entries/2025-03-26-links.md"] = file(
    { date: "2025-03-26", title: open("title"), assembly: "wing" },
    [
      ...links,
      `![${picture("alt of a hidden picture")}](${target} "${picture("title of a hidden picture")}")`,
      `![${picture("alt by reference")}][there] ![${collapsed}][] ![${picture("alt [in brackets] by reference")}][There ] [${open("words by reference")}][entry] [entry]`,
      `[![${picture("alt in a link")}](${target})](https://example.org/)`,
      `[there]: <${target}>\n  "${picture("title of a hidden picture, by reference")}"\n[entry]: ${id}.md (${picture("title of an entry by reference")})\n[${collapsed}]: ${target}`,
    ].join("\n\n"),
  );
}
