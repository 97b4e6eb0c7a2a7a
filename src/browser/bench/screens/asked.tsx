/** What is asked before a cup is mixed: joints, scale, climate, surfaces, wood. */
import type { JSX } from "preact";
import type { Reading } from "../../../bench/event.ts";
import { ladder, type Shown, shownBy } from "../../../bench/scale.ts";
import { conditionWords } from "../../../bench/refusals.ts";
import { settlesAt } from "../../../bench/sums.ts";
import { percent } from "../../../words/numbers.ts";
import { clockAt, nowSeconds, useBench, useSession } from "../bench.ts";
import { Choice, Ladder, List, Screen, Tap, useTicks } from "../parts.tsx";

export function Joints(): JSX.Element {
  const { given, session, say } = useSession();
  const chosen = session.joints;
  return (
    <Screen title="Which joints?">
      {given.assemblies.map((assembly) => (
        <section key={assembly.id}>
          <h2>{assembly.title}</h2>
          <List>
            {assembly.joints.map(({ id, title }) => {
              const on = chosen.includes(id);
              return (
                <Tap key={id} name={id} pressed={on} onTap={() => say({ kind: "joint", joint: id, on: !on })}>
                  {on ? "✓ " : ""}
                  {id}: {title}
                </Tap>
              );
            })}
          </List>
        </section>
      ))}
      <Tap look="main" off={chosen.length === 0} onTap={() => say({ kind: "joints chosen" })}>
        {chosen.length === 0 ? "None ticked yet" : `These ${chosen.length}`}
      </Tap>
    </Screen>
  );
}

export function Scale(): JSX.Element {
  const { say } = useBench();
  return (
    <Screen title="What does the scale read in?">
      <Ladder
        values={["0.01 g", "0.1 g", "0.5 g", "1 g"]}
        unit="g"
        orUnit="ml"
        onValue={(typed) => say({ kind: "scale", typed })}
      />
    </Screen>
  );
}

interface Asked {
  readonly title: string;
  readonly usual: Shown;
  readonly step: number;
  readonly each: number;
}

const CELSIUS: Asked = {
  title: "How warm is the shop?",
  usual: { value: 20, decimals: 1, unit: "°C" },
  step: 0.5,
  each: 4,
};
const FAHRENHEIT: Asked = { ...CELSIUS, usual: { value: 68, decimals: 0, unit: "°F" }, step: 1, each: 7 };

function askedOf(of: Reading, units: "metric" | "imperial", last: string | undefined): Asked {
  if (of === "humidity")
    return { title: "How damp is the air?", usual: { value: 50, decimals: 0, unit: "%" }, step: 1, each: 7 };
  if (of === "moisture")
    return {
      title: "How damp is the wood, by meter?",
      usual: { value: 10, decimals: 1, unit: "%" },
      step: 0.1,
      each: 7,
    };
  const unit = shownBy(last)?.unit ?? (units === "metric" ? "°C" : "°F");
  return unit === "°F" ? FAHRENHEIT : CELSIUS;
}

export function Read({ of }: { readonly of: Reading }): JSX.Element {
  const { given, say } = useBench();
  const last = given.readings[of];
  const { title, usual, step, each } = askedOf(of, given.units, last);
  const around = shownBy(last);
  const centre = { ...usual, value: around?.unit === usual.unit ? around.value : usual.value };
  return (
    <Screen title={title}>
      <Ladder
        key={of}
        values={ladder(centre, step, each)}
        unit={usual.unit}
        {...(of === "temperature" && { orUnit: usual.unit === "°C" ? "°F" : "°C" })}
        onValue={(typed) => say({ kind: "reading", of, typed })}
      />
      <Tap look="quiet" onTap={() => say({ kind: "reading", of })}>
        It was not read
      </Tap>
    </Screen>
  );
}

const MINUTES_AGO = [0, 15, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720];

export function Prepared(): JSX.Element {
  const { given, say } = useBench();
  const now = nowSeconds();
  return (
    <Screen title="When were the surfaces finished?">
      <div class="ladder">
        {MINUTES_AGO.map((minutes) => {
          const at = Math.floor((now - minutes * 60) / 60) * 60;
          return (
            <Tap key={minutes} onTap={() => say({ kind: "prepared", at })}>
              {minutes === 0 ? "now" : clockAt(at, given)}
            </Tap>
          );
        })}
      </div>
      <Tap look="quiet" onTap={() => say({ kind: "prepared" })}>
        Earlier, or not known
      </Tap>
      <p>An earlier time is written at the desk.</p>
    </Screen>
  );
}

/** What the build will say of air and wood as they were noted, told once all of it is. */
function Conditions(): JSX.Element {
  const { given, record, session } = useSession();
  const { temperature, humidity } = session.readings;
  const settles = settlesAt(temperature, humidity);
  return (
    <ul data-conditions>
      {conditionWords(session, given, record, nowSeconds()).map(({ sentence, isAgainst }) => (
        <li key={sentence} class={isAgainst ? "grave" : ""}>
          {sentence}
        </li>
      ))}
      {settles === undefined ? null : <li>In this air wood settles near {percent(settles, 1)}.</li>}
    </ul>
  );
}

export function Timber(): JSX.Element {
  const { given, say } = useBench();
  const ticks = useTicks();
  const { several } = ticks;
  const wood = given.lots.filter(({ material }) => material === "timber" || material === "plywood");
  const first = (id: string): number => (given.timber.includes(id) ? 0 : 1);
  const inOrder = [...wood].sort((a, b) => first(a.id) - first(b.id));
  return (
    <Screen title="Of which wood?">
      <Conditions />
      <List>
        {inOrder.map(({ id, title }) => (
          <Choice key={id} id={id} ticks={ticks} onOne={() => say({ kind: "timber", lots: [id] })}>
            {id}: {title}
          </Choice>
        ))}
      </List>
      {several === undefined ? (
        <Tap look="quiet" onTap={ticks.begin}>
          Of several
        </Tap>
      ) : (
        <Tap look="main" onTap={() => say({ kind: "timber", lots: several })}>
          {several.length === 0 ? "I do not know" : `These ${several.length}`}
        </Tap>
      )}
    </Screen>
  );
}
