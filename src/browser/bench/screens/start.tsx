/** What can be begun, and how old the record is that it is begun with. */
import type { JSX } from "preact";
import { defined } from "../../../defined.ts";
import { MADE, isLotPart, type LotPart } from "../../../facts/build/adhesive-kind.ts";
import type { Letter, Tins } from "../../../bench/snapshot.ts";
import { dateWords } from "../../../words/dates.ts";
import { counted } from "../../../words/lists.ts";
import { dayOf } from "../../../bench/clock-text.ts";
import { type Bench, nowSeconds, useBench } from "../bench.ts";
import { missing } from "../missing.ts";
import { List, Screen, Tap, useTurn } from "../parts.tsx";

export function Start(): JSX.Element {
  const bench = useBench();
  const [chooses, setChooses] = useTurn(false);
  const { given, record, say } = bench;
  const [asksPhone, setAsksPhone] = useTurn(false);
  if (asksPhone) return <WhichPhone done={() => setAsksPhone(false)} />;
  if (chooses) return <OtherTins back={() => setChooses(false)} />;
  const ready = given.tins.filter(
    (tins) => canGlue(bench, tins) && lotParts(bench, tins).every((part) => tins.lots[part]),
  );
  const due = given.due.filter(({ from }) => from <= nowSeconds());
  const joints = given.assemblies.flatMap((assembly) => assembly.joints);
  return (
    <Screen title="At the bench">
      <p>{recordWords(bench)}</p>
      <List>
        {joints.length === 0 ? <p>No joint of this record waits to be glued.</p> : null}
        {joints.length === 0
          ? null
          : ready.map((tins) => (
              <Tap key={tins.adhesive} onTap={() => say(beginWith(bench, tins))}>
                Glue: {record.adhesives.get(tins.adhesive)?.title}
                <br />
                {Object.values(tins.lots).join(", ")}
              </Tap>
            ))}
        {joints.length === 0 ? null : (
          <Tap look="quiet" onTap={() => setChooses(true)}>
            Glue from other tins
          </Tap>
        )}
        {due.length === 0 ? (
          <p>{waitingWords(bench)}</p>
        ) : (
          <Tap onTap={() => say({ kind: "began", of: "breaking", pieces: due.map(({ piece }) => piece) })}>
            Break {counted(due.length, "piece")}
          </Tap>
        )}
        {due.some(({ byDaysAlone }) => byDaysAlone) ? (
          <p>Of some only the days are over, and no warmth is noted: broken now they may prove nothing.</p>
        ) : null}
      </List>
      {given.staged.length === 0 ? null : <p>Glued in stages, so written at the desk: {given.staged.join(", ")}.</p>}
      <PhoneTold change={() => setAsksPhone(true)} />
      {missing().map((words) => (
        <p key={words}>{words}</p>
      ))}
    </Screen>
  );
}

/** Where two phones write at one bench each gives numbers of its own: they are on cups and sticks by pen. */
function PhoneTold({ change }: { readonly change: () => void }): JSX.Element {
  const { letter, given } = useBench();
  return (
    <>
      {letter === "" ? null : (
        <p>
          Phone {letter}. Its next cup is {given.nextBatch}.
        </p>
      )}
      <Tap look="quiet" onTap={change}>
        {letter === "" ? "A second phone writes too" : "Another letter"}
      </Tap>
    </>
  );
}

function WhichPhone({ done }: { readonly done: () => void }): JSX.Element {
  const { given, keepLetter } = useBench();
  return (
    <Screen title="Which phone is this?">
      <List>
        {(Object.keys(given.nextByLetter) as Letter[]).map((letter) => (
          <Tap key={letter} onTap={() => keepLetter(letter).then(done)}>
            {letter === "" ? "The first" : `Phone ${letter}`}: {given.nextByLetter[letter]}
          </Tap>
        ))}
      </List>
    </Screen>
  );
}

const beginWith = ({ given }: Bench, { adhesive, lots, scale }: Omit<Tins, "amounts">) =>
  ({ kind: "began", of: "gluing", tins: defined({ adhesive, lots, scale }), firstBatch: given.nextBatch }) as const;

/** Parts that are put on apart are in no cup. */
function canGlue({ record }: Bench, { adhesive }: Tins): boolean {
  const kind = record.adhesives.get(adhesive)?.kind;
  return kind !== undefined && kind !== "applied-apart";
}

const lotParts = ({ record }: Bench, { adhesive }: Tins): readonly LotPart[] => {
  const kind = record.adhesives.get(adhesive)?.kind;
  return kind === undefined ? [] : MADE[kind].parts.filter(isLotPart);
};

function recordWords({ given }: Bench): string {
  const days = Math.floor((nowSeconds() - given.made) / 86_400);
  const age = days < 1 ? "today" : `${counted(days, "day")} ago`;
  return `${dateWords(dayOf(nowSeconds(), given.timeZone))}. Record of ${dateWords(given.day)}, put on this page ${age}.`;
}

function waitingWords({ given }: Bench): string {
  const [next] = [...given.due].sort((a, b) => a.from - b.from);
  if (next === undefined) return "No piece waits to be broken.";
  return `${counted(given.due.length, "piece")} to break, the first from ${dateWords(dayOf(next.from, given.timeZone))} on.`;
}

interface Back {
  readonly back: () => void;
}

/** Only lots of the adhesive itself are offered: parts of two adhesives are never one cup. */
function OtherTins({ back }: Back): JSX.Element {
  const bench = useBench();
  const [tins, setTins] = useTurn<Omit<Tins, "amounts"> | undefined>(undefined);
  if (tins !== undefined) return <Lots tins={tins} onTins={setTins} back={back} />;
  return (
    <Screen title="Which adhesive?">
      <List>
        {bench.given.tins
          .filter((one) => canGlue(bench, one))
          .map(({ adhesive, scale }) => (
            <Tap key={adhesive} onTap={() => setTins(defined({ adhesive, lots: {}, scale }))}>
              {bench.record.adhesives.get(adhesive)?.title}
            </Tap>
          ))}
        <Tap look="quiet" onTap={back}>
          Back
        </Tap>
      </List>
    </Screen>
  );
}

interface LotsProps extends Back {
  readonly tins: Omit<Tins, "amounts">;
  readonly onTins: (tins: Omit<Tins, "amounts">) => void;
}

function Lots({ tins, onTins, back }: LotsProps): JSX.Element {
  const bench = useBench();
  const part = lotParts(bench, { ...tins, amounts: {} }).find((each) => tins.lots[each] === undefined);
  const fitting = bench.given.lots.filter((lot) => lot.material === part && lot.adhesive === tins.adhesive);
  return (
    <Screen title={part === undefined ? `Glue with ${Object.values(tins.lots).join(", ")}?` : `Which ${part}?`}>
      <List>
        {part === undefined ? (
          <Tap look="main" onTap={() => bench.say(beginWith(bench, tins))}>
            Glue
          </Tap>
        ) : (
          fitting.map(({ id, title }) => (
            <Tap key={id} onTap={() => onTins({ ...tins, lots: { ...tins.lots, [part]: id } })}>
              {id}: {title}
            </Tap>
          ))
        )}
        <Tap look="quiet" onTap={back}>
          Back
        </Tap>
      </List>
    </Screen>
  );
}
