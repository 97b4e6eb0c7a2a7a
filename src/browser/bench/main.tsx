/** The page at the bench: opened alone, with what was kept before. */
import { render } from "preact";
import type { BenchEvent } from "../../bench/event.ts";
import { sessionOf } from "../../bench/session.ts";
import { takenBy } from "../../bench/taken.ts";
import type { Snapshot } from "../../bench/snapshot.ts";
import { App, Elsewhere, type Made } from "./app.tsx";
import { guardTaps } from "./settling.ts";
import { Store } from "./store.ts";
import { keepLit } from "./wake.ts";

const root = document.querySelector<HTMLElement>("#bench");
const data = document.querySelector<HTMLElement>("#record");

/** Resolves to false where another tab has it; where the browser has no locks nobody can tell. */
function alone(): Promise<boolean> {
  if (navigator.locks === undefined) return Promise.resolve(true);
  return new Promise((resolve) => {
    void navigator.locks.request("scarfline-bench", { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock === null ? undefined : new Promise(() => undefined);
    });
  });
}

async function open(place: HTMLElement, own: Made): Promise<void> {
  guardTaps(place);
  place.textContent = "";
  if (!(await alone())) return render(<Elsewhere />, place);
  const store = await Store.open();
  const events = await cleared(store);
  const [first] = events;
  const begun = first === undefined ? undefined : await store.record(first.record);
  const kept = events.filter(({ session }) => session === first?.session);
  const session = first && begun && { given: begun, digest: first.record };
  const [taken, letter] = [await store.taken(), await store.letter()];
  render(<App store={store} own={own} begun={session} kept={kept} taken={taken} letter={letter} />, place);
  keepLit();
}

/** What is kept, without a session that had arrived when the page was closed before it was cleared. */
async function cleared(store: Store): Promise<readonly BenchEvent[]> {
  const events = await store.events();
  const arrived = events.find(({ said }) => said.kind === "arrived")?.session;
  const session = sessionOf(events.filter((event) => event.session === arrived));
  if (session?.arrived !== true) return events;
  await store.forget(session.id, takenBy(session));
  return store.events();
}

/** Among the phone's programs, and without a network: from a disk neither is to be had. */
function install(): void {
  const link = document.createElement("link");
  link.rel = "manifest";
  link.href = "manifest.webmanifest";
  document.head.append(link);
  void navigator.serviceWorker?.register("worker.js").catch(() => undefined);
}

if (root !== null && data !== null) {
  const own: Made = { given: JSON.parse(data.textContent ?? "") as Snapshot, digest: data.dataset["digest"] ?? "" };
  open(root, own).catch((error: unknown) => {
    root.textContent = `This page cannot keep anything here: ${error instanceof Error ? error.message : String(error)}`;
  });
  if (location.protocol !== "file:") install();
}
