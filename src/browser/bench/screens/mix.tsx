/** A cup from the first weighing to the mix: bands while it is poured, none while it is noted. */
import type { JSX } from "preact";
import type { AdhesivePart } from "../../../facts/build/adhesive-kind.ts";
import { ladder, shownBy, typedBy } from "../../../bench/scale.ts";
import { bandFor, cupFacts, leastCup, lifeOfCup, noLife, targetOf } from "../../../bench/sums.ts";
import { refusals } from "../../../bench/refusals.ts";
import { partsOf } from "../../../bench/step.ts";
import { adhesiveOf, inCup, nowSeconds, useSession } from "../bench.ts";
import { Ladder, List, Screen, Tap } from "../parts.tsx";
import { Running } from "./clock.tsx";

export function Amount({ cup, part }: { readonly cup: number; readonly part: AdhesivePart }): JSX.Element {
  const { session, say } = useSession();
  const scale = session.tins?.scale ?? "";
  const isFirst = session.cups[cup]?.mixed === undefined;
  const around = useAround(cup, part);
  const step = shownBy(scale);
  return (
    <Screen title={`How much ${part}?`}>
      <Running />
      <p>
        Cup {session.cups[cup]?.id}
        {isFirst ? <Aim cup={cup} /> : null}
      </p>
      <Ladder
        key={`${cup} ${part}`}
        values={step === undefined || around === undefined ? [] : ladder({ ...step, value: around }, step.value, 10)}
        unit={step?.unit ?? "g"}
        onValue={(typed) => say({ kind: "amount", cup, part, typed })}
      />
    </Screen>
  );
}

/** Where a ladder begins: at what is aimed for, else at what was weighed last. */
function useAround(at: number, part: AdhesivePart): number | undefined {
  const { given, record, session } = useSession();
  const scale = session.tins?.scale ?? "";
  const parts = partsOf(session, given);
  const [first] = parts;
  const last = shownBy(given.tins.find(({ adhesive }) => adhesive === session.tins?.adhesive)?.amounts[part])?.value;
  if (part === first) return useTarget() ?? last;
  const read = first === undefined ? undefined : session.cups[at]?.amounts[first];
  const band = read === undefined ? undefined : bandFor(adhesiveOf(record, session), read, scale);
  if (band === undefined) return last;
  return ((shownBy(band.least)?.value ?? 0) + (shownBy(band.most)?.value ?? 0)) / 2;
}

/** What to weigh of the first part, in the unit of the scale; of a measure of volume it is not told. */
function useTarget(): number | undefined {
  const { record, session } = useSession();
  const scale = shownBy(session.tins?.scale);
  const areas = session.joints.map(
    (id) =>
      [...record.assemblies.values()].flatMap(({ joints }) => joints).find((joint) => joint.id === id)?.area?.value,
  );
  const area = areas.reduce<number | undefined>(
    (sum, one) => (sum === undefined || one === undefined ? undefined : sum + one),
    0,
  );
  const target = targetOf(adhesiveOf(record, session), area);
  return target === undefined || scale?.unit !== "g" ? undefined : target * 1000;
}

function Aim({ cup }: { readonly cup: number }): JSX.Element {
  const { record, session } = useSession();
  const scale = session.tins?.scale ?? "";
  const target = useTarget();
  const step = shownBy(scale);
  const least = leastCup(adhesiveOf(record, session), scale);
  return (
    <>
      {target === undefined || step === undefined || cup > 0 ? null : (
        <>
          {", by area and spread about "}
          <b class="big">{typedBy(step, target)}</b>
        </>
      )}
      {least === undefined ? null : `. This scale can show the ratio from ${least} on.`}
    </>
  );
}

