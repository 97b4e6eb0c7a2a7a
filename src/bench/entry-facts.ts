/** What a session says, as the facts of an entry: what was tapped and nothing else. */
import { defined } from "../defined.ts";
import type { Facts } from "../desk/front-matter.ts";
import { isLotPart } from "../facts/build/adhesive-kind.ts";
import type { Day } from "../facts/types.ts";
import { clockOf, dayOf } from "./clock-text.ts";
import { correctionWords, piecesWords } from "./corrections.ts";
import type { Cup, Moment, Session } from "./session.ts";
import type { Snapshot } from "./snapshot.ts";
import { partsOf } from "./step.ts";

export interface DayFacts {
  readonly day: Day;
  readonly title: string;
  readonly facts: Facts;
  /** What no batch and no test of the day can carry, in words below the facts. */
  readonly body?: string;
}

const SHORT = 60;

/** An entry for each day on which a cup was mixed: a cup after midnight is of the next. Times are those of the record's zone. */
export function dayFacts(session: Session, given: Snapshot): readonly DayFacts[] {
  const began = dayOf(session.began, given.timeZone);
  if (session.of === "breaking") return [breakingFacts(session, given, began)];
  const mixed = session.cups.filter((cup) => cup.mixed !== undefined);
  const days = [...new Set(mixed.map((cup) => dayOf(cup.mixed ?? session.began, given.timeZone)))].sort();
  return (days.length === 0 ? [began] : days).map((day, at) => {
    const cups = mixed.filter((cup) => dayOf(cup.mixed ?? session.began, given.timeZone) === day);
    const joints = [...new Set(cups.flatMap(({ closed }) => closed.map(({ joint }) => joint)))];
    const title = gluingTitle(cups, joints, given);
    return {
      ...bodyOf(session, cups, given),
      day,
      title,
      facts: defined({
        date: day,
        title,
        ...assemblyFact(joints, given),
        ...(at === 0 && hoursFact(session, given, day)),
        ...(cups.length > 0 && { batches: cups.map((cup) => batchFacts(session, cup, day, given)) }),
        ...photosFact(session, given, (on) => on === day || (at === 0 && !days.includes(on))),
      }),
    };
  });
}

const bodyOf = (session: Session, carriers: readonly unknown[], given: Snapshot): Pick<DayFacts, "body"> => {
  const body = carriers.length > 0 ? undefined : noteOf(session, [], given);
  return body === undefined ? {} : { body };
};

function gluingTitle(cups: readonly Cup[], joints: readonly string[], given: Snapshot): string {
  const names = given.assemblies
    .flatMap((assembly) => assembly.joints)
    .filter(({ id }) => joints.includes(id))
    .map(({ title }) => title);
  const what = names.length === 0 ? "nothing was closed" : names.join(", ");
  const ids = cups.map(({ id }) => id).join(", ");
  const title = ids === "" ? "Nothing was mixed" : `${ids}: ${what}`;
  return title.length > SHORT ? `${title.slice(0, SHORT).replace(/[\s,]+\S*$/, "")} …` : title;
}

/** Photographs taken here: what is on them is what was tapped, and where and when. */
function photosFact({ photos }: Session, { timeZone }: Snapshot, isOfDay: (day: Day) => boolean): Facts {
  const own = photos.flatMap(({ name, at, shows }) => {
    const on = dayOf(at, timeZone);
    if (shows === undefined || !isOfDay(on)) return [];
    const clock = clockOf(Math.floor(at / 60) * 60, on, timeZone) ?? "";
    return [{ file: `../photos/${name}`, alt: `${shows}, at the bench at ${clock}` }];
  });
  return own.length === 0 ? {} : { photos: own };
}

/** Only where all is of one assembly. */
function assemblyFact(joints: readonly string[], { assemblies }: Snapshot): Facts {
  const of = assemblies.filter((assembly) => assembly.joints.some(({ id }) => joints.includes(id)));
  return of.length === 1 && of[0] !== undefined ? { assembly: of[0].id } : {};
}

/** From the first tap to the last, in whole minutes of the clock. */
function hoursFact({ worked, began }: Session, { timeZone }: Snapshot, day: Day): Facts {
  if (worked?.task === undefined || worked.who.length === 0) return {};
  const from = clockOf(Math.floor(began / 60) * 60, day, timeZone);
  const to = clockOf(Math.floor(worked.until / 60) * 60, day, timeZone);
  const minutes = Math.floor(worked.until / 60) - Math.floor(began / 60);
  if (from === undefined || to === undefined || minutes < 1 || from.length > 5 + OFFSET) return {};
  const [one] = worked.who;
  return {
    hours: [{ who: worked.who.length === 1 && one !== undefined ? one : worked.who, task: worked.task, from, to }],
  };
}

/** Signs of an offset behind a time. */
const OFFSET = 6;

function batchFacts(session: Session, cup: Cup, day: Day, given: Snapshot): Facts {
  const { tins, readings, timber = [], prepared } = session;
  const isUsed = cup.discarded === undefined && cup.closed.length > 0;
  const closed = isUsed ? closingOf(cup, day, given) : undefined;
  const pieces = cup.discarded === undefined ? piecesOf(cup, day, given) : {};
  const own = isUsed && prepared !== undefined ? preparedOf(prepared, cup, day, given) : {};
  const note = noteOf(session, [closed, pieces, own], given);
  return {
    id: cup.id,
    adhesive: tins?.adhesive ?? "",
    ...textFact("mixed", cup.mixed === undefined ? undefined : clockOf(cup.mixed, day, given.timeZone)),
    ...closed?.facts,
    ...textFact("scale", tins?.scale),
    ...partFacts(session, cup, given),
    ...shopFacts(readings),
    ...textFact("moisture", readings.moisture),
    ...(isUsed && timber.length > 0 && { timber }),
    ...(isUsed && { joints: cup.closed.map(({ joint }) => joint) }),
    ...own.facts,
    ...pieces.facts,
    ...textFact("discarded", cup.discarded),
    ...textFact("note", note),
  };
}

