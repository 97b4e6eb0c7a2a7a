/** Later entries, in which what the others made is broken, taken out, looked at, closed and amended. */
import type { Amendment, Audience, Batch, Entry, Lot, PieceTest } from "../../../src/facts/types.ts";
import { departure, entry, inspection, measurement, openItem, test } from "../../evidence/make.ts";
import { mm, moment, newton, pc } from "../../evidence/quantities.ts";
import { day, type Ground, isWider, narrowest, place, prose, worded } from "./ground.ts";
import type { Session } from "./session.ts";

export function afterwards({ anyone, say }: Ground): Entry {
  const audience = anyone();
  const id = `${day(17)}-${say(audience)}`;
  const of = { entry: id, day: day(17) };
  const own = narrowest(anyone(), audience);
  return entry(id, {
    audience,
    title: say(audience),
    departures: [departure(say(own), { ...of, what: say(own), why: say(own), audience: own })],
    raised: [openItem(say(own), { ...of, what: say(own), audience: own, before: "H-1" })],
    measurements: [
      measurement({
        ...of,
        what: say(audience),
        limits: { typed: say(audience), least: 1 },
        found: worded(mm("62.0"), say(audience)),
      }),
    ],
  });
}
/** A last entry in which pieces are broken, and what the others raised is closed, accepted, recalled, rejected, taken out, looked at. */
export function breaking(
  ground: Ground,
  sessions: readonly Session[],
  own: { readonly id: string; readonly audience: Audience; readonly closes: readonly string[] },
): Entry {
  const { say, pick, lots, trials, people } = ground;
  const { id, audience, closes } = own;
  const batches = sessions.flatMap((one) => one.batches);
  const of = { entry: id, day: day(15) };
  const audienceOf = (one: Batch): Audience =>
    sessions.find((each) => each.batches.includes(one))?.audience ?? "archive";
  const tests = batches.flatMap((one) =>
    one.pieces.map((each): PieceTest => {
      const own = narrowest(
        audience,
        audienceOf(one),
        trials.find((trial) => trial.id === each.trial)?.audience ?? "public",
      );
      return test(each.id, {
        ...of,
        at: { ...moment(of.day, "19:00"), typed: say(own) },
        failure: pick("wood", "glue line"),
        woodFailure: worded(pc("100"), say(own)),
        judgedBy: pick(...people).id,
        load: worded(newton("300"), say(own)),
        note: say(own),
        witness: pick(...people).id,
        photo: say(own),
      });
    }),
  );
  const timber = (): Lot => pick(...lots.filter(({ material }) => material === "timber"));
  const recalled = pick(...lots);
  const rejected = pick(...batches);
  return entry(id, {
    audience,
    title: say(audience),
    tests,
    recalls: [
      {
        place,
        ...of,
        lot: recalled.id,
        why: say(narrowest(audience, recalled.audience)),
        reference: say(narrowest(audience, recalled.audience)),
        note: say(narrowest(audience, recalled.audience)),
      },
    ],
    rejections: [
      {
        place,
        ...of,
        batch: rejected.id,
        why: say(narrowest(audience, audienceOf(rejected))),
        note: say(narrowest(audience, audienceOf(rejected))),
      },
    ],
    reworks: [
      {
        place,
        ...of,
        joints: ["W-3"],
        stages: [1],
        why: say(audience),
        note: say(audience),
        replaced: [{ lot: timber().id, with: timber().id }],
      },
    ],
    inspections: [
      inspection("H-1", {
        ...of,
        by: pick(...people).id,
        result: pick("signed", "not signed"),
        reference: say(audience),
        scan: say(audience, "attachments"),
        remarks: say(audience),
      }),
      inspection("H-2", { ...of, by: people[0]?.id ?? "", reference: say(audience) }),
    ],
    amendments: sessions
      .filter((one) => isWider(audience, one.audience))
      .map((one) => amendment(ground, one, { by: id, day: of.day })),
    closed: closes,
    body: prose(ground, audience, [rejected.id]),
  });
}

/** Of a session that all its readers may see amended: a batch's lot, a departure's reason, who worked. */
function amendment(
  { say, pick, lots, people }: Ground,
  { entry: amended, audience, batches, departures }: Session,
  of: { by: string; day: string },
): Amendment {
  const [one] = batches;
  const [left] = departures;
  if (one === undefined || left === undefined) throw new Error("a session has a batch and a departure");
  const own = narrowest(audience, left.audience);
  const [was, is] = [pick(...lots), pick(...lots)];
  const by = (id: string, words: string): Amendment["changes"][number]["was"] => [{ kind: "person", id }, words];
  return {
    place,
    entry: amended.id,
    ...of,
    why: say(audience),
    seenBy: pick(...people).id,
    prose: pick(true, false),
    withheld: false,
    changes: [
      {
        place,
        about: { kind: "batch", id: one.id },
        fact: `Batch ${one.id}`,
        value: "resin lot",
        was: [{ kind: "lot", id: was.id }, say(audience)],
        is: [{ kind: "lot", id: is.id }, say(audience)],
        needs: [],
        audience: "public",
      },
      {
        place,
        about: { kind: "departure", id: left.id },
        fact: `Departure ${left.id}`,
        value: say(own),
        was: [say(own)],
        is: [say(own)],
        needs: [{ kind: "departure", id: left.id }],
        audience: left.audience,
        fixed: true,
        worsens: true,
      },
      {
        place,
        about: { kind: "entry", id: amended.id },
        fact: "Hours",
        was: by(pick(...people).id, say(audience)),
        is: by(pick(...people).id, say(audience)),
        needs: [],
        audience: "public",
      },
    ],
  };
}
