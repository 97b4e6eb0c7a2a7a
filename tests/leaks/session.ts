/** An entry with something of everything that an entry can hold, each text a word of its own. */
import type { Audience } from "../../src/facts/types.ts";
import { clipOf } from "./clips.ts";
import { file, some, type Value } from "./files.ts";
import { coats, glueUp, warmth } from "./glue-up.ts";
import { attachments, type Ground, inBoth, type Made, type MadeTrial, partFitted, prose, WHO } from "./ground.ts";
import { type Form, pictureOf } from "./pictures.ts";
import { narrowest, type Words } from "./words.ts";

export interface Around extends Ground {
  readonly lots: ReadonlyMap<string, readonly Made[]>;
  readonly trials: readonly MadeTrial[];
  readonly people: readonly Made[];
}

export interface Session extends Made {
  readonly batch: string;
  readonly pieces: readonly Made[];
  readonly departures: readonly Made[];
  readonly items: readonly Made[];
  /** The words by which its first measurement and weighing are found. */
  readonly measured: string;
  readonly weighed: string;
  readonly fitted: { readonly where: string; readonly lot: string };
  /** A picture that is hidden. */
  readonly hidden: string;
  /** Everything in it that has an id and is not for everyone. */
  readonly secrets: readonly Made[];
}

const FORMS: readonly Form[] = ["jpg", "png", "webp", "tiff", "gif", "avif", "svg"];

export async function session(around: Around, day: string, audience: Audience, joint: string): Promise<Session> {
  const { words, files, pick, lots, people } = around;
  const where = `entry of ${day}`;
  const id = `${day}-${audience === "public" ? "open" : words.say(`${where}: id`, audience)}`;
  const batch = audience === "public" ? `B-${day.slice(8)}` : words.say(`${where}: id of the batch`, audience);
  const pieces = piecesOf(around, where, batch, audience);
  const departures = marked(around, `${where}: departure`, audience);
  const items = marked(around, `${where}: open item`, audience);
  const [photos, clips] = [await photosOf(around, where, audience), await clipsOf(around, where, audience)];
  const number = (what: string, unit: string, whole = 61): string =>
    `${words.number(`${where}: ${what}`, audience, whole)} ${unit}`;
  const say = (what: string): string => words.say(`${where}: ${what}`, audience);
  const lot = (kind: string): string => pick(...inBoth(lots.get(kind))).id;
  const kept = { timber: lot("timber"), resin: lot("resin"), hardener: lot("hardener") };
  const [measured, weighed] = [say("what was measured"), say("part that was weighed")];
  const fitted = partFitted(around, where, audience);
  const hidden = photos.find((photo) => photo.audience !== "public")?.file ?? "";
  files[`entries/${id}.md`] = file(
    {
      date: day,
      title: say("title"),
      assembly: "wing",
      for: audience,
      cut: cutsTyped(around, where, audience),
      remains: remainsTyped(around, where, audience),
      hours: hoursTyped(people, say),
      ...(audience === "public" ? { in_use: inUse(kept, number) } : {}),
      batches: [
        batchTyped({ batch, joint, audience, pieces, kept }, say, number, (piece) =>
          pieceTyped(words, where, piece, lot),
        ),
        {
          id: `${batch}-w`,
          adhesive: "glue",
          resin: { lot: kept.resin },
          hardener: { lot: kept.hardener },
          discarded: say("why a cup was thrown away"),
        },
        ...otherGlue(batch, lot, number),
      ],
      stages: [{ joint, stage: "1 of 2", batches: [batch], complete: "yes", note: say("note on a stage") }],
      ...warmth(day, say, number, { joint, pieces: pieces.map(({ id: piece }) => piece) }),
      measurements: [
        {
          what: measured,
          drawing: "62.0 mm",
          tolerance: "±5.0 mm",
          found: number("what was found", "mm"),
          departure: pick(...inBoth(departures)).id,
          note: say("note on a measure"),
        },
        ...sides(say, number),
      ],
      fitted: [fitted],
      coats: coats(lot("finish"), pick(...inBoth(departures)).id, say, number),
      ...weights(weighed, say, number),
      departures: departures.map((made) => ({
        id: made.id,
        what: words.say(`${where}: what departs`, made.audience),
        why: words.say(`${where}: why it departs`, made.audience),
        note: words.say(`${where}: note on a departure`, made.audience),
        ...(made.more !== true && pick(true, false)
          ? { accepted_by: pick(...inBoth(people)).id, ...paper(words, where, made.audience) }
          : {}),
        for: made.own,
      })),
      open_items: {
        raise: items.map((made) => ({
          id: made.id,
          what: words.say(`${where}: what is left open`, made.audience),
          note: words.say(`${where}: note on an open item`, made.audience),
          before: made.more === true ? "W-H" : pick("W-H", "close-up"),
          for: made.own,
        })),
      },
      photos: photos.map(({ file: name, own, audience: seen }) => ({
        file: `../photos/${name}`,
        alt: words.say(`${where}: alt of a picture`, seen),
        caption: words.say(`${where}: caption`, seen),
        for: own,
      })),
      clips: clips.map(({ file: name, poster, own, audience: seen }) => ({
        file: `../clips/${name}`,
        poster: `../photos/${poster}`,
        alt: words.say(`${where}: alt of a clip`, seen),
        caption: words.say(`${where}: caption of a clip`, seen),
        for: own,
      })),
      attachments: attachments(around, where, audience),
    },
    prose(around, where, audience),
  );
  const secrets = inBoth<Made>([...pieces, ...departures, ...items, ...clips]).filter(
    (made) => made.audience !== "public",
  );
  return {
    id,
    audience,
    batch,
    pieces,
    departures,
    items,
    measured,
    weighed,
    fitted,
    hidden,
    secrets: [
      ...secrets,
      ...(audience === "public"
        ? []
        : [
            { id, audience },
            { id: batch, audience },
          ]),
    ],
  };
}

