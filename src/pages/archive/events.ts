/** What changed the course of the build, by date: the index that an archive begins with. */
import type { Entry, Ref } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { dateWords } from "../../words/dates.ts";
import { counted, ended, listed } from "../../words/lists.ts";
import { acceptedWords } from "../evidence/evidence-lists.ts";
import { deciding, stagesOpened } from "../evidence/verdict-words.ts";

type EventKind = "Recall" | "Rework" | "Rejection" | "Departure" | "Sign-off" | "Amendment" | "First flight" | "Seal";

export interface DatedEvent {
  readonly day: string;
  readonly kind: EventKind;
  /** A sentence. */
  readonly says: string;
  /** What to look at for more. */
  readonly about?: Ref;
}

/** The oldest first; what happened on one day in the order of the record, seals after all of it. */
export const eventsOf = (shown: Shown): readonly DatedEvent[] => shown.memo.once(shown, gathered);

function gathered(shown: Shown): DatedEvent[] {
  const { aircraft, entries } = shown.record;
  const all = [
    ...entries.flatMap((entry) => inEntry(entry, shown)),
    ...(aircraft.firstFlight === undefined
      ? []
      : [
          {
            day: aircraft.firstFlight,
            kind: "First flight" as const,
            says: `${aircraft.name} flew for the first time.`,
          },
        ]),
    ...(shown.seal?.all ?? []).map(({ number, date, digest }) => ({
      day: date,
      kind: "Seal" as const,
      says: `Seal ${number} was set on the record; its digest is ${digest}.`,
    })),
  ];
  return all.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

function inEntry(entry: Entry, shown: Shown): DatedEvent[] {
  return [
    ...takenOut(entry),
    ...rejected(entry, shown),
    ...departed(entry, shown),
    ...signed(entry, shown),
    ...amended(entry),
  ];
}

function takenOut({ day, recalls, reworks }: Entry): DatedEvent[] {
  return [
    ...recalls.map(({ lot, why, reference }): DatedEvent => {
      const paper = reference === undefined ? "" : ` (${reference})`;
      return {
        day,
        kind: "Recall",
        says: ended(`Lot ${lot} was recalled: ${why}${paper}`),
        about: { kind: "lot", id: lot },
      };
    }),
    ...reworks.flatMap(({ joints, stages, why }) =>
      joints.map(
        (id): DatedEvent => ({
          day,
          kind: "Rework",
          says: ended(
            `The glue was taken out of joint ${id}${stages === undefined ? "" : stagesOpened(stages)}: ${why}`,
          ),
          about: { kind: "joint", id },
        }),
      ),
    ),
  ];
}

/** By the builder, on the day of his word; by a rule, on the day of the batch. */
function rejected({ day, rejections, batches }: Entry, { evidence, say }: Shown): DatedEvent[] {
  return [
    ...rejections.map(
      ({ batch, why }): DatedEvent => ({
        day,
        kind: "Rejection",
        says: ended(`The builder rejected batch ${batch}: ${why}`),
        about: { kind: "batch", id: batch },
      }),
    ),
    ...batches.flatMap(({ id }): DatedEvent[] => {
      const file = evidence.batches.get(id);
      if (file?.verdict !== "rejected" || file.rejection !== undefined) return [];
      const [reason] = deciding(file.findings);
      const why = reason === undefined ? "" : `: ${say(reason)}`;
      return [
        {
          day,
          kind: "Rejection",
          says: ended(`Batch ${id} of this day is rejected${why}`),
          about: { kind: "batch", id },
        },
      ];
    }),
  ];
}

function departed({ day, departures }: Entry, shown: Shown): DatedEvent[] {
  return departures.map((departure) => ({
    day,
    kind: "Departure",
    says: `${departure.id}: ${ended(departure.what)} It is ${ended(acceptedWords(shown, departure))}`,
    about: { kind: "departure", id: departure.id },
  }));
}

function signed({ day, inspections }: Entry, { evidence, nameOf }: Shown): DatedEvent[] {
  return inspections.map(({ holdPoint, result, by, reference }) => {
    const title = evidence.holdPoints.get(holdPoint)?.holdPoint.title ?? holdPoint;
    const paper = reference === undefined ? "" : `, ${reference}`;
    return {
      day,
      kind: "Sign-off",
      says: ended(`Hold point ${holdPoint}, ${title}: ${result} by ${nameOf(by)}${paper}`),
      about: { kind: "hold point", id: holdPoint },
    };
  });
}

function amended({ amendments }: Entry): DatedEvent[] {
  return amendments.map(({ day, entry, why, changes, prose }) => {
    const what = listed([
      ...(changes.length > 0 ? [counted(changes.length, "value")] : []),
      ...(prose ? ["the text"] : []),
    ]);
    const were = changes.length + (prose ? 1 : 0) > 1 ? "were" : "was";
    return {
      day,
      kind: "Amendment",
      says: ended(
        `Of the entry of ${dateWords(entry.slice(0, 10))} ${what === "" ? "something" : what} ${were} amended: ${why}`,
      ),
      about: { kind: "entry", id: entry },
    };
  });
}
