/** Entries in which pieces are broken, and what the others raised is closed, accepted, recalled, rejected, looked at and amended. */
import type { Audience } from "../../src/record/types.ts";
import { file } from "./files.ts";
import { inBoth, prose } from "./ground.ts";
import { pictureOf } from "./pictures.ts";
import type { Around, Session } from "./session.ts";
import { narrowest } from "./words.ts";

export async function later(around: Around, sessions: readonly Session[], hidden: Audience): Promise<void> {
  const [first, secret, last] = sessions;
  if (first === undefined || secret === undefined || last === undefined) throw new Error("three sessions are needed");
  await breaking(around, "2025-03-20", "public", [first]);
  await breaking(around, "2025-03-21", hidden, [secret, last]);
  settling(around, "2025-03-22", "public", first);
  settling(around, "2025-03-23", hidden, secret);
  amending(around, "2025-03-24", "public", first);
  amending(around, "2025-03-25", hidden, secret);
  linking(around, [secret, ...sessions], secret);
}

function idOf({ words }: Around, day: string, audience: Audience): string {
  return `${day}-${audience === "public" ? "open" : words.say(`entry of ${day}: id`, audience)}`;
}

async function breaking(around: Around, day: string, owner: Audience, sessions: readonly Session[]): Promise<void> {
  const { words, files, pick, people } = around;
  const where = `entry of ${day}`;
  const tests = [];
  for (const piece of sessions.flatMap(({ pieces }) => pieces)) {
    const audience = narrowest(owner, piece.audience);
    const photo = `${words.say(`${where}: name of the picture of a piece`, audience, { told: false, same: words.isShown(audience) })}.jpg`;
    files[`photos/${photo}`] = await pictureOf("jpg", { width: 96, height: 72, colour: piece.more === true ? "#907050" : pick("#907050", "#705030") }, (place) => words.say(`${where}: ${place} in the picture of a piece`, audience, { told: false, same: words.isShown(audience) }));
    tests.push({ piece: piece.id, at: "19:00", failure: piece.more === true ? "wood" : pick("wood", "glue line"), load: `${words.number(`${where}: load`, audience, 310)} lbf`, photo: `../photos/${photo}`, witness: piece.more === true ? "builder" : pick(...inBoth(people)).id, note: words.say(`${where}: note of a test`, audience) });
  }
  files[`entries/${idOf(around, day, owner)}.md`] = file({ date: day, title: words.say(`${where}: title`, owner), assembly: "wing", for: owner, tests }, prose(around, where, owner));
}

function settling(around: Around, day: string, owner: Audience, { batch, departures, items }: Session): void {
  const { words, files, pick, people, lots } = around;
  const where = `entry of ${day}`;
  const lot = (owner === "public" ? lots.get("hardener")?.[0] : lots.get("timber")?.[1]) ?? { id: "", audience: owner };
  const say = (what: string, audience: Audience = owner): string => words.say(`${where}: ${what}`, audience);
  const scan = words.say(`${where}: name of the scan's file`, owner, { kind: "attachments", told: false });
  files[`papers/${scan}.txt`] = `${words.say(`${where}: within the scan`, owner, { kind: "attachments" })}\n`;
  const open = inBoth(departures).filter((made) => !acceptedIn(files, made.id));
  files[`entries/${idOf(around, day, owner)}.md`] = file({
    date: day, title: say("title"), assembly: "wing", for: owner,
    accepts: open.slice(0, 1).map(({ id }) => ({ departure: id, by: pick(...inBoth(people)).id })), open_items: { close: items.slice(1).map(({ id }) => id) },
    recalls: [{ lot: lot.id, why: say("why it is recalled", narrowest(owner, lot.audience)), reference: say("reference of the recall", narrowest(owner, lot.audience)) }],
    rejects: [{ batch, why: say("why it is rejected") }], reworks: [{ joints: [owner === "public" ? "W-1" : "W-2"], why: say("why it is reworked") }],
    inspections: [{ hold_point: "W-H", by: pick(...inBoth(people)).id, result: "not signed", reference: say("reference of the inspection"), scan: `../papers/${scan}.txt`, remarks: say("remarks of the inspector") }],
  }, prose(around, where, owner));
}

function acceptedIn(files: Around["files"], departure: string): boolean {
  return Object.values(files).some((text) => typeof text === "string" && text.includes(`"id":"${departure}"`) && new RegExp(`"id":"${departure}"[^}]*"accepted_by"`).test(text));
}

/** Every kind of fact is amended, that of hidden things too. */
function amending(around: Around, day: string, owner: Audience, { id, batch, departures, items, pieces }: Session): void {
  const { words, files, people, lots } = around;
  const where = `entry of ${day}`;
  files[`entries/${idOf(around, day, owner)}.md`] = file({
    date: day, title: words.say(`${where}: title`, owner), assembly: "wing", for: owner,
    amends: [{
      entry: id, why: words.say(`${where}: why it is amended`, owner),
      hours: inBoth(people).map(({ id: who }) => ({ who, task: "gluing", time: "2:30" })),
      batches: [{ id: batch, moisture: `${words.number(`${where}: amended moisture`, owner, 9)} %`, timber: (lots.get("timber") ?? []).slice(0, 2).map((lot) => lot.id), pieces: pieces.map((piece) => ({ id: piece.id, width: `${words.number(`${where}: amended width`, piece.audience, 6)} mm` })) }],
      departures: departures.map((made) => ({ id: made.id, why: words.say(`${where}: amended reason of a departure`, made.audience) })),
      open_items: { raise: items.map((made) => ({ id: made.id, what: words.say(`${where}: amended open item`, made.audience) })) },
    }],
  }, prose(around, where, owner));
}

/** Prose for everyone that names hidden things in each way that Markdown has. Its words are for everyone; what stands for a hidden picture is not. */
function linking(around: Around, sessions: readonly Session[], { id, hidden }: Session): void {
  const { words, files } = around;
  const open = (what: string): string => words.say(`links: ${what}`, "public");
  const audience = sessions.find((one) => one.id === id)?.audience ?? "archive";
  const picture = (what: string): string => words.say(`links: ${what}`, audience, { told: !what.startsWith("title of a hidden picture") });
  const target = `../photos/${hidden}`;
  const links = [...sessions.flatMap(({ secrets }) => secrets), { id: `${id}.md`, audience }, { id: `../entries/${id}.md`, audience }].map((to) => `[${open("words of a link to something hidden")}](<${to.id}> "${words.say("links: title of a link to something hidden", to.audience)}")`);
  const collapsed = picture("alt by collapsed reference");
  files["entries/2025-03-26-links.md"] = file({ date: "2025-03-26", title: open("title"), assembly: "wing" }, [
    ...links, `![${picture("alt of a hidden picture")}](${target} "${picture("title of a hidden picture")}")`,
    `![${picture("alt by reference")}][there] ![${collapsed}][] ![${picture("alt [in brackets] by reference")}][There ] [${open("words by reference")}][entry] [entry]`,
    `[![${picture("alt in a link")}](${target})](https://example.org/)`,
    `[there]: <${target}>\n  "${picture("title of a hidden picture, by reference")}"\n[entry]: ${id}.md (${picture("title of an entry by reference")})\n[${collapsed}]: ${target}`,
  ].join("\n\n"));
}