interface Mixed {
  readonly batch: string;
  readonly joint: string;
  readonly audience: Audience;
  readonly pieces: readonly PieceMade[];
  readonly kept: { readonly timber: string; readonly resin: string; readonly hardener: string };
}

/** In an entry that all may read it says nothing of what is in use. */
function batchTyped(
  { batch, joint, audience, pieces, kept }: Mixed,
  say: Say,
  number: Measure,
  typed: (piece: PieceMade) => Value,
): Value {
  return {
    id: batch,
    ...some(audience !== "public", { adhesive: "glue", scale: "0.1 g" }),
    mixed: "14:03",
    closed: "14:21",
    resin: { ...some(audience !== "public", { lot: kept.resin }), mass: number("mass of resin", "g") },
    hardener: { ...some(audience !== "public", { lot: kept.hardener }), mass: number("mass of hardener", "g", 31) },
    shop: {
      temperature: number("temperature of the air", "°C", 20),
      humidity: number("humidity of the air", "%", 50),
      surface: number("temperature of the surfaces", "°C", 19),
      wood: number("temperature of the wood", "°C", 19),
    },
    moisture: number("moisture of the wood", "%", 10),
    waste: number("what was left over", "g", 3),
    note: number("note on a batch", "g", 3),
    timber: [kept.timber],
    glue_up: glueUp(kept.timber, say, number),
    joints: [joint],
    pieces: pieces.map(typed),
  };
}

/** What is in use is said where everyone reads it; its lots may be hidden. */
const inUse = (lots: { readonly resin: string; readonly hardener: string }, number: Measure): Value => ({
  adhesive: "glue",
  resin: lots.resin,
  hardener: lots.hardener,
  scale: "0.1 g",
  pieces: [
    {
      procedure: "legs",
      thickness: number("thickness of the stock", "mm", 6),
      width: number("width of the stock", "mm", 7),
      overlap: number("overlap of the jig", "mm", 15),
    },
  ],
});

