/** What every screen is given: the record, what has been said, and how to say more. */
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { BenchEvent, Said } from "../../bench/event.ts";
import { restored } from "../../bench/restored.ts";
import { type Cup, type Session, sessionOf } from "../../bench/session.ts";
import type { Letter, Snapshot } from "../../bench/snapshot.ts";
import { type Step, stepOf } from "../../bench/step.ts";
import { type InCup, mixPasses } from "../../bench/sums.ts";
import { clockOf, dayOf } from "../../bench/clock-text.ts";
import type { Photograph } from "./store.ts";
import type { Adhesive, Record } from "../../facts/types.ts";

export interface Bench {
  readonly given: Snapshot;
  readonly digest: string;
  readonly record: Record;
  readonly events: readonly BenchEvent[];
  readonly session: Session | undefined;
  readonly step: Step | undefined;
  /** Kept on the phone once it resolves; only then the next screen comes. */
  readonly say: (said: Said) => Promise<void>;
  /** Keeps what a camera took, with the tap that says so. */
  readonly keepPhotograph: (file: File) => Promise<void>;
  /** Of this phone among several; empty for the first. */
  readonly letter: Letter;
  readonly keepLetter: (letter: Letter) => Promise<void>;
  readonly photographs: () => Promise<readonly Photograph[]>;
}

const Given = createContext<Bench | undefined>(undefined);
export const BenchGiven = Given.Provider;

export function useBench(): Bench {
  const bench = useContext(Given);
  if (bench === undefined) throw new Error("a screen stands outside of the bench");
  return bench;
}

/** Of a screen that only a session has. */
export function useSession(): Bench & { readonly session: Session } {
  const bench = useBench();
  if (bench.session === undefined) throw new Error("no session has begun");
  return bench as Bench & { readonly session: Session };
}

export function benchOf(
  { given, digest }: { readonly given: Snapshot; readonly digest: string },
  events: readonly BenchEvent[],
  hands: Pick<Bench, "say" | "keepPhotograph" | "photographs" | "letter" | "keepLetter">,
): Bench {
  const record = restored(given);
  const session = sessionOf(events);
  const step = session && stepOf(session, given, (cup) => passes(record, session, cup));
  return { given, digest, record, events, session, step, ...hands };
}

export const adhesiveOf = (record: Record, session: Session): Adhesive => {
  const adhesive = record.adhesives.get(session.tins?.adhesive ?? "");
  if (adhesive === undefined) throw new Error("a session was begun with an adhesive that the record has not");
  return adhesive;
};

export const inCup = ({ tins, readings }: Session, { amounts }: Cup): InCup => ({
  amounts,
  scale: tins?.scale,
  temperature: readings.temperature,
});

const passes = (record: Record, session: Session, cup: Cup): boolean =>
  mixPasses(adhesiveOf(record, session), inCup(session, cup));

/** s since 1970-01-01T00:00Z */
export const nowSeconds = (): number => Math.floor(Date.now() / 1000);

/** What the clock of the record's zone shows, without seconds. */
export const clockAt = (instant: number, { timeZone }: Snapshot): string =>
  (clockOf(Math.floor(instant / 60) * 60, dayOf(instant, timeZone), timeZone) ?? "").slice(0, 5);
