/** Test pieces glued from a cup. */
import type { JSX } from "preact";
import { overlapWords } from "../../../bench/overlap-words.ts";
import { clockAt, nowSeconds, useSession } from "../bench.ts";
import { List, Pad, Screen, Tap, useSeconds, useTurn } from "../parts.tsx";

interface Kind {
  readonly procedure: string;
  readonly title: string;
  readonly lot: string;
  readonly usual: number;
}

/** Pieces of each procedure from each wood that was glued; without any wood known there is none to choose. */
function useKinds(): readonly Kind[] {
  const { given, session } = useSession();
  const used = (id: string): number => (given.sizes[id] === undefined ? 1 : 0);
  const procedures = [...given.procedures].sort((a, b) => used(a.id) - used(b.id));
  return procedures.flatMap(({ id, title, pieces = 1 }) =>
    (session.timber ?? []).map((lot) => ({ procedure: id, title, lot, usual: pieces })),
  );
}

export function Pieces({ cup: at }: { readonly cup: number }): JSX.Element {
  const { given, session, say } = useSession();
  const kinds = useKinds();
  const [other, setOther] = useTurn<Kind | undefined>(undefined);
  const [now, setNow] = useTurn(false);
  const glue = (count: number, kind?: Kind): void => {
    const of = kind === undefined ? {} : { procedure: kind.procedure, lot: kind.lot };
    const sizes = kind === undefined ? {} : (given.sizes[kind.procedure] ?? {});
    void say({ kind: "pieces", cup: at, count, ...of, sizes, now });
  };
  if (other !== undefined)
    return (
      <Screen title={`How many of ${other.lot}?`}>
        <Pad unit="pieces" onValue={(count) => glue(Number(count), other)} onBack={() => setOther(undefined)} />
      </Screen>
    );
  return (
    <Screen title={`Test pieces from ${session.cups[at]?.id ?? ""}`}>
      <GluedWhen cup={at} now={now} />
      <List>
        {kinds.map((kind) => (
          <OfKind key={`${kind.procedure} ${kind.lot}`} kind={kind} onTap={() => glue(kind.usual, kind)} />
        ))}
        {kinds.map((kind) => (
          <Tap key={`more ${kind.procedure} ${kind.lot}`} look="quiet" onTap={() => setOther(kind)}>
            Another number of {kind.lot}: {kind.title}
          </Tap>
        ))}
        <Tap look="quiet" onTap={() => setNow(!now)}>
          {now ? "They were glued with the last joint" : "They are glued only now"}
        </Tap>
        <Tap look="quiet" onTap={() => glue(0)}>
          None
        </Tap>
      </List>
    </Screen>
  );
}

function GluedWhen({ cup, now }: { readonly cup: number; readonly now: boolean }): JSX.Element {
  useSeconds();
  const { given, session } = useSession();
  const closed = session.cups[cup]?.closed ?? [];
  if (now) return <p>Glued now, {clockAt(nowSeconds(), given)}</p>;
  if (closed.length === 0) return <p>Glued from this cup</p>;
  return <p>Glued with the last joint, {clockAt(Math.max(...closed.map((one) => one.at)), given)}</p>;
}

function OfKind({ kind, onTap }: { readonly kind: Kind; readonly onTap: () => void }): JSX.Element {
  const { given, record } = useSession();
  return (
    <Tap onTap={onTap}>
      {kind.usual} of {kind.lot}: {kind.title}
      <br />
      {overlapWords(given.sizes[kind.procedure] ?? {}, record.procedures.get(kind.procedure))}
    </Tap>
  );
}