/** Batches of adhesives that are not of two parts. */
function otherGlue(
  batch: string,
  lot: (kind: string) => string,
  number: (what: string, unit: string, whole?: number) => string,
): Value[] {
  return [
    { id: `${batch}-g`, adhesive: "glue-one", glue: { lot: lot("glue"), mass: number("mass of glue", "g", 23) } },
    {
      id: `${batch}-p`,
      adhesive: "glue-powder",
      powder: { lot: lot("powder"), mass: number("mass of powder", "g", 24) },
      water: { mass: number("mass of water", "g", 12) },
    },
  ];
}

type PieceMade = Made & { readonly trial?: MadeTrial };

const pieceTyped = (words: Words, where: string, piece: PieceMade, lot: (kind: string) => string): Value => ({
  id: piece.id,
  procedure: "legs",
  ...some(piece.more !== true, { lot: piece.more === true ? "" : lot("timber") }),
  thickness: `${words.number(`${where}: thickness of a piece`, piece.audience, 6)} mm`,
  width: `${words.number(`${where}: width of a piece`, piece.audience, 7)} mm`,
  overlap: `${words.number(`${where}: overlap of a piece`, piece.audience, 15)} mm`,
  note: words.say(`${where}: note on a piece`, piece.audience),
  ...(piece.trial === undefined ? {} : { trial: piece.trial.id, preparation: piece.trial.preparation }),
});

/** On what paper something was accepted, and on what condition; told where a finding rests on it. */
export const paper = (words: Words, where: string, audience: Audience): { reference: string; condition: string } => ({
  reference: words.say(`${where}: paper of an acceptance`, audience, { optional: true }),
  condition: words.say(`${where}: condition of an acceptance`, audience, { optional: true }),
});

type Say = (what: string) => string;
type Measure = (what: string, unit: string, whole?: number) => string;

/** Both sides of a pair of its own, of which one is held against a limit. */
function sides(say: Say, number: Measure): Value[] {
  const pair = say("word of a pair");
  return [
    {
      what: say("what the left side is"),
      drawing: `at most ${number("limit of the drawing", "mm", 70)}`,
      found: number("what the left side measures", "mm"),
      pair,
      side: "left",
    },
    {
      what: say("what the right side is"),
      found: number("what the right side measures", "mm"),
      pair,
      side: "right",
      pair_tolerance: `±${number("how far sides may differ", "mm", 3)}`,
    },
  ];
}

function weights(part: string, say: Say, number: Measure): { readonly [key: string]: Value } {
  return {
    weighed: [
      { part, mass: number("what it weighed", "kg", 2), note: say("note on a weight") },
      {
        part: say("part that holds it"),
        mass: number("what that weighed", "kg", 3),
        arm: number("where it weighs", "mm", 400),
        instead_of: [part],
      },
    ],
    scales: {
      what: say("what stood on scales"),
      left: number("left main wheel", "kg", 151),
      right: number("right main wheel", "kg", 152),
      tail: number("tail wheel", "kg", 24),
      mains: number("where the main wheels stand", "mm", 320),
      wheelbase: number("from there to the tail wheel", "mm", 4180),
    },
  };
}

interface Marked extends Made {
  readonly own: Audience;
}

function marked({ words, extra }: Ground, where: string, owner: Audience): Marked[] {
  return [...WHO, ...(extra ? ["archive" as const] : [])].map((own, at) => ({
    own,
    more: at > 2,
    audience: narrowest(own, owner),
    id: words.say(`${where} ${at}: id`, narrowest(own, owner)),
  }));
}

