/** What a session says, as the facts of an entry: what was tapped and nothing else. */
import { defined } from "../defined.ts";
import type { Facts } from "../desk/front-matter.ts";
import { isLotPart } from "../facts/build/adhesive-kind.ts";
import type { Day } from "../facts/types.ts";
import { clockOf, dayOf } from "./clock-text.ts";
import type { Cup, Session } from "./session.ts";
import type { Snapshot } from "./snapshot.ts";
import { partsOf } from "./step.ts";

export interface DayFacts {
  readonly day: Day;
  readonly title: string;
  readonly facts: Facts;
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
      day,
      title,
      facts: defined({
        date: day,
        title,
        ...assemblyFact(joints, given),
        ...(at === 0 && hoursFact(session, given, day)),
        ...(cups.length > 0 && { batches: cups.map((cup) => batchFacts(session, cup, day, given)) }),
      }),
    };
  });
}

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
  const { closed, isBefore } = closingOf(session, cup, day, given);
  const isUsed = cup.discarded === undefined && cup.closed.length > 0;
  const note = noteOf(session, isBefore);
  return {
    id: cup.id,
    adhesive: tins?.adhesive ?? "",
    ...textFact("mixed", cup.mixed === undefined ? undefined : clockOf(cup.mixed, day, given.timeZone)),
    ...textFact("closed", isUsed ? closed : undefined),
    ...textFact("scale", tins?.scale),
    ...partFacts(session, cup, given),
    ...shopFacts(readings),
    ...textFact("moisture", readings.moisture),
    ...(isUsed && timber.length > 0 && { timber }),
    ...(isUsed && { joints: cup.closed.map(({ joint }) => joint) }),
    ...(isUsed && prepared !== undefined && { glue_up: preparedFacts(prepared, day, given) }),
    ...(cup.discarded === undefined && pieceFacts(cup, day, given)),
    ...textFact("discarded", cup.discarded),
    ...textFact("note", note),
  };
}

const textFact = (key: string, text: string | undefined): Facts => (text === undefined ? {} : { [key]: text });

/** A clock that was put back may show a joint closed before its cup was mixed: such a time is told, and is no fact. */
function closingOf({ wentBack }: Session, { closed, mixed }: Cup, day: Day, { timeZone }: Snapshot) {
  const last = Math.max(...closed.map(({ at }) => at));
  const isBefore = wentBack > 0 && closed.some(({ at }) => at < (mixed ?? at));
  const text = closed.length === 0 || isBefore ? undefined : clockOf(last, day, timeZone);
  return { closed: text, isBefore };
}

function noteOf({ wentBack, corrections }: Session, isBefore: boolean): string | undefined {
  const notes = [
    ...(wentBack > 0 ? [`the clock of the phone went back by ${wentBack} s during this session`] : []),
    ...(isBefore ? ["by that clock a joint was closed before this was mixed, so no time of closing is given"] : []),
    ...corrections,
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

function preparedFacts(prepared: number, day: Day, { timeZone }: Snapshot): Facts {
  const on = dayOf(prepared, timeZone);
  const text = clockOf(prepared, on, timeZone) ?? "";
  return on === day ? { prepared: text } : { prepared: text, prepared_on: on };
}

function pieceFacts({ id, pieces, mixed }: Cup, day: Day, { timeZone }: Snapshot): Facts {
  if (pieces === undefined || pieces.count === 0) return {};
  const { count, procedure, lot, sizes, now, at } = pieces;
  const glued = now && at >= (mixed ?? at) ? clockOf(at, day, timeZone) : undefined;
  const own = {
    procedure: procedure ?? "",
    ...textFact("lot", lot),
    ...textFact("glued", glued),
    ...textFact("thickness", sizes.thickness),
    ...textFact("width", sizes.width),
    ...textFact("overlap", sizes.overlap),
  };
  return { pieces: Array.from({ length: count }, (_, n) => ({ id: `${id}/${n + 1}`, ...own })) };
}

function breakingFacts(session: Session, given: Snapshot, day: Day): DayFacts {
  const broken = session.breaks.filter(({ failure, left }) => failure !== undefined && !left);
  const of = new Set(broken.map(({ piece }) => given.due.find((one) => one.piece === piece)?.assembly));
  const [assembly] = of;
  const batches = [...new Set(broken.map(({ piece }) => piece.slice(0, piece.lastIndexOf("/"))))];
  const title = batches.length === 0 ? "No piece was broken" : `Pieces of ${batches.join(", ")} broken`;
  const note = noteOf(session, false);
  const tests = broken.map(({ piece, at, failure, share, load }) => ({
    piece,
    ...textFact("at", at === undefined ? undefined : clockOf(at, day, given.timeZone)),
    failure: failure ?? "",
    ...textFact("wood_failure", share),
    ...textFact("load", load?.typed),
    ...textFact("note", note),
  }));
  const facts = defined({
    date: day,
    title,
    ...(of.size === 1 && assembly !== undefined && { assembly }),
    ...hoursFact(session, given, day),
    ...(tests.length > 0 && { tests }),
  });
  return { day, title, facts };
}
