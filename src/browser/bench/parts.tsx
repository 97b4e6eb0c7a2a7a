/** What screens are made of: buttons, values to choose from, and a pad behind them. */
import type { ComponentChildren, JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { countPadded, padded } from "../../bench/scale.ts";
import { settle } from "./settling.ts";

interface ScreenProps {
  readonly title: string;
  readonly children?: ComponentChildren;
}

/** A question and what answers it. Whoever listens hears each new question first. */
export function Screen({ title, children }: ScreenProps): JSX.Element {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), [title]);
  return (
    <main>
      <h1 ref={head} tabIndex={-1}>
        {title}
      </h1>
      {children}
    </main>
  );
}

interface TapProps {
  readonly onTap: () => void;
  readonly children: ComponentChildren;
  readonly look?: "main" | "quiet" | "grave";
  readonly pressed?: boolean;
  readonly name?: string;
  readonly off?: boolean;
}

/** `name` tells one button from another where a second tap on it must not count. */
export function Tap({ onTap, children, look, pressed, name, off = false }: TapProps): JSX.Element {
  return (
    <button
      type="button"
      class={look === undefined ? "tap" : `tap tap--${look}`}
      aria-pressed={pressed}
      data-key={name}
      disabled={off}
      onClick={onTap}
    >
      {children}
    </button>
  );
}

export function List({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <div class="list">{children}</div>;
}

interface LadderProps {
  readonly values: readonly string[];
  readonly unit: string;
  readonly onValue: (typed: string) => void;
  /** Another unit that the instrument may read in. */
  readonly orUnit?: string;
}

/** Values beside the last one, a tap each; a pad behind them. None of them is marked. */
export function Ladder({ values, unit, onValue, orUnit }: LadderProps): JSX.Element {
  const [onPad, setPad] = useTurn(values.length === 0);
  const turn = (to: boolean) => () => setPad(to);
  if (onPad)
    return <Pad unit={unit} orUnit={orUnit} onValue={onValue} onBack={values.length === 0 ? undefined : turn(false)} />;
  return (
    <>
      <div class="ladder">
        {values.map((value) => (
          <Tap key={value} onTap={() => onValue(value)}>
            {value.replace(` ${unit}`, "")}
          </Tap>
        ))}
      </div>
      <p class="unit">{unit}</p>
      <Tap look="quiet" onTap={turn(true)}>
        Another value
      </Tap>
    </>
  );
}

interface PadProps {
  readonly unit: string;
  readonly orUnit?: string | undefined;
  readonly onValue: (typed: string) => void;
  readonly onBack?: (() => void) | undefined;
}

const KEYS = ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0"] as const;

/** Takes a point and a comma, from its own keys and from a keyboard. */
export function Pad({ unit: usual, orUnit, onValue, onBack }: PadProps): JSX.Element {
  const [typed, setTyped] = useState("");
  const [unit, setUnit] = useState(usual);
  const value = unit === "pieces" ? countPadded(typed)?.toString() : padded(typed, unit);
  const put = (key: string): void => setTyped((before) => (before.length < 9 ? before + key : before));
  const take = (): void => {
    if (value !== undefined) onValue(value);
  };
  useKeys(put, () => setTyped((before) => before.slice(0, -1)), take);
  return (
    <div class="pad">
      <output class="pad__shown">
        {typed === "" ? "–" : typed} {unit}
      </output>
      <div class="ladder">
        {KEYS.map((key) => (
          <Tap key={key} onTap={() => put(key)}>
            {key}
          </Tap>
        ))}
        <Tap onTap={() => setTyped((before) => before.slice(0, -1))}>
          <span aria-hidden="true">⌫</span>
          <span class="heard">take back a digit</span>
        </Tap>
      </div>
      {/°/.test(unit) ? (
        <Flip name="sign" onTap={() => setTyped(turned)}>
          Below or above nought
        </Flip>
      ) : null}
      {orUnit === undefined ? null : (
        <Flip name="unit" onTap={() => setUnit(unit === usual ? orUnit : usual)}>
          It reads in {unit === usual ? orUnit : usual}
        </Flip>
      )}
      <Tap look="main" off={value === undefined} onTap={take}>
        Note {value ?? "it"}
      </Tap>
      {onBack === undefined ? null : (
        <Tap look="quiet" onTap={onBack}>
          Back to the values
        </Tap>
      )}
    </div>
  );
}

const turned = (typed: string): string => (typed.startsWith("-") ? typed.slice(1) : `-${typed}`);

/** What a second tap would turn back. */
function Flip({ name, onTap, children }: { readonly name: string } & TapProps): JSX.Element {
  const flip = (): void => {
    onTap();
    settle(name);
  };
  return (
    <Tap look="quiet" name={name} onTap={flip}>
      {children}
    </Tap>
  );
}

/** A keyboard, where there is one. */
function useKeys(put: (key: string) => void, back: () => void, take: () => void): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (/^[\d.,]$/.test(event.key)) put(event.key);
      else if (event.key === "Backspace") back();
      else if (event.key === "Enter" && !(event.target instanceof HTMLButtonElement)) take();
      else return;
      event.preventDefault();
    };
    addEventListener("keydown", pressed);
    return () => removeEventListener("keydown", pressed);
  });
}

/** Something within a screen that a tap turns to, as if it were another screen. */
export function useTurn<T>(first: T): readonly [T, (to: T) => void] {
  const [value, set] = useState(first);
  return [
    value,
    (to) => {
      set(() => to);
      settle();
    },
  ];
}

interface Ticks {
  /** Undefined while one tap chooses one thing. */
  readonly several: readonly string[] | undefined;
  readonly begin: () => void;
  readonly toggle: (id: string) => void;
}

/** Several things chosen together. */
export function useTicks(): Ticks {
  const [several, setSeveral] = useState<readonly string[]>();
  return {
    several,
    begin: () => {
      setSeveral([]);
      settle();
    },
    toggle: (id) => {
      setSeveral((before = []) => (before.includes(id) ? before.filter((one) => one !== id) : [...before, id]));
      settle(id);
    },
  };
}

interface ChoiceProps {
  readonly ticks: Ticks;
  readonly id: string;
  readonly onOne: () => void;
  readonly children: ComponentChildren;
}

export function Choice({ ticks: { several, toggle }, id, onOne, children }: ChoiceProps): JSX.Element {
  const on = several?.includes(id);
  return (
    <Tap name={id} {...(on !== undefined && { pressed: on })} onTap={several === undefined ? onOne : () => toggle(id)}>
      {on === true ? "✓ " : ""}
      {children}
    </Tap>
  );
}

/** Draws its screen anew each second. */
export function useSeconds(): void {
  const [, tick] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => tick((n) => n + 1), 1000);
    return () => clearInterval(timer);
  }, []);
}