/** All of it once more, before the clock runs. */
export function ReadBack({ cup }: { readonly cup: number }): JSX.Element {
  const { given, record, session, say } = useSession();
  const second = partsOf(session, given)[1];
  const against = refusals(session, cup, given, record, nowSeconds());
  const isSound = against.length === 0;
  return (
    <Screen title={isSound ? "Read it back" : "Do not mix this"}>
      <Running />
      {isSound ? null : (
        <ul class="against">
          {against.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <AllOfIt cup={cup} />
      <Tap look={isSound ? "main" : "grave"} onTap={() => say({ kind: "mixed", cup })}>
        {!isSound
          ? "It is mixed already: write it down"
          : second === undefined
            ? "Spreading begins now"
            : `The ${second} goes in now`}
      </Tap>
    </Screen>
  );
}

function AllOfIt({ cup }: { readonly cup: number }): JSX.Element {
  const { given, record, session } = useSession();
  const [first] = partsOf(session, given);
  const { tins, readings, joints, timber = [] } = session;
  const own = session.cups[cup];
  const life = own && lifeOfCup(adhesiveOf(record, session), inCup(session, own));
  const rows = [
    ["Cup", own?.id],
    ["Adhesive", `${adhesiveOf(record, session).title}, ${Object.values(tins?.lots ?? {}).join(", ")}`],
    ["Working life", life?.row.time.typed ?? noLife(readings.temperature)],
    ["Weighed", first && `${own?.amounts[first]} of ${first}`],
    ["Joints", joints.join(", ")],
    ["Shop", `${readings.temperature ?? "warmth not read"}, ${readings.humidity ?? "humidity not read"}`],
    [
      "Wood",
      `${readings.moisture ?? "moisture not read"}, ${timber.length === 0 ? "not known which" : timber.join(", ")}`,
    ],
  ] as const;
  return (
    <dl>
      {rows.map(([what, is]) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>{is}</dd>
        </div>
      ))}
    </dl>
  );
}

export function Pour({ cup, part }: { readonly cup: number; readonly part: AdhesivePart }): JSX.Element {
  const { given, record, session, say } = useSession();
  const [first] = partsOf(session, given);
  const read = first === undefined ? undefined : session.cups[cup]?.amounts[first];
  const band = read === undefined ? undefined : bandFor(adhesiveOf(record, session), read, session.tins?.scale ?? "");
  return (
    <Screen title={`Pour the ${part}`}>
      <Running />
      {band === undefined ? (
        <p>No reading of this scale is known to pass by ratio and scale. Hold to the sheet, and note what it reads.</p>
      ) : (
        <p>
          To {read} of {first}
          <b class="huge">{band.least.replace(/ \D+$/, "")} to</b>
          <b class="huge">{band.most}</b>
        </p>
      )}
      <Tap look="main" onTap={() => say({ kind: "poured", cup })}>
        It is in: note it
      </Tap>
    </Screen>
  );
}

/** A mix that the record will not show: what can be done, and what that costs of the working life. */
export function MixTold({ cup: at }: { readonly cup: number }): JSX.Element {
  const { given, session, say } = useSession();
  const cup = session.cups[at];
  const [first, second] = partsOf(session, given);
  return (
    <Screen title="This mix is not shown">
      <Running />
      <p>
        {first && cup?.amounts[first]} of {first}, {second && cup?.amounts[second]} of {second}
      </p>
      <Mending at={at} />
      <List>
        {[first, second].map((part) =>
          part === undefined ? null : (
            <Tap key={part} onTap={() => say({ kind: "again", cup: at, part })}>
              Note the {part} anew
            </Tap>
          ),
        )}
        <Tap look="quiet" onTap={() => say({ kind: "left as it is", cup: at })}>
          Leave it as it is
        </Tap>
        <Tap look="grave" onTap={() => say({ kind: "discarded", cup: at, why: "The mix was out of its ratio" })}>
          Throw the cup away
        </Tap>
      </List>
    </Screen>
  );
}

/** More of the first part where there is too much of the second, and the other way round, with the working life of so much. */
function Mending({ at }: { readonly at: number }): JSX.Element | null {
  const { given, record, session } = useSession();
  const cup = session.cups[at];
  const adhesive = adhesiveOf(record, session);
  const [first, second] = partsOf(session, given);
  const scale = session.tins?.scale ?? "";
  const step = shownBy(scale);
  if (!cup || !first || !second || !step) return null;
  const { ratio, life } = cupFacts(adhesive, inCup(session, cup));
  const [one, other] = [shownBy(cup.amounts[first]), shownBy(cup.amounts[second])];
  if (!ratio || !one || !other) return <p>The sheet's ratio cannot be held against this.</p>;
  const isOver = ratio.error > 0;
  const enough = typedBy(step, Math.round(other.value / ratio.nominal / step.value) * step.value);
  const band = bandFor(adhesive, cup.amounts[first] ?? "", scale);
  const mended = isOver
    ? { ...cup.amounts, [first]: enough }
    : { ...cup.amounts, [second]: band?.least ?? cup.amounts[second] };
  const then = cupFacts(adhesive, { ...inCup(session, cup), amounts: mended }).life;
  const lives =
    life?.row.time.typed === then?.row.time.typed
      ? ""
      : ` So much has a working life of ${then?.row.time.typed ?? "no time that the sheet gives"}, not ${life?.row.time.typed ?? "known"}.`;
  return (
    <p>
      {isOver
        ? `Too much ${second}: ${first} up to ${enough} in all would mend it.`
        : `Too little ${second}: ${band?.least ?? "more"} in all would mend it.`}
      {lives}
    </p>
  );
}