/** A shown batch says that it rests on something hidden once a piece of it is hidden, so no first such piece is added to one. */
function piecesOf({ words, trials }: Around, where: string, batch: string, owner: Audience): PieceMade[] {
  const told = trials.filter((trial) => trial.more !== true || !words.isShown(owner));
  return [undefined, undefined, ...told].map((trial, at) => {
    const audience = narrowest(owner, trial?.audience ?? "public");
    return {
      id: `${batch}/${words.say(`${where}: id of piece ${at}`, audience)}`,
      audience,
      more: trial?.more === true,
      ...(trial === undefined ? {} : { trial }),
    };
  });
}

/** A picture for each audience, in any of the forms, hidden ones of a size that no other has. */
async function photosOf(
  { words, files, pick, extra }: Ground,
  where: string,
  owner: Audience,
): Promise<(Marked & { file: string })[]> {
  const made: (Marked & { file: string })[] = [];
  for (const [at, own] of [...WHO, ...(extra ? ["archive" as const] : [])].entries()) {
    const more = at > 2;
    const audience = narrowest(own, owner);
    const form = more ? "jpg" : pick(...FORMS);
    const name = `${words.say(`${where}: name of a picture's file`, audience, { told: false, same: words.isShown(audience) })}.${form}`;
    const shot =
      audience === "public"
        ? { width: 96, height: 72, colour: "#a08060" }
        : {
            width: words.width(`${where}: width of a hidden picture`, audience),
            height: 17,
            colour: more ? "#204060" : pick("#204060", "#406020"),
          };
    files[`photos/${name}`] = await pictureOf(form, shot, (place) =>
      words.say(`${where}: ${place} in a ${form}`, audience, { told: false, same: words.isShown(audience) }),
    );
    made.push({ id: name, file: name, own, audience, more });
  }
  return made;
}

/** A clip for each audience. What is noted in it the archive alone has, in whosever edition it is shown. */
async function clipsOf(
  { words, files, extra }: Ground,
  where: string,
  owner: Audience,
): Promise<(Marked & { file: string; poster: string })[]> {
  const made: (Marked & { file: string; poster: string })[] = [];
  for (const [at, own] of [...WHO, ...(extra ? ["archive" as const] : [])].entries()) {
    const audience = narrowest(own, owner);
    const same = words.isShown(audience);
    const film = at % 2 === 0 ? "mp4" : "webm";
    const name = (what: string): string =>
      words.say(`${where}: name of a ${what}'s file`, audience, { told: false, same });
    const [file, poster] = [`${name("clip")}.${film}`, `${name("poster")}.jpg`];
    files[`clips/${file}`] = await clipOf(film, (place) =>
      words.say(`${where}: ${place} in a clip`, "archive", { same }),
    );
    files[`photos/${poster}`] = await pictureOf(
      "jpg",
      { width: 96, height: 64, colour: at > 1 ? "#503060" : "#305060" },
      (place) => words.say(`${where}: ${place} in a poster`, audience, { told: false, same }),
    );
    made.push({ id: `../clips/${file}`, file, poster, own, audience, more: at > 2 });
  }
  return made;
}

const hoursTyped = (people: Around["people"], say: Say): Value[] =>
  inBoth(people).map(({ id: who }, at) => ({
    who,
    task: "gluing",
    time: `${at + 1}:00`,
    hand: "paid",
    where: say("where someone worked"),
    note: say("note on hours"),
  }));

function remainsTyped({ words, lots }: Around, where: string, audience: Audience) {
  return (lots.get("resin") ?? []).map(({ id: lot, audience: seen }) => ({
    lot,
    amount: `${words.number(`${where}: what was left`, narrowest(audience, seen), 14)} g`,
    note: words.say(`${where}: note on what was left`, narrowest(audience, seen)),
  }));
}

function cutsTyped({ words, lots }: Around, where: string, audience: Audience) {
  return (lots.get("timber") ?? []).map(({ id: lot, audience: seen }) => ({
    lot,
    amount: `${words.number(`${where}: what was cut`, narrowest(audience, seen), 12)} g`,
    note: words.say(`${where}: note on a cut`, narrowest(audience, seen)),
  }));
}
