/** Who worked, and the file going out. */
import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { type BenchFile, benchFiles } from "../../../bench/bench-file.ts";
import { foretell, type Foretold } from "../../../bench/judged.ts";
import { counted } from "../../../words/lists.ts";
import { useSession } from "../bench.ts";
import { Choice, List, Screen, Tap, useTicks, useTurn } from "../parts.tsx";
import { type Going, type Sent, send, ways } from "../send.ts";
import type { Photograph } from "../store.ts";

export function Hours(): JSX.Element {
  const { given, session } = useSession();
  const last = given.task[session.of];
  const [task, setTask] = useTurn(last !== undefined && given.tasks.includes(last) ? last : undefined);
  if (task !== undefined) return <Who task={task} otherTask={() => setTask(undefined)} />;
  return (
    <Screen title="What was the work?">
      <List>
        {given.tasks.map((one) => (
          <Tap key={one} onTap={() => setTask(one)}>
            {one}
          </Tap>
        ))}
      </List>
    </Screen>
  );
}

function Who({ task, otherTask }: { readonly task: string; readonly otherTask: () => void }): JSX.Element {
  const { given, say } = useSession();
  const ticks = useTicks();
  const { several } = ticks;
  return (
    <Screen title={`Who worked at ${task}?`}>
      <List>
        {given.people.map(({ id, publicName }) => (
          <Choice key={id} id={id} ticks={ticks} onOne={() => say({ kind: "worked", who: [id], task })}>
            {publicName}
          </Choice>
        ))}
        {several === undefined ? (
          <Tap look="quiet" onTap={ticks.begin}>
            Several together
          </Tap>
        ) : (
          <Tap look="main" off={several.length === 0} onTap={() => say({ kind: "worked", who: several, task })}>
            These {several.length}
          </Tap>
        )}
        <Tap look="quiet" onTap={otherTask}>
          Another task
        </Tap>
        <Tap look="quiet" onTap={() => say({ kind: "worked", who: [] })}>
          Note no hours
        </Tap>
      </List>
    </Screen>
  );
}

const WORDS = { shared: "Share it", downloaded: "Save it as a file", copied: "Copy it" } as const;

export function Out(): JSX.Element {
  const { given, digest, record, session, say } = useSession();
  const [failed, setFailed] = useState<string>();
  const photographs = usePhotographs();
  const isGoing = useRef(false);
  const files = benchFiles(session, given, digest);
  const foretold = foretell(record, files);
  const go = (way: Sent, going: Going) => async (): Promise<void> => {
    if (isGoing.current) return;
    isGoing.current = true;
    const why = await send(going, way);
    isGoing.current = false;
    setFailed(why);
    if (why === undefined) await say({ kind: "out", way });
  };
  return (
    <Screen title={session.out ? "Has it arrived?" : "Take it out"}>
      <Verdicts foretold={foretold} />
      {failed === undefined ? null : <p class="grave">{failed}</p>}
      <List>
        {photographs === undefined ? null : <Ways going={{ entries: files, photographs }} go={go} />}
        {session.out ? (
          <Tap look="main" onTap={() => say({ kind: "arrived" })}>
            It is in the record
          </Tap>
        ) : null}
      </List>
      {session.out ? <p>Once you say so it is cleared from this phone.</p> : null}
      {files.map((file) => (
        <File key={file.path} file={file} />
      ))}
    </Screen>
  );
}

interface WaysProps {
  readonly going: Going;
  readonly go: (way: Sent, going: Going) => () => Promise<void>;
}

function Ways({ going, go }: WaysProps): JSX.Element {
  const { session } = useSession();
  return (
    <>
      {ways(going).map((way) => (
        <Tap key={way} look={session.out ? "quiet" : "main"} onTap={go(way, going)}>
          {WORDS[way]}
        </Tap>
      ))}
      {going.photographs.length === 0 ? null : <p>With {counted(going.photographs.length, "photograph")}.</p>}
    </>
  );
}

const NO_PHOTOGRAPHS: readonly Photograph[] = [];

/** Of this session, as far as its file names them; undefined until they are read, since a share waits for nothing. */
function usePhotographs(): readonly Photograph[] | undefined {
  const { photographs, session } = useSession();
  const [read, setRead] = useState<readonly Photograph[]>();
  useEffect(() => {
    if (session.photos.length === 0) return;
    const named = new Set(session.photos.map(({ name }) => name));
    void photographs().then((all) => setRead(all.filter(({ name }) => named.has(name))));
  }, [session.photos.length]);
  return session.photos.length === 0 ? NO_PHOTOGRAPHS : read;
}

function File({ file }: { readonly file: BenchFile }): JSX.Element {
  return (
    <section>
      <h2>{file.path}</h2>
      <pre tabIndex={0} data-path={file.path}>
        {file.text}
      </pre>
    </section>
  );
}

/** What the record will say, and why; what was held needs no words. */
function Verdicts({ foretold: { batches, pieces, told } }: { readonly foretold: Foretold }): JSX.Element {
  return (
    <>
      {[
        ...batches.map((file) => ({ id: file.batch.id, file })),
        ...(batches.length > 0 ? [] : pieces.map((file) => ({ id: file.piece.id, file }))),
      ].map(({ id, file }) => (
        <section key={id}>
          <h2>
            {id}: <span data-verdict={id}>{file.verdict}</span>
          </h2>
          <ul>
            {told(file)
              .filter(({ severity }) => severity !== "meets")
              .map(({ sentence }) => (
                <li key={sentence}>{sentence}</li>
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}

export function Over(): JSX.Element {
  return (
    <Screen title="It has arrived">
      <p>This session is cleared from the phone.</p>
    </Screen>
  );
}
