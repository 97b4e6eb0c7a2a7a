/** Breaking pieces. No verdict is told before the last is broken: it must not lead the hand. */
import type { JSX } from "preact";
import { ladder, type Shown, shownBy } from "../../../bench/scale.ts";
import { FAILURE_MODES } from "../../../facts/glue/test.ts";
import type { FailureMode } from "../../../facts/types.ts";
import { useBench } from "../bench.ts";
import { Ladder, List, Pad, Screen, Tap, useTurn } from "../parts.tsx";

const MODES: { readonly [mode in FailureMode]: string } = {
  wood: "In the wood",
  "glue line": "In the glue line",
  mixed: "Partly in each",
  crushed: "A leg was crushed",
  "face ply": "Face ply came off",
  "not opened": "Nobody looked in",
};

interface Of {
  readonly piece: string;
}

export function Broke({ piece }: Of): JSX.Element {
  const { say } = useBench();
  return (
    <Screen title={`${piece}: where did it break?`}>
      <List>
        {FAILURE_MODES.map((failure) => (
          <Tap key={failure} onTap={() => say({ kind: "broke", piece, failure })}>
            {MODES[failure]}
          </Tap>
        ))}
        <Tap look="quiet" onTap={() => say({ kind: "not broken", piece })}>
          Not broken today
        </Tap>
      </List>
    </Screen>
  );
}

const SHARES = Array.from({ length: 21 }, (_, at) => `${100 - 5 * at} %`);

export function Share({ piece }: Of): JSX.Element {
  const { say } = useBench();
  return (
    <Screen title={`${piece}: how much of the face is torn wood?`}>
      <Ladder key={piece} values={SHARES} unit="%" onValue={(typed) => say({ kind: "share", piece, typed })} />
      <Tap look="quiet" onTap={() => say({ kind: "share", piece })}>
        It was not estimated
      </Tap>
    </Screen>
  );
}

/** Asked once of all that was broken, and still before any verdict. */
export function Watched(): JSX.Element {
  const { given, say } = useBench();
  return (
    <Screen title="Who watched?">
      <List>
        {given.people.map(({ id, publicName }) => (
          <Tap key={id} onTap={() => say({ kind: "watched", who: id })}>
            {publicName}
          </Tap>
        ))}
        <Tap look="quiet" onTap={() => say({ kind: "watched" })}>
          Nobody but who broke them
        </Tap>
      </List>
    </Screen>
  );
}

/** The load of the last test by the same procedure. */
function useLast(piece: string): Shown | undefined {
  const { given } = useBench();
  const all = given.entries.flatMap(({ batches }) => batches.flatMap(({ pieces }) => pieces));
  const own = all.find(({ id }) => id === piece);
  return shownBy(own && given.loads[own.procedure]);
}

/** Tens first, then the last digit: two taps for a load that a gauge shows in three figures. */
export function Load({ piece }: Of): JSX.Element {
  const { given, say } = useBench();
  const [tens, setTens] = useTurn<Shown | undefined>(undefined);
  const [onPad, setPad] = useTurn(false);
  const around = useLast(piece);
  const unit = around?.unit ?? (given.units === "metric" ? "N" : "lbf");
  const note = (typed: string): void => void say({ kind: "load", piece, typed });
  if (onPad || around === undefined || around.decimals > 0)
    return (
      <Screen title={`${piece}: at what load?`}>
        <Pad
          unit={unit}
          orUnit={unit === "N" ? "kgf" : "N"}
          onValue={note}
          onBack={onPad ? () => setPad(false) : undefined}
        />
        <NoLoad piece={piece} />
      </Screen>
    );
  if (tens === undefined) return <Tens piece={piece} around={around} onTens={setTens} onPad={() => setPad(true)} />;
  const values = Array.from({ length: 10 }, (_, digit) => `${tens.value + digit} ${unit}`);
  return (
    <Screen title={`${piece}: the last figure`}>
      <Ladder values={values} unit={unit} onValue={note} />
      <Tap look="quiet" onTap={() => setTens(undefined)}>
        Back
      </Tap>
    </Screen>
  );
}

interface TensProps extends Of {
  readonly around: Shown;
  readonly onTens: (tens: Shown) => void;
  readonly onPad: () => void;
}

function Tens({ piece, around, onTens, onPad }: TensProps): JSX.Element {
  return (
    <Screen title={`${piece}: at what load?`}>
      <div class="ladder">
        {ladder(around, 10, 10).map((value) => {
          const at = shownBy(value)?.value ?? 0;
          return (
            <Tap key={value} onTap={() => onTens({ ...around, value: at })}>
              {Math.round(at / 10)}–
            </Tap>
          );
        })}
      </div>
      <p class="unit">first figures, {around.unit}</p>
      <Tap look="quiet" onTap={onPad}>
        Another value
      </Tap>
      <NoLoad piece={piece} />
    </Screen>
  );
}

function NoLoad({ piece }: Of): JSX.Element {
  const { say } = useBench();
  return (
    <Tap look="quiet" onTap={() => say({ kind: "load", piece })}>
      No load was read
    </Tap>
  );
}
