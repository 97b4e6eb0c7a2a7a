/** The screen of each step, what is kept said below it, and the one before taken back. */
import type { JSX } from "preact";
import { useMemo, useRef, useState } from "preact/hooks";
import { type BenchEvent, liveEvents, type Said } from "../../bench/event.ts";
import { sessionOf } from "../../bench/session.ts";
import type { Letter, Snapshot } from "../../bench/snapshot.ts";
import { lettered, takenBy, without } from "../../bench/taken.ts";
import type { Step } from "../../bench/step.ts";
import { type Bench, BenchGiven, benchOf, useBench } from "./bench.ts";
import { List, Screen, Tap, useTurn } from "./parts.tsx";
import { Joints, Prepared, Read, Scale, Timber } from "./screens/asked.tsx";
import { Broke, Load, Share, Watched } from "./screens/breaking.tsx";
import { Clock } from "./screens/clock.tsx";
import { Amount, MixTold, Pour, ReadBack } from "./screens/mix.tsx";
import { Hours, Out, Over } from "./screens/out.tsx";
import { Camera, OnPhotograph } from "./screens/photograph.tsx";
import { Pieces } from "./screens/pieces.tsx";
import { Start } from "./screens/start.tsx";
import { settle } from "./settling.ts";
import { photographName, photographOf } from "./photograph.ts";
import type { Store } from "./store.ts";

/** A record that the page holds, by its digest. */
export interface Made {
  readonly given: Snapshot;
  readonly digest: string;
}

interface AppProps {
  readonly store: Store;
  /** What this page was made of, and what the open session began with, where that is another. */
  readonly own: Made;
  readonly begun: Made | undefined;
  readonly kept: readonly BenchEvent[];
  readonly taken: Parameters<typeof without>[1];
  readonly letter: Letter;
}

export function App({ store, own, begun, kept, taken: before, letter: first }: AppProps): JSX.Element {
  const [events, setEvents] = useState(kept);
  const [taken, setTaken] = useState(before);
  const [letter, setLetter] = useState(first);
  const [failed, setFailed] = useState<string>();
  const isBusy = useRef(false);
  const made =
    events.length > 0 && begun !== undefined
      ? begun
      : { ...own, given: without(lettered(own.given, letter), taken, own.digest) };
  const keep = async (said: Said, file?: File): Promise<void> => {
    const event = eventOf(events, said, made.digest);
    const photograph =
      file && said.kind === "photographed" ? await photographOf(event.session, said.name, file) : undefined;
    await store.keep(event, events.length === 0 ? made.given : undefined, photograph);
    const all = [...events, event];
    const session = sessionOf(all);
    if (session?.arrived !== true) return setEvents(all);
    const gone = takenBy(session);
    if (await store.forget(session.id, gone)) return location.reload();
    setTaken([...taken, gone]);
    setEvents([]);
  };
  const say = async (said: Said, file?: File): Promise<void> => {
    if (isBusy.current) return file && setFailed("the photograph came while another tap was kept; take it again");
    isBusy.current = true;
    try {
      await keep(said, file);
      settle(said.kind === "joint" ? said.joint : undefined);
    } catch (error) {
      setFailed(error instanceof Error ? error.message : String(error));
    } finally {
      isBusy.current = false;
    }
  };
  const keepPhotograph = (file: File): Promise<void> =>
    say({ kind: "photographed", name: photographName(events, made.given, file) }, file);
  const keepLetter = (to: Letter): Promise<void> => store.keepLetter(to).then(() => setLetter(to));
  const bench = useMemo(
    () => benchOf(made, events, { say, keepPhotograph, photographs: () => store.photographs(), letter, keepLetter }),
    [events, taken, letter],
  );
  return (
    <BenchGiven value={bench}>
      {failed === undefined ? null : <NotKept why={failed} />}
      <StepScreen step={bench.step} />
      <Kept bench={bench} />
    </BenchGiven>
  );
}

function NotKept({ why }: { readonly why: string }): JSX.Element {
  return (
    <p class="failed" role="alert">
      The last tap was not kept: {why}
    </p>
  );
}

/** Random, so that two tabs that know nothing of each other never make the same. */
function randomId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

function eventOf(events: readonly BenchEvent[], said: Said, record: string): BenchEvent {
  const seq = Math.max(-1, ...events.map((event) => event.seq)) + 1;
  const instant = Date.now();
  const session = events[0]?.session ?? randomId();
  return { session, id: randomId(), seq, instant, offset: -new Date(instant).getTimezoneOffset(), said, record };
}

function StepScreen({ step }: { readonly step: Step | undefined }): JSX.Element {
  switch (step?.step) {
    case undefined:
      return <Start />;
    case "joints":
      return <Joints />;
    case "scale":
      return <Scale />;
    case "reading":
      return <Read of={step.of} />;
    case "prepared":
      return <Prepared />;
    case "timber":
      return <Timber />;
    case "amount":
      return <Amount cup={step.cup} part={step.part} />;
    case "read back":
      return <ReadBack cup={step.cup} />;
    case "pour":
      return <Pour cup={step.cup} part={step.part} />;
    case "mix told":
      return <MixTold cup={step.cup} />;
    case "clock":
      return <Clock />;
    case "pieces":
      return <Pieces key={step.cup} cup={step.cup} />;
    case "broke":
      return <Broke piece={step.piece} />;
    case "share":
      return <Share piece={step.piece} />;
    case "load":
      return <Load key={step.piece} piece={step.piece} />;
    case "photograph":
      return <OnPhotograph photo={step.photo} />;
    case "watched":
      return <Watched />;
    case "hours":
      return <Hours />;
    case "out":
      return <Out />;
    case "over":
      return <Over />;
  }
}

/** Said on every screen: what is kept, and that it is not out yet. */
function Kept({ bench: { events, session } }: { readonly bench: Bench }): JSX.Element {
  return (
    <footer>
      <p role="status">
        {session === undefined ? (
          "Nothing is open."
        ) : (
          <>
            Kept on this phone: <span data-kept>{events.length}</span> {events.length === 1 ? "tap" : "taps"}.{" "}
            {session.out ? "It went out; the phone keeps it until it has arrived." : "Not out yet."}
          </>
        )}
      </p>
      {session === undefined ? null : <Undo />}
      {session === undefined || session.out ? null : <Camera />}
    </footer>
  );
}

/** Within this, a tap was a slip; what is taken back later stays in the file, with why. */
const SLIP_MS = 20_000;
const WHY = ["tapped by mistake", "read wrongly", "it changed"];

function Undo(): JSX.Element {
  const { events, say } = useBench();
  const [asks, setAsks] = useTurn<string | undefined>(undefined);
  const last = liveEvents(events).at(-1);
  if (last === undefined || last.said.kind === "out") return <></>;
  const { id } = last;
  if (asks === id)
    return (
      <List>
        <h2>Why is it taken back?</h2>
        {WHY.map((why) => (
          <Tap key={why} look="quiet" onTap={() => say({ kind: "undone", event: id, why })}>
            {why}
          </Tap>
        ))}
      </List>
    );
  const isSlip = (): boolean => Math.abs(Date.now() - last.instant) < SLIP_MS || liveEvents(events).length === 1;
  return (
    <Tap look="quiet" onTap={() => (isSlip() ? void say({ kind: "undone", event: id }) : setAsks(id))}>
      Take back the last tap
    </Tap>
  );
}

export function Elsewhere(): JSX.Element {
  return (
    <Screen title="Open in another tab">
      <p>
        This page is open in another tab or window of this browser. Go on there, or close it and load this one anew.
      </p>
    </Screen>
  );
}