const textFact = (key: string, text: string | undefined): Facts => (text === undefined ? {} : { [key]: text });

/** What a time is the fact of; where the phone's clock cannot tell it, what is noted in words instead. */
interface Timed {
  readonly facts?: Facts;
  readonly untold?: string;
}

/** After a clock went back nothing says how long a joint stood open: such a time would show less than the truth, and is no fact. */
function closingOf({ closed, clock }: Cup, day: Day, { timeZone }: Snapshot): Timed {
  if (closed.some((one) => one.clock !== clock))
    return {
      untold: "by that clock nobody knows how long after mixing a joint was closed, so no time of closing is given",
    };
  const text = clockOf(Math.max(...closed.map(({ at }) => at)), day, timeZone);
  return text === undefined ? { untold: "it was closed later than this page can write" } : { facts: { closed: text } };
}

function noteOf(
  { wentBack, corrections }: Session,
  timed: readonly (Timed | undefined)[],
  given: Snapshot,
): string | undefined {
  const notes = [
    ...(wentBack > 0 ? [`the clock of the phone went back by ${wentBack} s during this session`] : []),
    ...timed.flatMap((one) => one?.untold ?? []),
    ...corrections.map((correction) => correctionWords(correction, given)),
  ];
  return notes.length === 0 ? undefined : notes.join("; ");
}

function partFacts(session: Session, cup: Cup, given: Snapshot): Facts {
  const by = /(?:ml|l|cm³|fl oz)$/.test(session.tins?.scale ?? "") ? "volume" : "mass";
  return Object.fromEntries(
    partsOf(session, given).flatMap((part) => {
      const amount = cup.amounts[part];
      const lot = isLotPart(part) ? session.tins?.lots[part] : undefined;
      const facts = { ...textFact("lot", lot), ...textFact(by, amount) };
      return Object.keys(facts).length === 0 ? [] : [[part, facts]];
    }),
  );
}

function shopFacts({ temperature, humidity }: Session["readings"]): Facts {
  const shop = { ...textFact("temperature", temperature), ...textFact("humidity", humidity) };
  return Object.keys(shop).length === 0 ? {} : { shop };
}

function preparedOf(prepared: Moment, cup: Cup, day: Day, { timeZone }: Snapshot): Timed {
  if (prepared.clock !== cup.clock)
    return { untold: "by that clock nobody knows how long before mixing the surfaces were finished" };
  const on = dayOf(prepared.at, timeZone);
  const text = clockOf(prepared.at, on, timeZone) ?? "";
  return { facts: { glue_up: on === day ? { prepared: text } : { prepared: text, prepared_on: on } } };
}

/**
 * A piece without a time of its own was glued with the joint: one that was glued later, when nobody can tell, is not
 * declared here, and its numbers stay free.
 */
function piecesOf({ id, pieces, clock }: Cup, day: Day, given: Snapshot): Timed {
  if (pieces === undefined || pieces.count === 0) return {};
  const { count, procedure, lot, sizes, now } = pieces;
  const glued = now && pieces.clock === clock ? clockOf(pieces.at, day, given.timeZone) : undefined;
  if (now && glued === undefined)
    return {
      untold: `${piecesWords(pieces, given)}: glued later than the joint, at a time that this page cannot write; declare them at the desk with theirs`,
    };
  const own = {
    procedure: procedure ?? "",
    ...textFact("lot", lot),
    ...textFact("glued", glued),
    ...textFact("thickness", sizes.thickness),
    ...textFact("width", sizes.width),
    ...textFact("overlap", sizes.overlap),
  };
  return { facts: { pieces: Array.from({ length: count }, (_, n) => ({ id: `${id}/${n + 1}`, ...own })) } };
}

function breakingFacts(session: Session, given: Snapshot, day: Day): DayFacts {
  const broken = session.breaks.filter(({ failure, left }) => failure !== undefined && !left);
  const of = new Set(broken.map(({ piece }) => given.due.find((one) => one.piece === piece)?.assembly));
  const [assembly] = of;
  const batches = [...new Set(broken.map(({ piece }) => piece.slice(0, piece.lastIndexOf("/"))))];
  const title = batches.length === 0 ? "No piece was broken" : `Pieces of ${batches.join(", ")} broken`;
  const note = noteOf(session, [], given);
  const tests = broken.map(({ piece, at, failure, share, load }) => ({
    piece,
    ...textFact("at", at === undefined ? undefined : clockOf(at, day, given.timeZone)),
    failure: failure ?? "",
    ...textFact("wood_failure", share?.typed),
    ...textFact("load", load?.typed),
    ...textFact("witness", session.watched?.who),
    ...textFact("note", note),
  }));
  const facts = defined({
    date: day,
    title,
    ...(of.size === 1 && assembly !== undefined && { assembly }),
    ...hoursFact(session, given, day),
    ...(tests.length > 0 && { tests }),
    ...photosFact(session, given, () => true),
  });
  return { ...bodyOf(session, tests, given), day, title, facts };
}
