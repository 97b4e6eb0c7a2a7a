/** Cups whose clock runs: until when each can be worked, and what was closed of it. */
import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { Cup } from "../../../bench/session.ts";
import { lifeOfCup, noLife } from "../../../bench/sums.ts";
import { adhesiveOf, clockAt, inCup, nowSeconds, useBench, useSession } from "../bench.ts";
import { letRing, ring, ringWords } from "../ring.ts";
import { List, Screen, Tap, useSeconds, useTurn } from "../parts.tsx";

interface Life {
  /** s since 1970-01-01T00:00Z; undefined where the sheet gives no time for so warm or so much. */
  readonly until: number | undefined;
  /** Whether the phone's clock has gone back since it was mixed: then nobody knows by it how much is left. */
  readonly isUnsure: boolean;
}

function useLife(): (cup: Cup) => Life {
  const { record, session } = useSession();
  const adhesive = adhesiveOf(record, session);
  return (cup) => {
    const life = lifeOfCup(adhesive, inCup(session, cup))?.time;
    const until = life === undefined || cup.mixed === undefined ? undefined : cup.mixed + life;
    return { until, isUnsure: cup.clock !== session.clock || Date.now() < session.lastTap };
  };
}

const isRunning = ({ mixed, discarded }: Cup): boolean => mixed !== undefined && discarded === undefined;

/** Cups whose time runs, in a line each, on whatever screen. */
export function Running(): JSX.Element | null {
  useSeconds();
  const { session } = useBench();
  if (session === undefined || session.ended) return null;
  const running = session.cups.filter(isRunning);
  return running.length === 0 ? null : <RunningCups cups={running} />;
}

/** s before the end at which a clock rings. */
const RINGS = [300, 0];
/**
 * What was left of each time when it was last looked at, s, whichever screen was shown: each rings once, and one that
 * was over behind a dark screen when it is lit again.
 */
const lastLeft = new Map<number, number>();

function useRing(ends: readonly number[]): void {
  useEffect(letRing, []);
  useEffect(() => {
    if (document.visibilityState !== "visible") return;
    for (const end of ends) {
      const left = end - nowSeconds();
      const before = lastLeft.get(end) ?? left;
      lastLeft.set(end, left);
      if (RINGS.some((at) => before > at && left <= at)) ring();
    }
  });
}

function RunningCups({ cups }: { readonly cups: readonly Cup[] }): JSX.Element {
  const { given, session } = useBench();
  const lifeOf = useLife();
  useRing(cups.map(lifeOf).flatMap(({ until, isUnsure }) => (until === undefined || isUnsure ? [] : until)));
  return (
    <ul class="running">
      {cups.map((cup) => {
        const { until, isUnsure } = lifeOf(cup);
        if (isUnsure)
          return (
            <li key={cup.id} class="grave">
              {cup.id}: the clock of this phone went back since it was mixed, and tells no time that is left
            </li>
          );
        if (until === undefined)
          return (
            <li key={cup.id} class="grave">
              {cup.id}: {noLife(session?.readings.temperature)}
            </li>
          );
        const left = Math.floor((until - nowSeconds()) / 60);
        return (
          <li key={cup.id} class={left < 5 ? "grave" : ""}>
            {cup.id} <b class="big">{left < 0 ? "over" : `${left} min`}</b> until {clockAt(until, given)}
          </li>
        );
      })}
    </ul>
  );
}

const WHY = ["It went hot in the cup", "It stood too long", "It was mixed wrong"];

interface RunningCup {
  readonly cup: Cup;
  /** Which of the session's. */
  readonly at: number;
}

export function Clock(): JSX.Element {
  const { session, say } = useSession();
  const [throws, setThrows] = useTurn<number | undefined>(undefined);
  const running = session.cups.flatMap((cup, at) => (isRunning(cup) ? [{ cup, at }] : []));
  if (throws !== undefined) return <Why cup={throws} onDone={() => setThrows(undefined)} />;
  return (
    <Screen title="Tap each joint as it is closed">
      <Running />
      {session.joints.map((joint) => (
        <Cells key={joint} joint={joint} running={running} />
      ))}
      <List>
        <Tap look="main" onTap={() => say({ kind: "nothing more" })}>
          Nothing more to close
        </Tap>
        <Tap look="quiet" onTap={() => say({ kind: "another cup" })}>
          Another cup
        </Tap>
        {running
          .filter(({ cup }) => cup.closed.length === 0)
          .map(({ cup, at }) => (
            <Tap key={cup.id} look="quiet" onTap={() => setThrows(at)}>
              Throw {cup.id} away
            </Tap>
          ))}
      </List>
      <p>{ringWords()}</p>
    </Screen>
  );
}

function Why({ cup, onDone }: { readonly cup: number; readonly onDone: () => void }): JSX.Element {
  const { session, say } = useSession();
  return (
    <Screen title={`Why is ${session.cups[cup]?.id} thrown away?`}>
      <List>
        {WHY.map((why) => (
          <Tap key={why} onTap={() => say({ kind: "discarded", cup, why }).then(onDone)}>
            {why}
          </Tap>
        ))}
        <Tap look="quiet" onTap={onDone}>
          It is not
        </Tap>
      </List>
    </Screen>
  );
}

/** Each joint, by each cup that may close it. */
function Cells({ joint, running }: { readonly joint: string; readonly running: readonly RunningCup[] }): JSX.Element {
  const { given, say } = useSession();
  return (
    <section>
      <h2>
        {joint}: {titleOf(given, joint)}
      </h2>
      <div class="cells">
        {running.map(({ cup, at }) => {
          const closed = cup.closed.find((one) => one.joint === joint);
          return closed === undefined ? (
            <Tap key={cup.id} onTap={() => say({ kind: "closed", cup: at, joint })}>
              Closed{running.length > 1 ? ` from ${cup.id}` : ""}
            </Tap>
          ) : (
            <p key={cup.id} class="done">
              ✓ {cup.id} {clockAt(closed.at, given)}
            </p>
          );
        })}
      </div>
    </section>
  );
}

const titleOf = ({ assemblies }: ReturnType<typeof useBench>["given"], id: string): string =>
  assemblies.flatMap(({ joints }) => joints).find((joint) => joint.id === id)?.title ?? "";
