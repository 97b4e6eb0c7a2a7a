/** What a camera hands over, as it is kept: under a name that the entry gives it. */
import { dayOf } from "../../bench/clock-text.ts";
import type { BenchEvent } from "../../bench/event.ts";
import type { Snapshot } from "../../bench/snapshot.ts";
import { nowSeconds } from "./bench.ts";
import type { Photograph } from "./store.ts";

/** Forms that a record takes and that each camera input can give, with the ending of their names. */
const ENDINGS: { readonly [type: string]: string } = { "image/jpeg": "jpg", "image/png": "png", "image/webp": "webp" };
export const PHOTOGRAPH_TYPES = Object.keys(ENDINGS);

/** Of the session, and counted through what was taken back too, so that no two have one. */
export function photographName(events: readonly BenchEvent[], { timeZone }: Snapshot, { type }: File): string {
  const before = events.filter(({ said }) => said.kind === "photographed").length;
  const session = events[0]?.session.slice(0, 6) ?? "";
  return `${dayOf(nowSeconds(), timeZone)}-${session}-${before + 1}.${ENDINGS[type] ?? "jpg"}`;
}

/** @throws Error where it has a form that no record takes */
export async function photographOf(session: string, name: string, file: File): Promise<Photograph> {
  if (ENDINGS[file.type] === undefined)
    throw new Error(
      `the camera gave ${file.type || "a file of no known form"}; a record takes ${PHOTOGRAPH_TYPES.join(", ")}`,
    );
  return { name, session, type: file.type, bytes: await file.arrayBuffer() };
}
