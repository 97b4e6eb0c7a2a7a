/** What is due, as it is told on a terminal. */
import type { Shown } from "../../editions/shown.ts";
import { NOT_LOOKED_AT } from "../../pages/evidence/verdict-words.ts";
import { plainly } from "../../problem.ts";
import { dateWords } from "../../words/dates.ts";
import type { NeedTogether } from "../../pages/evidence/needs.ts";
import type { WaitingRow } from "../../pages/evidence/waiting.ts";
import type { Due } from "./due.ts";

export function dueText({ record }: Shown, due: Due): string {
  const parts = [
    titled("May be broken", due.now.map(pieceLine), "No piece is known to have cured."),
    titled(
      "Days over, warmth not told: broken now, these may prove nothing. Note how warm they were kept first",
      due.byDaysAlone.map(pieceLine),
    ),
    titled(
      "Not in the heat that the sheet asks for: broken now, these show nothing. Heat them with a joint of their batch, and note it",
      due.unheated.map(pieceLine),
    ),
    titled("Still curing", due.later.map(pieceLine)),
    titled(
      "Lots to look at",
      due.lots.map(({ lot, keeps, left }) => `${lot.id} ${lot.title}: ${keeps}; left: ${left}`),
      `No lot is recalled, past its last day, or reaches it ${due.soon}.`,
    ),
    holdPointLines(due.holdPoint),
    titled(
      "Open items",
      due.open.map(({ item, before }) => `${item.id} ${item.what}${aside(`since ${dateWords(item.day)}`, before)}`),
      "No open items.",
    ),
    titled(
      "Departures not accepted",
      due.departures.map(({ departure, standing }) => `${departure.id} ${departure.what}: ${standing}`),
    ),
  ].filter((lines) => lines.length > 0);
  const head = `${record.aircraft.name}, as of the end of ${dateWords(record.day)}`;
  return [[head], ...parts].map((lines) => `${lines.map(plainly).join("\n")}\n`).join("\n");
}

function titled(title: string, lines: readonly string[], none?: string): string[] {
  if (lines.length === 0) return none === undefined ? [] : [none];
  return [title, ...lines.map((line) => `  ${line}`)];
}

const aside = (...words: readonly string[]): string => ` (${words.filter((word) => word !== "").join(", ")})`;

const pieceLine = ({ pieces, from, by }: WaitingRow): string => `${pieces.join(", ")}: from ${from}, ${by}`;

function holdPointLines(next: Due["holdPoint"]): string[] {
  if (next === undefined) return ["No hold point is ahead."];
  const { file, assembly, means, needs } = next;
  return [
    `Next hold point: ${file.holdPoint.id} ${file.holdPoint.title}, ${assembly}: ${file.state}`,
    `  ${means}`,
    ...needs.flatMap(needLines),
    ...(file.state === "ready" ? [`  ${NOT_LOOKED_AT}`] : []),
  ];
}

function needLines({ about, sentence, needs, blocks }: NeedTogether): string[] {
  const ids = about.map(({ id }) => id).join(", ");
  return [`  ${blocks ? "!" : "-"} ${ids}: ${sentence}`, ...(needs === "" ? [] : [`      ${needs}`])];
}
